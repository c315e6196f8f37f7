package org.warmvat.cli.answer;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** The main figures month by month and in all. */
final class MonthlyTable {

    private static final List<String> HEADER = List.of(
            "month",
            "hours below floor",
            "slurry least, °C",
            "slurry mean, °C",
            "slurry most, °C",
            "sun, kWh",
            "backup, kWh",
            "sun's share",
            "envelope and fittings, kWh",
            "feed, kWh",
            "backup bought, kWh",
            "electricity, kWh",
            "methane, Nm³",
            "gas energy, kWh",
            "net energy, kWh",
            "net, weighted, kWh");

    private MonthlyTable() {}

    static Table of(RunResult run) {
        List<List<String>> rows = new ArrayList<>();
        run.months().forEach(month -> rows.add(row(label(month), month)));
        rows.add(row("all", run.year()));
        return new Table("Slurry, heat, gas and energy", HEADER, rows);
    }

    /** Jan 2025. */
    static String label(Period month) {
        YearMonth when = YearMonth.parse(month.label());
        return when.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + when.getYear();
    }

    private static List<String> row(String label, Period period) {
        return List.of(
                label,
                Words.hours(period.counts().belowFloorHours()),
                Words.fixed(period.slurry().leastC(), 1),
                Words.fixed(period.slurry().meanC(), 1),
                Words.fixed(period.slurry().mostC(), 1),
                Words.number(period.heats().solarKWh()),
                Words.number(period.heats().backupKWh()),
                period.solarShare().stream()
                        .mapToObj(Words::percentCell)
                        .findFirst()
                        .orElse("–"),
                Words.number(period.losses().totalKWh()),
                Words.number(period.heats().feedKWh()),
                Words.number(period.circuits().backupBoughtKWh()),
                Words.number(period.electricity().totalKWh()),
                Words.number(period.gas().methaneNm3()),
                Words.number(period.gas().gasEnergyKWh()),
                Words.number(period.gas().netEnergyKWh()),
                Words.number(period.gas().netEnergyWeightedKWh()));
    }
}
