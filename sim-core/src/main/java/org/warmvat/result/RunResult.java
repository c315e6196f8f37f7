package org.warmvat.result;

import java.util.List;

/**
 * Everything a run over a weather file found.
 *
 * @param title title of the design
 * @param location where the weather belongs
 * @param engine which engine ran: {@code reference} or {@code fast}
 * @param runInDays days run before the first hour
 * @param marks marks of the design
 * @param year the whole run
 * @param months calendar months in order
 * @param days calendar days in order
 * @param hourly hourly series
 * @param warnings what the user must know
 * @param assumed every default and assumption that was used, one sentence each
 */
public record RunResult(
        String title,
        Location location,
        String engine,
        int runInDays,
        Marks marks,
        Period year,
        List<Period> months,
        List<Period> days,
        Hourly hourly,
        List<Warning> warnings,
        List<String> assumed) {}
