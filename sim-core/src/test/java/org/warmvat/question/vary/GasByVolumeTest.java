package org.warmvat.question.vary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.Control;
import org.warmvat.design.season.Minimum;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.DerivedFigures;

class GasByVolumeTest {

    private static final Feedstock STOCK = new Feedstock(
            Optional.empty(), "scraps", 6, 0.22, 0.88, MethanePotential.ofNumber(0.42), DigestionRate.ofNumber(0.20));

    private static Design at(double setpointC) {
        TankPlan plan = new TankPlan();
        plan.feedstocks = List.of(STOCK);
        plan.control = new Control(setpointC, 1, new Minimum.At(setpointC - 2), 3, new Control.DailyChange(1, 2), 10);
        return plan.build();
    }

    /** Half the rate needs twice the volume: with one feedstock the gas depends on k V alone. */
    @Test
    void volumeGrowsAsDigestionSlows() {
        Design warm = at(36);
        Design cool = at(25);
        double rates = warm.gas().orElseThrow().rateFactor(36)
                / cool.gas().orElseThrow().rateFactor(25);
        assertTrue(rates > 1.5, "the test needs a slower tank: " + rates);
        double wanted = GasByVolume.methaneNm3PerDay(warm, 36);
        double volumeM3 = warm.tank().liquidVolumeM3();
        assertEquals(volumeM3, GasByVolume.volumeForM3(warm, wanted), 1e-9);
        assertEquals(rates * volumeM3, GasByVolume.volumeForM3(cool, wanted), 1e-9);
    }

    @Test
    void moreThanTheFeedHoldsNeedsAnInfiniteTank() {
        double all = STOCK.methaneNm3PerKgVs() * STOCK.volatileSolidsKgPerDay();
        assertEquals(Double.POSITIVE_INFINITY, GasByVolume.volumeForM3(at(36), all));
        assertEquals(0, GasByVolume.volumeForM3(at(36), 0));
    }

    @Test
    void steadyMethaneIsTheDerivedFigure() {
        Design design = new TankPlan().build();
        assertEquals(
                DerivedFigures.of(design, 3, 10, -10).methaneNm3PerDay(),
                GasByVolume.methaneNm3PerDay(design, 36),
                1e-12);
    }

    @Test
    void cautionSinksWithTheRate() {
        assertEquals(3, GasByVolume.cautiousLoading(at(35)), 1e-12);
        Design cool = at(20);
        double share = cool.gas().orElseThrow().rateFactor(20)
                / cool.gas().orElseThrow().rateFactor(35);
        assertEquals(3 * share, GasByVolume.cautiousLoading(cool), 1e-12);
        assertEquals(6 * 0.22 * 0.88 / cool.tank().liquidVolumeM3(), GasByVolume.loading(cool), 1e-12);
    }
}
