package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Words;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;

/** The main figures month by month and in all. */
final class MonthlyTable {

    private static final List<String> HEADER = List.of(
            "month",
            "hours below minimum",
            "slurry lowest, °C",
            "slurry mean, °C",
            "slurry highest, °C",
            "sun, kWh",
            "backup heater, kWh",
            "solar fraction",
            "envelope and fittings, kWh",
            "feed, kWh",
            "backup bought, kWh",
            "electricity, kWh",
            "methane, Nm³",
            "gas energy, kWh",
            "net energy, kWh",
            "net, weighted, kWh");

    private MonthlyTable() {}

    static Table of(YearResult run) {
        List<List<String>> rows = new ArrayList<>();
        run.months().forEach(month -> rows.add(row(label(month), month)));
        rows.add(row("all", run.whole()));
        return new Table("Month by month: slurry, heat, gas and energy", HEADER, rows).totalledOnPage("");
    }

    /** Jan 2025. */
    static String label(Period month) {
        YearMonth when = YearMonth.parse(month.label());
        return when.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + when.getYear();
    }

    private static List<String> row(String label, Period period) {
        return List.of(
                label,
                Words.hours(period.of(KeyFigures.BELOW_FLOOR_HOURS)),
                Words.fixed(period.of(KeyFigures.LEAST_C), 1),
                Words.fixed(period.of(KeyFigures.MEAN_C), 1),
                Words.fixed(period.of(KeyFigures.MOST_C), 1),
                Words.number(period.of(SolarPart.HEAT)),
                Words.number(period.of(BackupPart.HEAT)),
                share(period.of(KeyFigures.SOLAR_SHARE)),
                Words.number(Lines.lossKWh(period)),
                Words.number(period.of(FeedPart.FEED)),
                Words.number(period.of(BackupPart.BOUGHT)),
                Words.number(period.of(Meter.ELECTRICITY)),
                Words.number(period.of(GasPart.METHANE_MADE)),
                Words.number(period.of(GasPart.GAS_ENERGY)),
                Words.number(period.of(KeyFigures.NET)),
                Words.number(period.of(KeyFigures.NET_WEIGHTED)));
    }

    private static String share(double share) {
        return Double.isNaN(share) ? "–" : Words.percentCell(Math.min(1, share));
    }
}
