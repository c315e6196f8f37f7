package org.warmvat.checks;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.warmvat.design.tank.Shape;

/**
 * Published: F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 3.5 (critical radius; transcribed)
 * and problem 3.46 (urethane on a water heater: side and two flat ends, the nearest a textbook comes to a digester; answers
 * of the older edition from memory, of the newer one seen). Tolerance: half the last printed digit.
 */
class TankAndWireIncropera3Test implements Published {

    private static final double VOLUME_M3 = 0.379;

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Incropera",
                "F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 3.5 (FOSSEE textbook companion) and"
                        + " problem 3.46",
                "3.5: 0.055 W/mK, film 5, inner radius 5 mm. 3.46: 0.379 m3, urethane of 0.026 W/mK, film 2 W/m2K, 55 and 20 °C,"
                        + " steel and water films left out; length over diameter 1 (going on with the printed 0.784 m), and 2.",
                Source.HALF_DIGIT);
    }

    private static double criticalRadiusMm() {
        double cover = new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(500),
                        new UnivariateObjectiveFunction(d -> new Chains.Wall(
                                        Chains.pipe(0.01, 1, Chains.layer(d, 0.055)), Chains.NO_FILM, 5)
                                .wattsPerK()),
                        GoalType.MAXIMIZE,
                        new SearchInterval(1e-4, 0.05))
                .getPoint();
        return 1000 * (0.005 + cover);
    }

    /** Bore of a cylinder of the volume, by the tank's own geometry. */
    private static double diameterM(double lengthOverDiameter) {
        return Chains.solve(d -> new Shape.UprightCylinder(d).planAreaM2() * d * lengthOverDiameter, VOLUME_M3, 0.3, 2);
    }

    private static double watts(double diameterM, double lengthM, double urethaneM) {
        double side = new Chains.Wall(
                        Chains.pipe(diameterM, lengthM, Chains.layer(urethaneM, 0.026)), Chains.NO_FILM, 2)
                .watts(55, 20);
        double end = new Chains.Wall(Chains.plane(Chains.layer(urethaneM, 0.026)), Chains.NO_FILM, 2).watts(55, 20);
        return side + 2 * end * new Shape.UprightCylinder(diameterM).planAreaM2();
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.TRANSCRIBED).value("3.5: critical radius, mm", 11, criticalRadiusMm(), 0.05);
        double round = diameterM(1);
        sheet.table(Provenance.SEEN).value("3.46: diameter = length, m", 0.784, round, 5e-4);
        double slim = diameterM(2);
        double printed = 0.784;
        double thickness = Chains.solve(d -> watts(printed, printed, d), 31.7, 0.005, 0.3);
        sheet.table(Provenance.MEMORY)
                .value("3.46: loss under 25 mm, W", 71.3, watts(printed, printed, 0.025), 0.05)
                .notReproduced(
                        "3.46: loss under 25 mm, twice as long as wide, W",
                        76.1,
                        watts(slim, 2 * slim, 0.025),
                        0.05,
                        "0.1 W apart; the remembered figure goes with a diameter rounded up.");
        sheet.table(Provenance.SEEN)
                .notReproduced(
                        "3.46, newer edition: urethane for 31.7 W, mm",
                        68,
                        1000 * thickness,
                        0.5,
                        "the printed answer does not satisfy its own equation: under 68 mm the loss is 34.7 W.");
    }
}
