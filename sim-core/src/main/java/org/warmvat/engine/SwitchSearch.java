package org.warmvat.engine;

/** Finds when the first switch moves within a step, on the step's own solution between its instants. */
final class SwitchSearch {

    /** A switching is placed to within this, s. */
    private static final double PLACED_WITHIN_S = 1e-3;

    /** A margin this little above its threshold is near enough, K. */
    private static final double NEAR_ENOUGH_K = 1e-5;

    /** A margin that stays this many times its own spread below the threshold is not searched for a hump in between. */
    private static final double CLEAR_OF_SPREAD = 0.5;

    /** A parabola that misses a margin at the beginning by less than this share of it is trusted in between. */
    private static final double SMOOTH = 0.05;

    /** So much of the gap further a line that reaches the threshold should lie above it. */
    private static final double BEYOND = 0.1;

    /** Where a margin is looked at besides the instants: early, since what a jump stirs up decays within minutes. */
    private static final double[] LOOKED_AT = {
        1.0 / 256, 1.0 / 64, 1.0 / 16, Parabola.SHARE[0], 0.4, Parabola.SHARE[1], 0.82, Parabola.SHARE[2]
    };

    private final Switchboard switchboard;
    private final ModalStep step;
    private final double[] sinceS = new double[LOOKED_AT.length + 1];
    private final double[] marginK = new double[LOOKED_AT.length + 1];

    SwitchSearch(Switchboard switchboard, ModalStep step) {
        this.switchboard = switchboard;
        this.step = step;
    }

    /**
     * Looks for the first switching.
     *
     * @param timeS beginning of the step last tried
     * @return seconds after the beginning, infinite when no switch moves
     */
    double crossingS(double timeS) {
        double atStart = switchboard.furthest(timeS, step.start());
        double highest = atStart;
        double lowest = atStart;
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            highest = Math.max(highest, step.margin(m));
            lowest = Math.min(lowest, step.margin(m));
        }
        if (highest < -CLEAR_OF_SPREAD * (highest - lowest)) {
            return Double.POSITIVE_INFINITY;
        }
        double missed = Math.abs(atStart - foreseen(0));
        boolean smooth = missed < SMOOTH * -atStart;
        int points = 1;
        sinceS[0] = 0;
        marginK[0] = atStart;
        int instant = 0;
        for (double share : LOOKED_AT) {
            boolean known = share == Parabola.SHARE[instant];
            if (!known && smooth && foreseen(share) + 2 * missed < 0) {
                continue;
            }
            sinceS[points] = known ? step.sinceS(instant) : share * step.sinceS(Parabola.END);
            marginK[points] = known ? step.margin(instant++) : marginAfter(timeS, sinceS[points]);
            double crestS = points > 2 ? crestS(timeS, points) : Double.NaN;
            if (crestS > 0) {
                return place(timeS, sinceS[points - 2], crestS, marginK[points - 2], marginAfter(timeS, crestS));
            }
            if (marginK[points] >= 0) {
                return place(timeS, sinceS[points - 1], sinceS[points], marginK[points - 1], marginK[points]);
            }
            points++;
        }
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Where the margin at the end of a step that was to end at a switching would be zero, by its slope over what an end may be moved.
     *
     * @param timeS beginning of the step last tried
     * @return seconds after the beginning, maybe beyond the end, infinite when the margin is negative and will stay so for a while
     */
    double nearbyS(double timeS) {
        double stepS = step.sinceS(Parabola.END);
        double marginK = step.margin(Parabola.END);
        double backS = ModalStep.NEARBY * stepS;
        double rise = marginK - marginAfter(timeS, stepS - backS);
        if (rise > Math.abs(marginK)) {
            return stepS - backS * marginK / rise;
        }
        return marginK < 0 ? Double.POSITIVE_INFINITY : crossingS(timeS);
    }

    /**
     * A time in the gap before the last point at which the margin is not negative, if a look beyond where the straight line from either
     * side reaches the threshold finds one: a margin may be the least of two, one rising and one falling, and of several switches.
     * Not a number if not.
     */
    private double crestS(double timeS, int last) {
        double fromS = sinceS[last - 2];
        double toS = sinceS[last - 1];
        double rise = (marginK[last - 2] - marginK[last - 3]) / (fromS - sinceS[last - 3]);
        double fall = (marginK[last] - marginK[last - 1]) / (sinceS[last] - toS);
        double fromLeftS = fromS - marginK[last - 2] / rise;
        double fromRightS = toS - marginK[last - 1] / fall;
        if (rise > 0 && fromLeftS < toS) {
            double beyondS = fromLeftS + BEYOND * (toS - fromLeftS);
            if (marginAfter(timeS, beyondS) >= 0) {
                return beyondS;
            }
        }
        if (fall < 0 && fromRightS > fromS) {
            double beyondS = fromRightS - BEYOND * (fromRightS - fromS);
            if (marginAfter(timeS, beyondS) >= 0) {
                return beyondS;
            }
        }
        return Double.NaN;
    }

    /** Margin at a share of the step by the parabola through those at its instants. */
    private double foreseen(double share) {
        double margin = 0;
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            margin += Parabola.at(m, share) * step.margin(m);
        }
        return margin;
    }

    private double marginAfter(double timeS, double sinceS) {
        return switchboard.furthest(timeS + sinceS, step.after(sinceS));
    }

    /**
     * Places a crossing between a negative margin and one that is not, by false position, and by the inverse parabola through three
     * points where that is safe (Chandrupatla, Advances in Engineering Software 28 (1997) 145-149).
     */
    private double place(double timeS, double fromS, double toS, double atFrom, double atTo) {
        double newS = toS;
        double newK = atTo;
        double otherS = fromS;
        double otherK = Math.min(atFrom, -NEAR_ENOUGH_K);
        double share = newK / (newK - otherK);
        while (Math.abs(otherS - newS) > PLACED_WITHIN_S && Math.abs(newK) > NEAR_ENOUGH_K) {
            double least = 0.3 * PLACED_WITHIN_S / Math.abs(otherS - newS);
            double tryS = newS + Math.min(1 - least, Math.max(least, share)) * (otherS - newS);
            double tryK = marginAfter(timeS, tryS);
            double thirdS = newS;
            double thirdK = newK;
            if (tryK >= 0 != newK >= 0) {
                thirdS = otherS;
                thirdK = otherK;
                otherS = newS;
                otherK = newK;
            }
            newS = tryS;
            newK = tryK;
            double place = (newS - otherS) / (thirdS - otherS);
            double height = (newK - otherK) / (thirdK - otherK);
            if (height * height < place && (1 - height) * (1 - height) < 1 - place) {
                share = newK / (otherK - newK) * thirdK / (otherK - thirdK)
                        + (thirdS - newS) / (otherS - newS) * newK / (thirdK - newK) * otherK / (thirdK - otherK);
            } else {
                share = 0.5;
            }
        }
        return newK < -NEAR_ENOUGH_K ? otherS : newS;
    }
}
