package org.warmvat.envelope;

import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;

/**
 * Heat lost by a fitting (equation 2.7; the pipe as a fin with an adiabatic tip: Incropera and others, Fundamentals of Heat
 * and Mass Transfer, section 3.6).
 *
 * @param uaWPerK conductance from the slurry to the air, W/K
 * @param tipShare how far the coldest end follows the slurry, {@code (T_end - T_a)/(T_s - T_a)}; 1 for what has no end of its
 *     own
 */
public record FittingLoss(double uaWPerK, double tipShare) {

    /** The loss of a fitting in one of its three forms. */
    public static FittingLoss of(Fitting fitting, Still still) {
        if (fitting instanceof Fitting.Bar bar) {
            Fitting.Bars b = bar.bars();
            return new FittingLoss(b.count() * b.material().conductivityWPerMK() * b.sectionM2() / b.lengthM(), 1);
        }
        if (fitting instanceof Fitting.Pipe pipe) {
            return fin(pipe.pipe(), still);
        }
        return new FittingLoss(((Fitting.Stated) fitting).uaWPerK(), 1);
    }

    /**
     * What is around the wall of a pipe that sticks out.
     *
     * @param slurryWPerMK conductivity of the still slurry in it, W/(m K)
     * @param outerWPerM2K outer film, W/(m2 K)
     */
    public record Still(double slurryWPerMK, double outerWPerM2K) {

        /** What a design says about it. */
        public static Still of(Design design) {
            return new Still(
                    design.contents().conductivityWPerMK(),
                    design.envelope().films().pipeOuterWPerM2K());
        }
    }

    private static FittingLoss fin(Fitting.Stub pipe, Still still) {
        double boreRadiusM = pipe.boreM() / 2;
        double r1 = boreRadiusM + pipe.wallM();
        double r2 = r1 + pipe.insulationM();
        double insulation = Math.log(r2 / r1) / pipe.insulationWPerMK();
        double up = 2 * Math.PI / (insulation + 1 / (still.outerWPerM2K() * r2));
        double ka = still.slurryWPerMK() * Math.PI * boreRadiusM * boreRadiusM
                + pipe.wallMaterial().conductivityWPerMK() * Math.PI * (r1 * r1 - boreRadiusM * boreRadiusM);
        double ml = Math.sqrt(up / ka) * pipe.lengthM();
        return new FittingLoss(Math.sqrt(up * ka) * Math.tanh(ml), 1 / Math.cosh(ml));
    }
}
