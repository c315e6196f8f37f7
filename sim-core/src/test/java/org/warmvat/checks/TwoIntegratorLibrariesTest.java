package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.BackupSource;
import org.warmvat.design.RunIn;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HipparchusEngine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.ReferenceEngine;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.study.YearStudy;
import org.warmvat.tank.StudyRefused;

/**
 * The whole tank, both circuits, paddle, feed and gas, for a month by two integrators of two libraries that share no code:
 * Dormand and Prince's 8(5,3) of Commons Math and their 5(4) of Hipparchus, each with its own location of switchings.
 */
class TwoIntegratorLibrariesTest {

    private static RunResult april(Engine engine) throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 8));
        plan.runIn = new RunIn.Days(0);
        return YearStudy.run(plan.build(), InventedWeather.days(90, 30), engine, HourSink.IGNORE);
    }

    /** Slurry within 1e-4 K at every hour, energies within 1e-5: both integrate to 1e-9 and locate switchings to 1e-6 s. */
    @Test
    void theyAgreeOnAMonth() throws StudyRefused {
        RunResult commons = april(new ReferenceEngine());
        RunResult hipparchus = april(new HipparchusEngine());
        for (int hour = 0; hour < commons.hourly().hours(); hour++) {
            assertEquals(
                    commons.hourly().slurryC()[hour],
                    hipparchus.hourly().slurryC()[hour],
                    1e-4,
                    "slurry, hour " + hour);
        }
        Period one = commons.year();
        Period other = hipparchus.year();
        same(one.heats().solarKWh(), other.heats().solarKWh(), "solar heat");
        same(one.heats().backupKWh(), other.heats().backupKWh(), "backup heat");
        same(one.heats().feedKWh(), other.heats().feedKWh(), "feed");
        same(one.losses().totalKWh(), other.losses().totalKWh(), "losses");
        same(one.gas().methaneNm3(), other.gas().methaneNm3(), "methane");
        same(one.electricity().totalKWh(), other.electricity().totalKWh(), "electricity");
        assertEquals(one.counts().solarPumpStarts(), other.counts().solarPumpStarts());
        assertEquals(one.counts().backupStarts(), other.counts().backupStarts());
    }

    private static void same(double one, double other, String what) {
        assertEquals(one, other, 1e-5 * Math.abs(one), what);
    }
}
