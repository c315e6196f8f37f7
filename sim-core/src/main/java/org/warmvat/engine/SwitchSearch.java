package org.warmvat.engine;

/** Finds when the first switch moves within a step, on the step's own solution between its instants. */
final class SwitchSearch {

    /** A switching is placed to within this, s. */
    private static final double PLACED_WITHIN_S = 1e-4;

    /** A margin this little above its threshold is near enough, K. */
    private static final double NEAR_ENOUGH_K = 1e-8;

    /** A margin that stays this many times its own spread below the threshold is not searched for a hump in between. */
    private static final double CLEAR_OF_SPREAD = 0.5;

    /** Where a margin is looked at besides the instants: early, since what a jump stirs up decays within minutes. */
    private static final double[] LOOKED_AT = {
        1.0 / 256, 1.0 / 64, 1.0 / 16, Parabola.SHARE[0], 0.4, Parabola.SHARE[1], 0.82, Parabola.SHARE[2]
    };

    private final Switchboard switchboard;
    private final ModalStep step;

    SwitchSearch(Switchboard switchboard, ModalStep step) {
        this.switchboard = switchboard;
        this.step = step;
    }

    /**
     * Looks for the first switching; its switch is then the {@link Switchboard#foremost}.
     *
     * @param timeS beginning of the step last tried
     * @param stepS its length
     * @return seconds after the beginning, infinite when no switch moves
     */
    double crossingS(double timeS, double stepS) {
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
        double beforeS = 0;
        double before = atStart;
        int instant = 0;
        for (double share : LOOKED_AT) {
            double atS = share * stepS;
            double margin = share == Parabola.SHARE[instant] ? step.margin(instant++) : marginAfter(timeS, atS);
            if (margin >= 0) {
                return place(timeS, beforeS, atS, before, margin);
            }
            beforeS = atS;
            before = margin;
        }
        return Double.POSITIVE_INFINITY;
    }

    private double marginAfter(double timeS, double sinceS) {
        return switchboard.furthest(timeS + sinceS, step.after(sinceS));
    }

    /** Places a crossing between a negative margin and one that is not, by false position (Illinois method). */
    private double place(double timeS, double fromS, double toS, double atFrom, double atTo) {
        double lowS = fromS;
        double highS = toS;
        double below = Math.min(atFrom, -NEAR_ENOUGH_K);
        double above = atTo;
        double found = atTo;
        int side = 0;
        while (highS - lowS > PLACED_WITHIN_S && found > NEAR_ENOUGH_K) {
            double inside = 0.3 * PLACED_WITHIN_S;
            double wishedS = lowS + (highS - lowS) * below / (below - above);
            double tryS = Math.min(highS - inside, Math.max(lowS + inside, wishedS));
            double margin = marginAfter(timeS, tryS);
            if (margin >= 0) {
                highS = tryS;
                above = margin;
                found = margin;
                below *= side > 0 ? 0.5 : 1;
                side = 1;
            } else {
                lowS = tryS;
                below = margin;
                above *= side < 0 ? 0.5 : 1;
                side = -1;
            }
        }
        marginAfter(timeS, highS);
        return highS;
    }
}
