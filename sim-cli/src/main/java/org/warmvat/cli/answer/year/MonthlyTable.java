package org.warmvat.cli.answer.year;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Columns;
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

    private static final Columns<Period> FIGURES = new Columns<Period>()
            .cell("hours below minimum", period -> Words.hours(period.of(KeyFigures.BELOW_FLOOR_HOURS)))
            .cell("slurry lowest, °C", period -> Words.tenth(period.of(KeyFigures.LEAST_C)))
            .cell("slurry mean, °C", period -> Words.tenth(period.of(KeyFigures.MEAN_C)))
            .cell("slurry highest, °C", period -> Words.tenth(period.of(KeyFigures.MOST_C)))
            .cell("sun, kWh", period -> Words.number(period.of(SolarPart.HEAT)))
            .cell("backup heater, kWh", period -> Words.number(period.of(BackupPart.HEAT)))
            .cell("solar fraction", period -> share(period.of(KeyFigures.SOLAR_SHARE)))
            .cell("envelope and fittings, kWh", period -> Words.number(Lines.lossKWh(period)))
            .cell("feed, kWh", period -> Words.number(period.of(FeedPart.FEED)))
            .cell("backup bought, kWh", period -> Words.number(period.of(BackupPart.BOUGHT)))
            .cell("electricity, kWh", period -> Words.number(period.of(Meter.ELECTRICITY)))
            .cell("methane, Nm³", period -> Words.number(period.of(GasPart.METHANE_MADE)))
            .cell("gas energy, kWh", period -> Words.number(period.of(GasPart.GAS_ENERGY)))
            .cell("net energy, kWh", period -> Words.number(period.of(KeyFigures.NET)))
            .cell("net, weighted, kWh", period -> Words.number(period.of(KeyFigures.NET_WEIGHTED)));

    private MonthlyTable() {}

    static Table of(YearResult run) {
        return FIGURES.named("month", "Month by month: slurry, heat, gas and energy", rows(run))
                .totalledOnPage("");
    }

    /** Months by their names, and last the whole run. */
    static Map<String, Period> rows(YearResult run) {
        Map<String, Period> rows = new LinkedHashMap<>();
        run.months().forEach(month -> rows.put(label(month), month));
        rows.put("all", run.whole());
        return rows;
    }

    /** Jan 2025. */
    private static String label(Period month) {
        YearMonth when = YearMonth.parse(month.label());
        return when.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " " + when.getYear();
    }

    private static String share(double share) {
        return Double.isNaN(share) ? "–" : Words.percentCell(Math.min(1, share));
    }
}
