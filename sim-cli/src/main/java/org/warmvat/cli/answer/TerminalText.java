package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document.KeyFigure;
import org.warmvat.network.Warning;

/** Sets an answer in plain text. No control character of an input gets through to the terminal. */
public final class TerminalText {

    private static final int MOST_ROWS = 40;

    private final List<String> lines = new ArrayList<>();

    private TerminalText() {}

    /** The lines of an answer. */
    public static List<String> lines(Document document) {
        TerminalText text = new TerminalText();
        text.head(document);
        document.body().paragraphs().forEach(paragraph -> text.section(paragraph.heading(), paragraph.sentences()));
        document.body().tables().stream()
                .filter(table -> !table.set().onPageOnly())
                .forEach(text::table);
        text.section("Warnings", text.warnings(document.grounds()));
        text.section("Assumed", text.assumed(document.grounds()));
        document.body().notDrawn().ifPresent(why -> text.section("Pictures", List.of(why)));
        if (document.grounds().cautions().size() > 1) {
            text.lines.addAll(List.of("", Cautions.SHORT));
        }
        return text.lines.stream().map(TerminalText::harmless).toList();
    }

    /** A text without control characters, which could move the cursor or colour what is not ours. */
    public static String harmless(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u0080-\\u009f]", "\ufffd");
    }

    private void head(Document document) {
        lines.add(document.heading().title());
        lines.add(document.heading().subtitle());
        lines.addAll(document.heading().block());
        lines.addAll(document.grounds().invented());
        Document.Verdict verdict = document.verdict();
        if (!verdict.sentence().isEmpty()) {
            section("In short", List.of(verdict.sentence()));
            verdict.but().forEach(sentence -> lines.add("  But: " + sentence));
            keyFigures(document.body().keyFigures());
        }
    }

    private void keyFigures(List<KeyFigure> figures) {
        int widest = figures.stream()
                .mapToInt(figure -> figure.name().length())
                .max()
                .orElse(0);
        figures.forEach(figure -> lines.add(
                "  " + figure.name() + " ".repeat(widest - figure.name().length() + 2) + figure.value()));
    }

    private List<String> warnings(Grounds grounds) {
        return grounds.warnings().isEmpty()
                ? List.of("None.")
                : grounds.warnings().stream().map(Warning::sentence).toList();
    }

    private List<String> assumed(Grounds grounds) {
        List<String> assumed = new ArrayList<>(grounds.assumed());
        assumed.removeAll(grounds.invented());
        assumed.addAll(grounds.weighty());
        int defaults = grounds.defaults().size();
        assumed.add(
                defaults == 0
                        ? "No default of the design file."
                        : defaults + " defaults of the design file, which the report and --json list.");
        return assumed;
    }

    private void section(String heading, List<String> sentences) {
        lines.addAll(List.of("", heading));
        sentences.forEach(sentence -> lines.add("  " + sentence));
    }

    /** The first column to the left, the others to the right; a long table is cut short. */
    private void table(Table table) {
        lines.addAll(List.of("", table.caption()));
        List<List<String>> rows = Stream.concat(
                        Stream.of(table.header()), table.rows().stream().limit(MOST_ROWS))
                .toList();
        int[] width = IntStream.range(0, table.header().size())
                .map(i -> widest(rows, i))
                .toArray();
        rows.forEach(row -> lines.add(line(row, width)));
        if (table.rows().size() > MOST_ROWS) {
            lines.add("  and " + (table.rows().size() - MOST_ROWS) + " more rows in the report");
        }
        if (!table.note().isEmpty()) {
            lines.add("  " + table.note());
        }
    }

    private static int widest(List<List<String>> rows, int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }

    private static String line(List<String> row, int[] width) {
        StringBuilder line = new StringBuilder("  ");
        for (int i = 0; i < width.length; i++) {
            String gap = " ".repeat(width[i] - row.get(i).length());
            line.append(i == 0 ? row.get(i) + gap : "  " + gap + row.get(i));
        }
        return line.toString().stripTrailing();
    }
}
