package org.warmvat.envelope;

import org.warmvat.design.Fitting;

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
    public static FittingLoss of(Fitting fitting) {
        if (fitting instanceof Fitting.Bar bar) {
            return new FittingLoss(
                    bar.count() * bar.material().conductivityWPerMK() * bar.sectionM2() / bar.lengthM(), 1);
        }
        if (fitting instanceof Fitting.Pipe pipe) {
            return fin(pipe);
        }
        return new FittingLoss(((Fitting.Stated) fitting).uaWPerK(), 1);
    }

    private static FittingLoss fin(Fitting.Pipe pipe) {
        double boreRadiusM = pipe.boreM() / 2;
        double r1 = boreRadiusM + pipe.wall().thicknessM();
        double r2 = r1 + pipe.insulation().thicknessM();
        double insulation = Math.log(r2 / r1) / pipe.insulation().conductivityWPerMK();
        double up = 2 * Math.PI / (insulation + 1 / (pipe.still().outerWPerM2K() * r2));
        double ka = pipe.still().slurryConductivityWPerMK() * Math.PI * boreRadiusM * boreRadiusM
                + pipe.wall().material().conductivityWPerMK() * Math.PI * (r1 * r1 - boreRadiusM * boreRadiusM);
        double ml = Math.sqrt(up / ka) * pipe.lengthM();
        return new FittingLoss(Math.sqrt(up * ka) * Math.tanh(ml), 1 / Math.cosh(ml));
    }
}
