package org.warmvat.question.year;

import java.util.Arrays;
import java.util.Locale;
import org.warmvat.account.Books;
import org.warmvat.design.BackupCircuit;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.ReferenceEngine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.tank.StudyRefused;

/**
 * How far the fast engine is from the reference engine on one case, by the criteria of the model page, section 9.
 *
 * @param name of the case
 * @param hours run
 * @param solar heat from the sun by either engine, kWh
 * @param backup heat from the backup by either engine, kWh
 * @param starts switches that went on, both circuits, by either engine
 * @param hoursWithin share of hours in which the slurry differs by 0.02 K at most
 * @param worstBeforeK largest difference of the slurry up to the first switching that only one engine makes
 * @param firstApartHour hour of that switching, the number of hours when there is none
 * @param worstK largest difference of the slurry in any hour
 * @param residual worst share of the ledgers left over, whole run and months
 */
record Agreement(
        String name,
        int hours,
        Pair solar,
        Pair backup,
        Pair starts,
        double hoursWithin,
        double worstBeforeK,
        int firstApartHour,
        double worstK,
        double residual) {

    /** Slurry temperatures nearer than this agree, K. */
    static final double SLURRY_K = 0.02;

    /**
     * A figure by both engines.
     *
     * @param reference by the reference engine
     * @param fast by the fast engine
     */
    record Pair(double reference, double fast) {
        double difference() {
            return Math.abs(fast - reference);
        }

        boolean within(double share, double absolute) {
            return difference() <= Math.max(share * Math.abs(reference), absolute);
        }
    }

    /** Hour by hour: slurry and switchings. */
    private static final class Course implements HourSink {
        private final double[] slurryC;
        private final int[][] starts;

        Course(int hours, int switches) {
            slurryC = new double[hours];
            starts = new int[hours][switches];
        }

        @Override
        public boolean accept(HourRecord hour) {
            slurryC[hour.hour()] = hour.state().nodeC(0);
            for (int i = 0; i < starts[hour.hour()].length; i++) {
                // twice the starts and the position: tells a start from a stop within one hour
                starts[hour.hour()][i] = 2 * hour.starts(i) + (hour.state().isOn(i) ? 1 : 0);
            }
            return true;
        }
    }

    /** Runs a case on both engines. */
    static Agreement of(EqualityCases.Case one) throws StudyRefused {
        var design = one.plan().build();
        var weather = one.weather().get();
        int switches = (design.solar().isPresent() ? 1 : 0)
                + design.backup()
                        .map(backup -> backup.through() instanceof BackupCircuit.Immersed ? 1 : 2)
                        .orElse(0);
        Course trusted = new Course(weather.hours(), switches);
        Course quick = new Course(weather.hours(), switches);
        YearResult reference = YearStudy.run(design, weather, new ReferenceEngine(), trusted);
        YearResult fast = YearStudy.run(design, weather, new ExponentialEngine(), quick);
        int hours = weather.hours();
        int apart = 0;
        while (apart < hours && Arrays.equals(trusted.starts[apart], quick.starts[apart])) {
            apart++;
        }
        double worstBefore = 0;
        double worst = 0;
        int within = 0;
        for (int hour = 0; hour < hours; hour++) {
            double difference = Math.abs(trusted.slurryC[hour] - quick.slurryC[hour]);
            within += difference <= SLURRY_K ? 1 : 0;
            worst = Math.max(worst, difference);
            worstBefore = hour < apart ? Math.max(worstBefore, difference) : worstBefore;
        }
        return new Agreement(
                one.name(),
                hours,
                new Pair(reference.whole().of(SolarPart.HEAT), fast.whole().of(SolarPart.HEAT)),
                new Pair(reference.whole().of(BackupPart.HEAT), fast.whole().of(BackupPart.HEAT)),
                new Pair(starts(reference), starts(fast)),
                (double) within / hours,
                worstBefore,
                apart,
                worst,
                Math.max(residual(reference), residual(fast)));
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

    /** Whether every criterion is met; a few weeks are held to the same shares as a year. */
    boolean isMet() {
        return solar.within(0.001, 1)
                && backup.within(0.001, 1)
                && starts.within(0.01, 2)
                && hoursWithin >= 0.95
                && worstBeforeK <= SLURRY_K
                && residual < 1e-4;
    }

    /** One line of the list. */
    String line() {
        return String.format(
                Locale.ROOT,
                "%-42s %5d h  solar %9.2f %+8.3f  backup %9.2f %+8.3f  starts %5.0f %+4.0f  within %6.2f %%"
                        + "  before the first switching apart (h %5d) %.4f K  worst %.3f K  ledger %.1e  %s",
                name,
                hours,
                solar.reference(),
                solar.fast() - solar.reference(),
                backup.reference(),
                backup.fast() - backup.reference(),
                starts.reference(),
                starts.fast() - starts.reference(),
                100 * hoursWithin,
                firstApartHour,
                worstBeforeK,
                worstK,
                residual,
                isMet() ? "met" : "NOT MET");
    }
}
