package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Material;
import org.warmvat.sample.TankPlan;

/** Fittings in their three forms by hand (equation 2.7). */
class FittingLossTest {

    @Test
    void aStatedLossIsTakenAsItIs() {
        assertEquals(
                new FittingLoss(0.25, 1),
                FittingLoss.of(new Fitting.Stated("neck", 0.25), new FittingLoss.Still(0.6, 10)));
    }

    /** Four legs of 400 mm2 stainless steel through 150 mm: 4 x 17 x 4e-4/0.15 W/K. */
    @Test
    void barsConductByTheirSection() {
        FittingLoss legs = FittingLoss.of(
                new Fitting.Bar("legs", new Fitting.Bars(TankPlan.STEEL, 400e-6, 0.15, 4)),
                new FittingLoss.Still(0.6, 10));
        assertEquals(0.181333, legs.uaWPerK(), 5e-7);
        assertEquals(1, legs.tipShare());
    }

    /**
     * The demonstration's outlet: bore 110 mm, pvc 3.2 mm, 50 mm foam, 0.6 m. Step by step: U P = 2 pi/(ln(108.2/58.2)/0.027 +
     * 1/(10 x 0.1082)), k A = 0.6 pi 0.055^2 + 0.17 pi (0.0582^2 - 0.055^2).
     */
    @Test
    void theInsulatedPipeIsAFin() {
        double up = 2 * Math.PI / (Math.log(108.2 / 58.2) / 0.027 + 1 / 1.082);
        double ka = 0.6 * Math.PI * 0.055 * 0.055 + 0.17 * Math.PI * (0.0582 * 0.0582 - 0.055 * 0.055);
        double m = Math.sqrt(up / ka);
        FittingLoss fin = FittingLoss.of(TankPlan.pipe(), new FittingLoss.Still(0.6, 10));
        assertEquals(Math.sqrt(up * ka) * Math.tanh(0.6 * m), fin.uaWPerK(), 1e-12);
        assertEquals(1 / Math.cosh(0.6 * m), fin.tipShare(), 1e-12);
        // the same numbers worked out on paper
        assertEquals(0.26300, up, 1e-5);
        assertEquals(0.0058955, ka, 1e-7);
    }

    private static Fitting.Pipe pipe(double insulationM, double lengthM) {
        return new Fitting.Pipe(
                "stub",
                new Fitting.Stub(0.1, new Material("plastic", 0.2, 950, 1900), 0.005, lengthM, insulationM, 0.03));
    }

    /** Without insulation there is no logarithm: {@code U P = 2 pi r 10} on the pipe's own radius. */
    @Test
    void aBarePipeHasOnlyItsFilm() {
        double up = 2 * Math.PI * 0.055 * 10;
        double ka = 0.6 * Math.PI * 0.0025 + 0.2 * Math.PI * (0.055 * 0.055 - 0.0025);
        FittingLoss bare = FittingLoss.of(pipe(0, 0.4), new FittingLoss.Still(0.6, 10));
        assertEquals(Math.sqrt(up * ka) * Math.tanh(0.4 * Math.sqrt(up / ka)), bare.uaWPerK(), 1e-12);
    }

    /** A short fin is as warm as the slurry all over and loses U P L; a long one is cold at its end and loses no more. */
    @Test
    void shortAndLongFinsHaveTheirLimits() {
        FittingLoss brief = FittingLoss.of(pipe(0.05, 0.01), new FittingLoss.Still(0.6, 10));
        double up = 2 * Math.PI / (Math.log(0.105 / 0.055) / 0.03 + 1 / 1.05);
        // tanh(x)/x = 1 - x^2/3 and 1/cosh x = 1 - x^2/2 at x = m L = 0.075
        assertEquals(1 - 0.00186, brief.uaWPerK() / (up * 0.01), 1e-4);
        assertEquals(1 - 0.0028, brief.tipShare(), 1e-4);
        FittingLoss endless = FittingLoss.of(pipe(0.05, 50), new FittingLoss.Still(0.6, 10));
        assertEquals(0, endless.tipShare(), 1e-12);
        assertEquals(
                endless.uaWPerK(),
                FittingLoss.of(pipe(0.05, 25), new FittingLoss.Still(0.6, 10)).uaWPerK(),
                1e-12);
    }
}
