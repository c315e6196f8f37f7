package org.warmvat.engine.exponential;

/**
 * A difference d with a linear and a quadratic loss under a constant drive, {@code C d' = S - k d - a d |d|}: Riccati's equation with
 * constant coefficients, {@code d = goal + span w/(1 - w)} with {@code w = w0 exp(-rate t)} (Ince, Ordinary Differential Equations,
 * section 2.15). The sign of the larger of beginning and goal is taken for that of d throughout.
 */
final class RiccatiSolution {

    /** Without any linear loss and drive the closed form is of another kind; so little more is nothing. */
    private static final double LEAST_LOSS_W_PER_K = 1e-9;

    double ratePerS;

    private double signedWPerK2;
    private double sign;
    private double startK;
    private double goalK;
    private double spanK;
    private double w0;
    private double capacityJPerK;
    private boolean linear;
    /** Of the time last asked about: what is left of w0, how much the denominator has grown as a logarithm; the integral where linear. */
    private double endW;

    private double logarithm;
    private double endKs;

    /** Sets the problem: drive S in W, loss k in W/K, a in W/K2, capacity in J/K, beginning in K. */
    void set(double driveW, double linearLossWPerK, double quadraticWPerK2, double capacity, double beginK) {
        double lossWPerK = Math.max(linearLossWPerK, LEAST_LOSS_W_PER_K);
        capacityJPerK = capacity;
        startK = beginK;
        double linearGoalK = driveW / lossWPerK;
        sign = Math.abs(beginK) > Math.abs(linearGoalK) ? Math.signum(beginK) : Math.signum(driveW);
        signedWPerK2 = sign < 0 ? -quadraticWPerK2 : quadraticWPerK2;
        double discriminant = lossWPerK * lossWPerK + 4 * signedWPerK2 * driveW;
        linear = !(quadraticWPerK2 > 0 && discriminant > 0);
        if (linear) {
            // no real goal: where the difference passes 0 to the other sign; its square is then small
            ratePerS = lossWPerK / capacity;
            goalK = driveW / capacity - ratePerS * beginK;
        } else {
            double root = Math.sqrt(discriminant);
            goalK = 2 * driveW / (lossWPerK + root);
            spanK = root / signedWPerK2;
            w0 = (beginK - goalK) / (beginK - goalK + spanK);
            ratePerS = root / capacity;
        }
    }

    /** The difference after a time, K. */
    double at(double t, PhiFunctions phi) {
        if (linear) {
            phi.at(ratePerS * t);
            endKs = startK * t + t * t * phi.phi2 * goalK;
            return startK + t * phi.phi1 * goalK;
        }
        endW = w0 * Math.exp(-ratePerS * t);
        return goalK + spanK * endW / (1 - endW);
    }

    /** Integral of the difference up to the time last asked about, K s. */
    double integralKs(double t) {
        if (linear) {
            return endKs;
        }
        // not log1p, which leaves compiled code; what cancels is 1e-16 of a time constant
        logarithm = Math.log((1 - endW) / (1 - w0));
        return goalK * t + capacityJPerK / signedWPerK2 * logarithm;
    }

    /** Integral of the quadratic loss up to the time last asked about, J. */
    double quadraticLossJ(double t) {
        if (linear) {
            return 0;
        }
        double ofFirst = logarithm / ratePerS;
        double ofSecond = -((endW - w0) / ((1 - endW) * (1 - w0)) + logarithm) / ratePerS;
        return signedWPerK2 * (goalK * goalK * t + 2 * goalK * spanK * ofFirst + spanK * spanK * ofSecond);
    }
}
