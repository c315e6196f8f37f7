package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.question.holder.HolderStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.StudyRefused;

/**
 * Published: 0.6 x 2.5 m3 a day make a holder of 1.5 m3 (Werner, Stoehr, Hees 1989, page 113), 60 % of the greatest daily production
 * in a course sheet. Beside it what even production of G a day asks for when as much is burnt at an even rate in daily windows: one
 * window of h hours G (1 - h/24), and three windows by hand. Tolerance 2 %: the size is sought to one per cent, upwards.
 */
class HolderVolumeWernerStoehrHees1989Test implements Published {

    private static final double METHANE_J_PER_NM3 = 35.8e6;
    private static final double FRACTION = 0.58;

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Werner, Stöhr and Hees",
                "U. Werner, U. Stöhr, N. Hees, Biogas Plants in Animal Husbandry (1989), page 113.",
                "A tank at an even temperature, fed day and night; as much gas burnt in the windows as is made, all of it served.",
                "2 %: the size is sought to 1 %, upwards; 0.6 is a rule of thumb for two windows.");
    }

    @Override
    public void fill(Sheet sheet) {
        Sheet.Table seen = sheet.table(Provenance.SEEN);
        seen.value("0.6 of 2.5 m3 a day, m3", 1.5, 0.6 * 2.5, 1e-12);
        Sheet.Table derived = sheet.table(Provenance.DERIVED);
        value(derived, "18:00 to 19:30, share of a day's gas", 0.9375, 18, 1.5);
        value(derived, "18:00 to 21:00", 0.875, 18, 3);
        value(derived, "8:00 to 20:00", 0.5, 8, 12);
        value(derived, "6:00 to 8:00 and 18:00 to 20:00", 0.41667, 6, 2, 18, 2);
        value(derived, "6:00 to 7:30, 12:00 to 13:00, 18:00 to 20:00", 0.41667, 6, 1.5, 12, 1, 18, 2);
        value(derived, "7:00 to 8:00, 12:00 to 13:00, 18:00 to 19:00", 0.5, 7, 1, 12, 1, 18, 1);
    }

    private static void value(Sheet.Table table, String what, double published, double... startsAndHours) {
        table.value(what, published, share(startsAndHours), 0.02 * published);
    }

    /** The smallest holder over a day's gas. */
    private static double share(double... startsAndHours) {
        List<DailyWindow> windows = new java.util.ArrayList<>();
        double hours = 0;
        for (int i = 0; i < startsAndHours.length; i += 2) {
            windows.add(new DailyWindow(3600 * startsAndHours[i], 3600 * startsAndHours[i + 1]));
            hours += startsAndHours[i + 1];
        }
        double madeNm3 = answer(plan(1, DailySchedule.of(windows))).asDesigned().madeNm3PerDay();
        double kw = 0.9999 * madeNm3 * METHANE_J_PER_NM3 * FRACTION / (3.6e6 * hours);
        var result = answer(plan(kw, DailySchedule.of(windows)));
        return result.smallestM3().orElseThrow() / result.daysGasM3();
    }

    private static HolderStudy.Result answer(Design design) {
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            return HolderStudy.run(design, InventedWeather.steady(36, 24 * 30), new ExponentialEngine(), 0, parallel);
        } catch (StudyRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    private static Design plan(double kw, DailySchedule hours) {
        TankPlan plan = new TankPlan();
        plan.solar = false;
        plan.backup = Optional.empty();
        plan.indoors(36);
        plan.uninsulated();
        plan.feedTemperature = new FeedTemperature.Fixed(36);
        plan.water = Optional.empty();
        plan.feedTimes = DailySchedule.continuous();
        plan.gas = Optional.of(new Gas(
                35,
                FRACTION,
                new CardinalTemperatures(8, 38, 46),
                Optional.empty(),
                0,
                1440,
                Optional.of(new GasHolder(1, 0.5, 0.05, 0, 2)),
                List.of(new GasUse(
                        "cooker",
                        GasUse.Kind.BURNER,
                        kw,
                        new GasUse.Whole(0.55),
                        hours,
                        List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12))),
                Optional.empty()));
        return plan.build();
    }
}
