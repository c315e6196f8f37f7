package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.RunIn;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.reference.HipparchusEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;

/**
 * The whole tank, both circuits, paddle, feed and gas, for a month by two integrators of two libraries that share no code:
 * Dormand and Prince's 8(5,3) of Commons Math and their 5(4) of Hipparchus, each with its own location of switchings.
 */
class TwoIntegratorLibrariesTest {

    private static YearResult april(Engine engine) throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 8));
        plan.runIn = new RunIn.Days(0);
        return YearStudy.run(plan.build(), new Runner(InventedWeather.days(90, 30), engine), HourSink.IGNORE);
    }

    /** Slurry within 1e-4 K at every hour, energies within 1e-5: both integrate to 1e-9 and locate switchings to 1e-6 s. */
    @Test
    void theyAgreeOnAMonth() throws StudyRefused {
        YearResult commons = april(new ReferenceEngine());
        YearResult hipparchus = april(new HipparchusEngine());
        for (int hour = 0; hour < commons.hourly().hours(); hour++) {
            assertEquals(
                    commons.hourly().orZero("slurry_c")[hour],
                    hipparchus.hourly().orZero("slurry_c")[hour],
                    1e-4,
                    "slurry, hour " + hour);
        }
        Period one = commons.whole();
        Period other = hipparchus.whole();
        same(one.of(SolarPart.HEAT), other.of(SolarPart.HEAT), "solar heat");
        same(one.of(BackupPart.HEAT), other.of(BackupPart.HEAT), "backup heat");
        same(one.of(FeedPart.FEED), other.of(FeedPart.FEED), "feed");
        same(Lines.lossKWh(one), Lines.lossKWh(other), "losses");
        same(one.of(GasPart.METHANE_MADE), other.of(GasPart.METHANE_MADE), "methane");
        same(one.of(Meter.ELECTRICITY), other.of(Meter.ELECTRICITY), "electricity");
        assertEquals(one.of(SolarPart.STARTS), other.of(SolarPart.STARTS));
        assertEquals(one.of(BackupPart.STARTS), other.of(BackupPart.STARTS));
    }

    private static void same(double one, double other, String what) {
        assertEquals(one, other, 1e-5 * Math.abs(one), what);
    }
}
