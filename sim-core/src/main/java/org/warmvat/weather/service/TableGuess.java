package org.warmvat.weather.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.warmvat.weather.layout.LineCells;

/**
 * Where the rows of a table seem to stand in the head of a text, and how its cells are parted.
 *
 * @param delimiter between cells
 * @param firstRow index of the line of the first row, counted from 0
 * @param headingLine index of the line of names; -1 where there seems to be none, or one of units follows it
 * @param names of the columns
 * @param rows the first rows, their cells without blanks at the ends
 * @param commas whether numbers have decimal commas
 */
public record TableGuess(
        char delimiter, int firstRow, int headingLine, List<String> names, List<List<String>> rows, boolean commas) {
    private static final char[] DELIMITERS = {';', '\t', ',', '|'};
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)?([eE][-+]?\\d+)?");
    private static final Pattern WITH_COMMA = Pattern.compile("[-+]?\\d+,\\d+");
    private static final int MOST_ROWS = 60;

    /** The widest table that any delimiter makes of the head; empty where no two lines look like rows. */
    public static Optional<TableGuess> of(String text) {
        TextHead head = TextHead.of(text);
        List<TableGuess> guesses = new ArrayList<>();
        for (char delimiter : DELIMITERS) {
            with(head, delimiter).ifPresent(guesses::add);
        }
        return guesses.stream()
                .max(Comparator.comparingInt(guess -> guess.rows().get(0).size()));
    }

    private static Optional<TableGuess> with(TextHead head, char delimiter) {
        List<List<String>> cells =
                head.lines().stream().map(line -> LineCells.of(line, delimiter)).toList();
        for (int i = 0; i + 1 < cells.size(); i++) {
            if (isRow(cells.get(i))
                    && isRow(cells.get(i + 1))
                    && cells.get(i).size() == cells.get(i + 1).size()) {
                int heading = heading(cells, i);
                boolean units = heading > 0 && isUnits(cells.get(heading)) && isHeading(cells, heading - 1, i);
                List<String> names = heading < 0
                        ? List.of()
                        : units ? joined(cells.get(heading - 1), cells.get(heading)) : cells.get(heading);
                List<List<String>> rows = cells.subList(i, Math.min(cells.size(), i + MOST_ROWS)).stream()
                        .filter(TableGuess::isRow)
                        .toList();
                boolean commas = delimiter != ','
                        && rows.stream()
                                .flatMap(List::stream)
                                .anyMatch(c -> WITH_COMMA.matcher(c).matches());
                return Optional.of(new TableGuess(delimiter, i, units ? -1 : heading, names, rows, commas));
            }
        }
        return Optional.empty();
    }

    /** A time and at least two numbers. */
    private static boolean isRow(List<String> cells) {
        long numbers = cells.stream().filter(c -> NUMBER.matcher(c).matches()).count();
        boolean begins =
                !cells.get(0).isEmpty() && Character.isDigit(cells.get(0).charAt(0));
        return begins && cells.size() >= 3 && numbers >= 2;
    }

    private static int heading(List<List<String>> cells, int firstRow) {
        for (int i = firstRow - 1; i >= Math.max(0, firstRow - 3); i--) {
            if (isHeading(cells, i, firstRow)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isHeading(List<List<String>> cells, int line, int firstRow) {
        boolean names =
                cells.get(line).stream().filter(c -> c.matches(".*\\p{L}.*")).count() >= 2;
        return names && cells.get(line).size() >= cells.get(firstRow).size() - 1;
    }

    /** Whether most cells of a line are units, as of a line between the names and the rows. */
    private static boolean isUnits(List<String> cells) {
        long filled = cells.stream().filter(cell -> !cell.isBlank()).count();
        return 2 * cells.stream().filter(HeadingUnit::isUnit).count() > filled;
    }

    /** The names with their units behind them; a layout has then to skip both lines and to count columns. */
    private static List<String> joined(List<String> names, List<String> units) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> names.get(i) + (i < units.size() ? " (" + units.get(i) + ")" : ""))
                .toList();
    }

    /** The largest number in a column; 0 where it holds none. */
    double most(int column) {
        return rows.stream()
                .filter(row ->
                        column < row.size() && NUMBER.matcher(row.get(column)).matches())
                .mapToDouble(row -> Double.parseDouble(row.get(column).replace(',', '.')))
                .max()
                .orElse(0);
    }

    /** Whether a column holds times. */
    boolean isTime(int column) {
        return TimeGuess.of(this).columns().contains(column);
    }

    /** What a spreadsheet seems to have done to the file, in words; nothing where it looks untouched. */
    public List<String> traces() {
        List<String> traces = new ArrayList<>();
        if (delimiter == ';') {
            traces.add("semicolons between the cells");
        }
        if (commas) {
            traces.add("decimal commas");
        }
        if (any("\\d{1,2}[/.]\\d{1,2}[/.]\\d{2,4}.*")) {
            traces.add("dates like " + first("\\d{1,2}[/.]\\d{1,2}[/.]\\d{2,4}.*"));
        }
        if (any(".*\\b24:00(:00)?")) {
            traces.add("24:00 for midnight");
        }
        return traces;
    }

    private boolean any(String regex) {
        return rows.stream().flatMap(List::stream).anyMatch(cell -> cell.matches(regex));
    }

    private String first(String regex) {
        return rows.stream()
                .flatMap(List::stream)
                .filter(cell -> cell.matches(regex))
                .findFirst()
                .orElse("");
    }
}
