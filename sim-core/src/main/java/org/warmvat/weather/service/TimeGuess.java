package org.warmvat.weather.service;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.warmvat.weather.layout.TimeForm;

/**
 * How the times of a table seem to be written.
 *
 * @param columns their columns, counted from 0
 * @param form how the joined cells read
 * @param universal whether a heading says universal time
 * @param stepMinutes from one row to the next
 * @param remark what could not be told
 */
record TimeGuess(List<Integer> columns, String form, boolean universal, int stepMinutes, Optional<String> remark) {
    private static final List<String> FORMS = List.of(
            "YYYY-MM-DDThh:mm",
            "YYYY-MM-DD hh:mm",
            "YYYYMMDD:hhmm",
            "YYYYMMDDhhmm",
            "YYYYMMDDhh",
            "YYYY/MM/DD hh:mm",
            "DD.MM.YYYY hh:mm",
            "MM/DD/YYYY hh:mm",
            "DD/MM/YYYY hh:mm",
            "YYYY M D h m",
            "YYYY M D h");
    private static final List<Integer> STEPS = List.of(5, 10, 15, 20, 30, 60);

    static TimeGuess of(TableGuess table) {
        int cells = table.rows().get(0).size();
        for (int count : new int[] {1, 2, 5, 4}) {
            for (int first = 0; first + count <= Math.min(cells, 8); first++) {
                List<Integer> columns =
                        IntStream.range(first, first + count).boxed().toList();
                for (String form : FORMS) {
                    if (table.rows().stream()
                            .allMatch(row -> minutes(row, columns, form).isPresent())) {
                        return found(table, columns, form);
                    }
                }
            }
        }
        return new TimeGuess(
                List.of(0),
                "YYYY-MM-DDThh:mm",
                false,
                60,
                Optional.of("time.form: not told from the rows; write it with Y M D h m for the digits."));
    }

    private static OptionalLong minutes(List<String> row, List<Integer> columns, String form) {
        if (columns.get(columns.size() - 1) >= row.size()) {
            return OptionalLong.empty();
        }
        String joined = String.join(" ", columns.stream().map(row::get).toList());
        return new TimeForm(form).minutes(joined);
    }

    private static TimeGuess found(TableGuess table, List<Integer> columns, String form) {
        long step = minutes(table.rows().get(1), columns, form).orElseThrow()
                - minutes(table.rows().get(0), columns, form).orElseThrow();
        boolean universal = columns.stream()
                .filter(i -> i < table.names().size())
                .anyMatch(i -> table.names().get(i).toLowerCase(Locale.ROOT).matches(".*(utc|gmt).*"));
        boolean either = form.contains("/")
                && !form.startsWith("Y")
                && table.rows().stream()
                        .allMatch(
                                row -> minutes(row, columns, "DD/MM/YYYY hh:mm").isPresent());
        return new TimeGuess(
                columns,
                form,
                universal,
                STEPS.contains((int) step) ? (int) step : 60,
                either ? Optional.of("time.form: month or day first? Both would read.") : Optional.empty());
    }
}
