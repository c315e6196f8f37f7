package org.warmvat.weather.service;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The first lines of a text, by which its kind is told.
 *
 * @param lines at most 300, each without the end of its line
 */
record TextHead(List<String> lines) {
    private static final int MOST_LINES = 300;
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\d");

    static TextHead of(String text) {
        return new TextHead(text.lines().limit(MOST_LINES).toList());
    }

    /** A line counted from 0; nothing after the last. */
    String line(int index) {
        return index < lines.size() ? lines.get(index) : "";
    }

    /** Index of the first line that begins so. */
    Optional<Integer> first(String beginning) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(beginning)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** The number that the first group of a pattern finds, in the first line in which it is found. */
    Optional<Double> number(String regex) {
        Pattern pattern = Pattern.compile(regex);
        for (String line : lines) {
            Matcher matcher = pattern.matcher(line);
            if (matcher.find()) {
                return Optional.of(Double.parseDouble(matcher.group(1)));
            }
        }
        return Optional.empty();
    }

    /** Whether a number with a decimal comma stands in any of the lines. */
    boolean hasDecimalCommas() {
        return lines.stream().anyMatch(line -> DECIMAL_COMMA.matcher(line).find());
    }

    /** The head as it was before a spreadsheet parted its cells by another delimiter, and gave its numbers decimal commas. */
    TextHead withCommasFor(char delimiter) {
        return new TextHead(lines.stream()
                .map(line -> line.replace(',', '.').replace(delimiter, ','))
                .toList());
    }
}
