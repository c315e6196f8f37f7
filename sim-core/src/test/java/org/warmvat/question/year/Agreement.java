package org.warmvat.question.year;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.warmvat.account.Books;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Line;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * How far the everyday engine is from the reference engine on one case, by what the page on the engines promises.
 *
 * @param name of the case
 * @param hours run
 * @param solar heat from the sun by either engine, kWh
 * @param backup heat from the backup by either engine, kWh
 * @param starts of the solar pump and of the backup by either engine
 * @param pointsK largest difference of a month's 5, 50 or 95 % point of the slurry
 * @param hoursWithin share of hours in which the slurry differs by 0.05 K at most
 * @param rmsK root of the mean square difference of the slurry
 * @param residual worst share of the ledgers left over, whole run and months
 * @param excused heats that differ by no more than a stroke that falls to the other side of a period's end
 * @param missed criteria that are missed, in words
 */
record Agreement(
        String name,
        int hours,
        Pair solar,
        Pair backup,
        Pair starts,
        double pointsK,
        double hoursWithin,
        double rmsK,
        double residual,
        int excused,
        List<String> missed) {

    private static final double HOURS_A_YEAR = 8760;
    private static final double STARTS_A_YEAR = 2000;
    private static final double KWH_J = 3.6e6;

    /** Biogas with 58 % of methane. */
    private static final double KWH_PER_NM3 = 5.8;

    private static final String LEDGER = "ledger";

    /** Less than what the everyday engine may put right at the end of an hour, K. */
    private static final double NUDGE_K = 3e-4;

    private static final int NUDGED_RUNS = 3;

    /**
     * A figure by both engines.
     *
     * @param reference by the reference engine
     * @param fast by the everyday engine
     */
    record Pair(double reference, double fast) {
        double difference() {
            return Math.abs(fast - reference);
        }

        boolean within(double share, double absolute) {
            return difference() <= Math.max(share * Math.abs(reference), absolute);
        }

        private static Pair of(Period reference, Period fast, Line line) {
            return new Pair(reference.of(line), fast.of(line));
        }
    }

    /** Runs a case on both engines. */
    static Agreement of(EqualityCases.Case one) throws StudyRefused {
        return of(one.name(), one.plan().build(), one.weather().get());
    }

    /** Runs a design on both engines. */
    static Agreement of(String name, Design design, Weather weather) throws StudyRefused {
        return new Comparison(
                        design,
                        run(design, weather, new ReferenceEngine()),
                        run(design, weather, new ExponentialEngine()))
                .result(name, weather.hours());
    }

    /**
     * Whether the reference engine does not even agree with itself, by the same criteria, where its slurry is put off by chance by
     * {@link #NUDGE_K} at most.
     */
    static boolean isDoubtful(EqualityCases.Case one) throws StudyRefused {
        Design design = one.plan().build();
        Weather weather = one.weather().get();
        YearResult reference = run(design, weather, new ReferenceEngine());
        for (int seed = 1; seed <= NUDGED_RUNS; seed++) {
            YearResult nudged = run(design, weather, new NudgedReference(NUDGE_K, seed));
            Agreement itself = new Comparison(design, reference, nudged).result(one.name(), weather.hours());
            // what is put off stands in no ledger
            if (!List.of(LEDGER).containsAll(itself.missed())) {
                return true;
            }
        }
        return false;
    }

    private static YearResult run(Design design, Weather weather, Engine engine) throws StudyRefused {
        return YearStudy.run(design, new Runner(weather, engine), HourSink.IGNORE);
    }

    boolean isMet() {
        return missed.isEmpty();
    }

    /** One line of the list. */
    String line() {
        return String.format(
                Locale.ROOT,
                "%-42s %5d h  solar %9.2f %+8.3f  backup %9.2f %+8.3f  starts %5.0f %+4.0f  points %.4f K  within 0.05 K"
                        + " %6.2f %%  rms %.4f K  ledger %.1e  excused %d  %s",
                name,
                hours,
                solar.reference(),
                solar.fast() - solar.reference(),
                backup.reference(),
                backup.fast() - backup.reference(),
                starts.reference(),
                starts.fast() - starts.reference(),
                pointsK,
                100 * hoursWithin,
                rmsK,
                residual,
                excused,
                isMet() ? "met" : "MISSED " + missed);
    }

    /** Two runs held beside each other. */
    private static final class Comparison {
        private final Design design;
        private final YearResult reference;
        private final YearResult fast;
        private final double[] trustedC;
        private final double[] quickC;
        private final double strokeKWh;
        private final List<String> missed = new ArrayList<>();
        private int excused;

        Comparison(Design design, YearResult reference, YearResult fast) {
            this.design = design;
            this.reference = reference;
            this.fast = fast;
            trustedC = reference.hourly().orZero("slurry_c");
            quickC = fast.hourly().orZero("slurry_c");
            strokeKWh = design.contentsHeatCapacityJPerK() * design.control().bandK() / KWH_J;
        }

        Agreement result(String name, int hours) {
            Pair solar = Pair.of(reference.whole(), fast.whole(), SolarPart.HEAT);
            Pair backup = Pair.of(reference.whole(), fast.whole(), BackupPart.HEAT);
            heat("solar heat", solar, 0.002, 1, 0, hours);
            heat("backup heat", backup, 0.002, 1, 0, hours);
            double points = months();
            Pair starts = new Pair(starts(reference), starts(fast));
            double[] difference = new double[hours];
            Arrays.setAll(difference, i -> Math.abs(trustedC[i] - quickC[i]));
            double within = Arrays.stream(difference).filter(k -> k <= 0.05).count() / (double) hours;
            double rms = Math.sqrt(Arrays.stream(difference).map(k -> k * k).sum() / hours);
            boolean calm = starts.reference() < STARTS_A_YEAR * hours / HOURS_A_YEAR;
            need("starts", starts.within(0.02, 3));
            need("hours within 0.05 K", !calm || within >= 0.95);
            need("rms", rms < (calm ? 0.1 : 0.5 * design.control().bandK()));
            need("hours below the minimum", belowMinimum());
            life();
            double residual = Math.max(residual(reference), residual(fast));
            need(LEDGER, residual(fast) < 1e-6);
            return new Agreement(
                    name, hours, solar, backup, starts, points, within, rms, residual, excused, List.copyOf(missed));
        }

        /** Shelter, uses, surplus, hygienisation and holder, where a design has them. */
        private void life() {
            for (Line line : reference.whole().books().lines()) {
                Pair year = Pair.of(reference.whole(), fast.whole(), line);
                String path = line.path();
                if (path.equals("shelter_c/mean")) {
                    double apartK = shelterMeanApartK(line);
                    need(String.format(Locale.ROOT, "mean of the shelter by %.3f K", apartK), apartK <= 0.05);
                } else if (path.startsWith("shelter_c/")) {
                    need(line.name(), year.difference() <= 0.5);
                } else if (path.matches("gas_uses/.*/met_kwh|hygienisation_kwh/bought")) {
                    need(path, year.within(0.005, 0.5));
                } else if (path.equals("gas_holder_nm3/surplus")) {
                    need(path, year.within(0.005, 0.5 / KWH_PER_NM3));
                } else if (path.matches("gas_holder_(full|empty)_hours")) {
                    need(path, year.within(0.02, 3));
                }
            }
        }

        private double shelterMeanApartK(Line mean) {
            double worst = 0;
            for (int m = 0; m < reference.months().size(); m++) {
                worst = Math.max(
                        worst,
                        Pair.of(reference.months().get(m), fast.months().get(m), mean)
                                .difference());
            }
            return worst;
        }

        private void need(String what, boolean met) {
            if (!met) {
                missed.add(what);
            }
        }

        /** A heat may differ by a stroke where the slurry of the two engines stands apart at the ends of the period. */
        private void heat(String what, Pair pair, double share, double kWh, int from, int to) {
            if (!pair.within(share, kWh)) {
                boolean apart = Math.max(apartK(from), apartK(to)) > 0.05;
                excused += apart && pair.within(share, kWh + strokeKWh) ? 1 : 0;
                need(what + " of " + from + " to " + to, apart && pair.within(share, kWh + strokeKWh));
            }
        }

        private double apartK(int hour) {
            return hour == 0 ? 0 : Math.abs(trustedC[hour - 1] - quickC[hour - 1]);
        }

        /** Heats of the whole months and the points of the slurry's distribution; returns the largest difference of these. */
        private double months() {
            double worst = 0;
            int from = 0;
            for (int m = 0; m < reference.months().size(); m++) {
                Period trusted = reference.months().get(m);
                Period quick = fast.months().get(m);
                int to = from + (int) Math.round(trusted.hours());
                if (trusted.hours() >= 28 * 24) {
                    heat("solar heat", Pair.of(trusted, quick, SolarPart.HEAT), 0.005, 0.5, from, to);
                    heat("backup heat", Pair.of(trusted, quick, BackupPart.HEAT), 0.005, 0.5, from, to);
                    for (double share : new double[] {0.05, 0.5, 0.95}) {
                        worst = Math.max(
                                worst, Math.abs(point(trustedC, from, to, share) - point(quickC, from, to, share)));
                    }
                }
                from = to;
            }
            need("points of the slurry", worst <= 0.02);
            return worst;
        }

        private static double point(double[] celsius, int from, int to, double share) {
            double[] sorted = Arrays.copyOfRange(celsius, from, to);
            Arrays.sort(sorted);
            return sorted[(int) Math.round(share * (sorted.length - 1))];
        }

        private boolean belowMinimum() {
            Pair below = Pair.of(reference.whole(), fast.whole(), KeyFigures.BELOW_FLOOR_HOURS);
            double minimumC = design.control().minimumC();
            long near = Arrays.stream(trustedC)
                    .filter(c -> Math.abs(c - minimumC) <= 0.02)
                    .count();
            return below.within(0.01, Math.max(1, (double) near));
        }

        private static double starts(YearResult result) {
            return result.whole().of(SolarPart.STARTS) + result.whole().of(BackupPart.STARTS);
        }

        private static double residual(YearResult result) {
            return Math.max(
                    result.whole().of(Books.RESIDUAL_FRACTION),
                    result.months().stream()
                            .mapToDouble(month -> month.of(Books.RESIDUAL_FRACTION))
                            .max()
                            .orElse(0));
        }
    }
}
