package org.warmvat.weather.made;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.Variance;

/**
 * In which order clear and dull, warm and cold days follow each other: two persistent series of unit variance that lean on each other.
 *
 * <p>As months of typical years are picked from many real ones, each month is the most typical of many drawn: the one whose persistence,
 * drift and correlation lie nearest to the mean of all drawn. Without that, the heater of a small tank would get up to a tenth more or
 * less heat from one seed to the next, by the chance of cold days being dull.
 *
 * <p>Successive days correlate by 0.29 in clearness (K. M. Knight, S. A. Klein and J. A. Duffie, 1991, from memory); the daily mean
 * temperatures that come of this warmth by about 0.7, as follows from the correlations of daily highs and lows that C. W. Richardson
 * (1982) found at 31 U.S. stations (from memory: 0.621, 0.674, across 0.445 and 0.563, of the same day 0.633: (0.621 + 0.674 + 0.445
 * + 0.563)/(2 x 1.633) = 0.71). Over the year warmth and clearness are uncorrelated in Richardson's data; that they are against each other
 * in winter and with each other in summer is a convention from two real typical years.
 */
record TypicalDays(double[] clearness, double[] warmth) {
    private static final double CLEARNESS_PERSISTENCE = 0.29;
    /** Of the series at the days' middles; straight lines between them raise the correlation of daily means to 0.72. */
    private static final double WARMTH_PERSISTENCE = 0.55;
    /** Correlation of what is new in warmth with clearness, positive in summer. */
    private static final double MOST_CORRELATION = 0.3;

    private static final int DRAWN = 200;
    private static final int SPELL_DAYS = 5;

    /** Draws a year. */
    static TypicalDays draw(long seed, double latitudeDeg) {
        TypicalDays year = new TypicalDays(new double[MadeSunlight.DAYS], new double[MadeSunlight.DAYS]);
        Draws draws = new Draws(seed, "days");
        Day before = new Day(draws.normal(), draws.normal());
        for (int month = 0; month < 12; month++) {
            int first = MonthCurve.FIRST_HOUR[month] / 24;
            int days = MonthCurve.FIRST_HOUR[month + 1] / 24 - first;
            TypicalDays chosen = mostTypical(draws, before, first, days, latitudeDeg);
            System.arraycopy(chosen.clearness, 0, year.clearness, first, days);
            System.arraycopy(chosen.warmth, 0, year.warmth, first, days);
            before = new Day(chosen.clearness[days - 1], chosen.warmth[days - 1]);
        }
        return year;
    }

    private static TypicalDays mostTypical(Draws draws, Day before, int first, int days, double latitudeDeg) {
        TypicalDays[] drawn = new TypicalDays[DRAWN];
        double[][] traits = new double[DRAWN][];
        for (int i = 0; i < DRAWN; i++) {
            drawn[i] = month(draws, before, first, days, latitudeDeg);
            traits[i] = drawn[i].traits();
        }
        double[] distance = new double[DRAWN];
        for (int trait = 0; trait < traits[0].length; trait++) {
            int which = trait;
            double[] all = Arrays.stream(traits).mapToDouble(t -> t[which]).toArray();
            double mean = new Mean().evaluate(all);
            double variance = new Variance().evaluate(all, mean);
            for (int i = 0; i < DRAWN; i++) {
                distance[i] += (all[i] - mean) * (all[i] - mean) / variance;
            }
        }
        int nearest = 0;
        for (int i = 1; i < DRAWN; i++) {
            nearest = distance[i] < distance[nearest] ? i : nearest;
        }
        return drawn[nearest];
    }

    private static TypicalDays month(Draws draws, Day before, int first, int days, double latitudeDeg) {
        TypicalDays month = new TypicalDays(new double[days], new double[days]);
        double clear = before.clearness;
        double warm = before.warmth;
        for (int day = 0; day < days; day++) {
            double summer = -Math.signum(latitudeDeg) * Math.cos(2 * Math.PI * (first + day - 15) / 365);
            double c = MOST_CORRELATION * summer;
            clear = next(clear, CLEARNESS_PERSISTENCE, draws.normal());
            warm = next(warm, WARMTH_PERSISTENCE, c * clear + Math.sqrt(1 - c * c) * draws.normal());
            month.clearness[day] = clear;
            month.warmth[day] = warm;
        }
        return month;
    }

    private static double next(double value, double persistence, double fresh) {
        return persistence * value + Math.sqrt(1 - persistence * persistence) * fresh;
    }

    /**
     * Persistence of both, by successive days and by spells of days; what both have in common, by days and by spells; and drift from the
     * month's beginning to its end. In units of the month's own spread, since that is set later.
     */
    private double[] traits() {
        double[] clear = unit(clearness);
        double[] warm = unit(warmth);
        double[] clearSpells = spells(clear);
        double[] warmSpells = spells(warm);
        double[] calendar = new double[clear.length];
        Arrays.setAll(calendar, day -> day);
        return new double[] {
            successive(clear),
            successive(warm),
            squares(clearSpells, clearSpells),
            squares(warmSpells, warmSpells),
            squares(clear, warm),
            squares(clearSpells, warmSpells),
            new PearsonsCorrelation().correlation(calendar, clear),
            new PearsonsCorrelation().correlation(calendar, warm)
        };
    }

    private static double[] unit(double[] days) {
        double mean = new Mean().evaluate(days);
        double deviation = Math.sqrt(new Variance(false).evaluate(days, mean));
        return Arrays.stream(days).map(day -> (day - mean) / deviation).toArray();
    }

    private static double[] spells(double[] days) {
        double[] spells = new double[days.length - SPELL_DAYS + 1];
        Arrays.setAll(spells, day -> new Mean().evaluate(days, day, SPELL_DAYS));
        return spells;
    }

    private static double successive(double[] days) {
        int pairs = days.length - 1;
        return squares(Arrays.copyOfRange(days, 1, days.length), Arrays.copyOf(days, pairs));
    }

    private static double squares(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum / a.length;
    }

    private record Day(double clearness, double warmth) {}
}
