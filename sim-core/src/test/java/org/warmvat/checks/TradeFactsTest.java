package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.heating.Control;
import org.warmvat.design.season.Minimum;
import org.warmvat.gas.GasPart;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.DerivedFigures;

/**
 * Facts of the trade, common practice, no source: about forty days' retention for food waste, air dosing of about 2 % of the
 * gas, next to no power for a paddle that turns once in twenty minutes, and a much larger tank at 25 °C for the same gas. Held
 * against the demonstration's tank. Tolerance: as wide as the word "about".
 */
class TradeFactsTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.TRADE,
                "The trade",
                "Common practice, no source.",
                "The demonstration's tank of 900 litres with 10 kg of scraps and greens and 10 kg of water a day at 36 °C; air of 1 L/h;"
                        + " paddle of 60 N m. At 25 °C the tank is made deeper until it gives the same gas.",
                "As wide as the word \"about\": a quarter of the time, half of the share.");
    }

    private static double methane(double setpointC, double depthM) {
        TankPlan plan = new TankPlan();
        plan.control = new Control(setpointC, 1, new Minimum.At(20), 3, new Control.DailyChange(1, 2), 10);
        plan.depthM = depthM;
        return DerivedFigures.of(plan.build(), 3, 9, -10).methaneNm3PerDay();
    }

    /** How many times the volume a tank needs at 25 °C for the gas that it gives at 36. */
    private static double largerAt25() {
        double depth = new TankPlan().depthM;
        return Chains.solve(d -> methane(25, d), methane(36, depth), depth, 19) / depth;
    }

    @Override
    public void fill(Sheet sheet) {
        Design design = new TankPlan().build();
        double biogasPerH =
                methane(36, new TankPlan().depthM) / design.gas().orElseThrow().methaneFraction() / 24;
        double airShare =
                GasPart.dosedAirNm3PerH(design.gas().orElseThrow().airDosing().orElseThrow()) / biogasPerH;
        sheet.table(Provenance.COMMON_PRACTICE)
                .value("retention of the demonstration, days", 40, design.retentionDays(), 10)
                .value("dosed air over biogas, %", 2, 100 * airShare, 1)
                .value(
                        "shaft of a paddle once in twenty minutes, W",
                        0,
                        NetReturn.slowPaddle().shaftW(),
                        1)
                .value(
                        "tank at 25 °C over tank at 36 °C for the same gas (\"much larger\", read as twice)",
                        2,
                        largerAt25(),
                        0.5);
    }

    /** Forty days get most of it: twice the tank gives less than an eighth more, half the tank loses more than a tenth. */
    @Test
    void fortyDaysAreEnoughForFoodWaste() {
        double depth = new TankPlan().depthM;
        assertTrue(methane(36, 2 * depth) < 1.125 * methane(36, depth));
        assertTrue(methane(36, depth / 2) < 0.9 * methane(36, depth));
    }
}
