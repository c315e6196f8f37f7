package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Starts of pumps and heater, to see that they do not short-cycle. */
final class StartsTable {

    private static final List<String> HEADER = List.of("", "starts", "a day, on average", "most in a day", "on");

    private StartsTable() {}

    static Table of(Findings findings, Span span) {
        List<List<String>> rows = new ArrayList<>();
        add(rows, "solar pump", findings.solarPump(), span);
        add(rows, "backup", findings.backup(), span);
        return new Table("Starts in the run and in a day", HEADER, rows);
    }

    private static void add(List<List<String>> rows, String name, Optional<Starts> starts, Span span) {
        starts.ifPresent(counted -> rows.add(List.of(
                name,
                Integer.toString(counted.total()),
                Words.fixed(counted.perDay(), 1),
                Integer.toString(counted.most()),
                span.day(LocalDate.parse(counted.mostOn())))));
    }
}
