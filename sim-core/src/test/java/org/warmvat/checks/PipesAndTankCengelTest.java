package org.warmvat.checks;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.warmvat.envelope.LayerChain;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer: examples 3-8 (insulated steam pipe; inputs transcribed, answers from
 * memory), 3-9 (insulated wire and critical radius; likewise) and problem 3-70 (insulation for a wanted loss; seen).
 * Tolerance: half the last printed digit.
 */
class PipesAndTankCengelTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, examples 3-8, 3-9 and problem 3-70; FOSSEE Scilab textbook companion 587",
                "3-8: pipe 50/55 mm of 80, wool 30 mm of 0.05 W/mK, films 60 and 18 W/m2K, 320 and 5 °C. 3-9: 80 W over 5 m,"
                        + " radii 1.5 and 3.5 mm of 0.15, film 12, 30 °C. 3-70: 50 m of 0.1 m, film 20, 150 and 15 °C, 0.035,"
                        + " 4241 W; thickness found by search.",
                Source.HALF_DIGIT);
    }

    private static double wire(double coverM) {
        return new Chains.Wall(Chains.pipe(0.003, 5, Chains.layer(coverM, 0.15)), Chains.NO_FILM, 12).wattsPerK();
    }

    private static double criticalRadiusMm() {
        double cover = new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(500),
                        new UnivariateObjectiveFunction(PipesAndTankCengelTest::wire),
                        GoalType.MAXIMIZE,
                        new SearchInterval(1e-4, 0.05))
                .getPoint();
        return 1000 * (0.0015 + cover);
    }

    @Override
    public void fill(Sheet sheet) {
        LayerChain steam = Chains.pipe(0.05, 1, Chains.layer(0.0025, 80), Chains.layer(0.03, 0.05));
        double watts = new Chains.Wall(steam, 60, 18).watts(320, 5);
        double wool = new Chains.Wall(Chains.pipe(0.055, 1, Chains.layer(0.03, 0.05)), Chains.NO_FILM, Chains.NO_FILM)
                .wattsPerK();
        sheet.table(Provenance.MEMORY)
                .value("3-8: loss of a metre, W", 121, watts, 0.5)
                .value("3-8: resistance of a metre, K/W", 2.61, 315 / watts, 0.005)
                .value("3-8: drop across the wool, K", 284, watts / wool, 0.5);
        sheet.table(Provenance.MEMORY)
                .value("3-9: interface, °C", 105, 30 + 80 / wire(0.002), 0.5)
                .value("3-9: critical radius, mm", 12.5, criticalRadiusMm(), 0.05);
        double thickness = Chains.solve(
                d -> new Chains.Wall(Chains.pipe(0.1, 50, Chains.layer(d, 0.035)), Chains.NO_FILM, 20).watts(150, 15),
                4241,
                1e-3,
                0.1);
        sheet.table(Provenance.SEEN).value("3-70: outer radius for 4241 W, m", 0.0692, 0.05 + thickness, 5e-5);
    }
}
