package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;

/** Sets a table in plain text: the first column to the left, the others to the right; a long one is cut short. */
public final class TextTable {

    private static final int MOST_ROWS = 40;

    private TextTable() {}

    /** The lines of a table. */
    public static List<String> lines(Table table) {
        List<String> lines = new ArrayList<>(List.of(table.caption()));
        List<List<String>> rows = new ArrayList<>(List.of(table.header()));
        rows.addAll(table.rows().subList(0, Math.min(MOST_ROWS, table.rows().size())));
        int columns = table.header().size();
        int[] width = new int[columns];
        rows.forEach(row -> {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], row.get(i).length());
            }
        });
        rows.forEach(row -> lines.add(line(row, width)));
        if (table.rows().size() > MOST_ROWS) {
            lines.add("  and " + (table.rows().size() - MOST_ROWS) + " more rows in the CSV file");
        }
        return lines;
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
