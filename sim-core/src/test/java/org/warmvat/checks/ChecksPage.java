package org.warmvat.checks;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The page of all checks as text. */
final class ChecksPage {

    private static final String HEAD = """
            | quantity | published | ours | difference | tolerance | provenance |
            |---|---|---|---|---|---|
            """;

    private final Map<Published, Sheet> sheets = new LinkedHashMap<>();

    ChecksPage(List<Published> all) {
        all.stream()
                .sorted(Comparator.comparing((Published p) -> p.source().topic())
                        .thenComparing(p -> p.source().publication())
                        .thenComparing(p -> p.getClass().getSimpleName()))
                .forEach(published -> {
                    Sheet sheet = new Sheet();
                    published.fill(sheet);
                    sheets.put(published, sheet);
                });
    }

    /** Values that count. */
    long values() {
        return sheets.values().stream()
                .mapToLong(sheet -> sheet.rows(Row.Kind.COUNTED).size())
                .sum();
    }

    private long fromMemory() {
        return sheets.values().stream()
                .flatMap(sheet -> sheet.rows(Row.Kind.COUNTED).stream())
                .filter(row -> row.provenance() == Provenance.MEMORY)
                .count();
    }

    /** Values that count and are a matter of digesters or coils. */
    long digesterValues() {
        return sheets.entrySet().stream()
                .filter(entry -> entry.getKey().source().topic().isDigesterOrCoil())
                .mapToLong(entry -> entry.getValue().rows(Row.Kind.COUNTED).size())
                .sum();
    }

    /** Publications with a value that counts. */
    long sources() {
        return sheets.entrySet().stream()
                .filter(entry -> !entry.getValue().rows(Row.Kind.COUNTED).isEmpty())
                .map(entry -> entry.getKey().source().publication())
                .distinct()
                .count();
    }

    private long notReproduced() {
        return sheets.values().stream()
                .mapToLong(sheet -> sheet.rows(Row.Kind.NOT_REPRODUCED).size())
                .sum();
    }

    /** What the README says. */
    String inOneLine() {
        return values() + " published values from " + sources() + " sources (" + (values() - fromMemory())
                + " seen in print or in a transcription, " + fromMemory() + " from memory)";
    }

    String text() {
        StringBuilder text = new StringBuilder();
        text.append(String.format(Locale.ROOT, """
                # Checked against the outside

                This page is written by the tests (`ChecksPageTest`), which fail when it is stale; `mvn -pl sim-core test \
                -Dtest=ChecksPageTest -Dchecks.write=true` writes it anew. Every figure under *ours* comes out of the program's own \
                classes, not out of a copy of a formula.

                The program reproduces %s, %d of them on digesters, their gas or coils. No more than five values of any one table or worked \
                example are counted. %d printed values are not reproduced; each is shown with the reason, none is widened away. What is derived \
                from a published equation, or is common practice without a source, is shown but not counted.

                Provenance: *seen* = read in the original or where it is publicly quoted; *seen in a transcription* = read in a public \
                transcription of a book's worked examples; *from memory* = remembered, to be held against the original before it is quoted.
                """, inOneLine(), digesterValues(), notReproduced()));
        Topic topic = null;
        for (Map.Entry<Published, Sheet> entry : sheets.entrySet()) {
            Source source = entry.getKey().source();
            if (source.topic() != topic) {
                topic = source.topic();
                text.append("\n## ").append(topic.heading()).append('\n');
            }
            append(text, entry.getKey().getClass().getSimpleName(), source, entry.getValue());
        }
        return text.append(NetReturn.text()).toString();
    }

    private static void append(StringBuilder text, String test, Source source, Sheet sheet) {
        text.append("\n### ")
                .append(source.publication())
                .append(" (`")
                .append(test)
                .append("`)\n\n");
        text.append(source.citation()).append("\n\n");
        text.append("Conditions: ").append(source.conditions()).append("\n\n");
        text.append("Tolerance: ").append(source.tolerance()).append("\n\n");
        if (sheet.rows(Row.Kind.COUNTED).size() + sheet.rows(Row.Kind.ALSO).size() > 0) {
            text.append(HEAD);
            sheet.rows().stream()
                    .filter(row -> row.kind() != Row.Kind.NOT_REPRODUCED)
                    .forEach(row -> text.append(row.line()));
        }
        if (!sheet.rows(Row.Kind.NOT_REPRODUCED).isEmpty()) {
            text.append("\nNot reproduced:\n\n").append(HEAD);
            sheet.rows(Row.Kind.NOT_REPRODUCED).forEach(row -> text.append(row.line()));
            text.append('\n');
            sheet.explanations().forEach(why -> text.append("- ").append(why).append('\n'));
        }
    }
}
