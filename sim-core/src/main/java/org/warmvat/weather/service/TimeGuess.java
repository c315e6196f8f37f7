package org.warmvat.weather.service;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.weather.layout.RowTime;
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
    /** Behind the time of day. */
    private static final Pattern ZONE = Pattern.compile(":\\d\\d(Z|[-+]\\d\\d:?\\d\\d)$");

    private static final List<Integer> STEPS = List.of(5, 10, 15, 20, 30, 60);

    static TimeGuess of(TableGuess table) {
        int cells = table.rows().get(0).size();
        for (int count : new int[] {1, 2, 5, 4}) {
            for (int first = 0; first + count <= Math.min(cells, 8); first++) {
                List<Integer> columns =
                        IntStream.range(first, first + count).boxed().toList();
                for (String form : forms(table, columns)) {
                    if (runs(table, columns, form)) {
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

    /** The forms, followed by the zone that the rows may write behind their times. */
    private static List<String> forms(TableGuess table, List<Integer> columns) {
        Matcher zone = ZONE.matcher(table.rows().get(0).get(columns.get(columns.size() - 1)));
        return zone.find()
                ? FORMS.stream()
                        .flatMap(form -> Stream.of(form + zone.group(1), form + ":ss" + zone.group(1)))
                        .toList()
                : FORMS;
    }

    /** Whether all rows read so and follow each other by less than a day, which tells days from months. */
    private static boolean runs(TableGuess table, List<Integer> columns, String form) {
        long before = Long.MIN_VALUE;
        for (List<String> row : table.rows()) {
            OptionalLong minutes = minutes(row, columns, form);
            boolean follows = minutes.isPresent()
                    && (before == Long.MIN_VALUE
                            || (minutes.getAsLong() > before
                                    && minutes.getAsLong() - before < RowTime.MINUTES_PER_DAY));
            if (!follows) {
                return false;
            }
            before = minutes.getAsLong();
        }
        return true;
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
        boolean either = form.startsWith("MM/") && runs(table, columns, "DD/MM/YYYY hh:mm");
        Optional<String> zone = Optional.of(form.replaceAll("^[^+]*?(Z|[-+]\\d\\d:?\\d\\d)?$", "$1"))
                .filter(said -> !said.isEmpty());
        boolean zero = zone.map(said -> said.matches("Z|[-+]00:?00")).orElse(false);
        return new TimeGuess(
                columns,
                form,
                universal || zero,
                STEPS.contains((int) step) ? (int) step : 60,
                either
                        ? Optional.of("time.form: month or day first? Both would read.")
                        : zone.filter(said -> !zero)
                                .map(said -> "time: the rows say UTC" + said + ", which is then site.utc_offset_h."));
    }
}
