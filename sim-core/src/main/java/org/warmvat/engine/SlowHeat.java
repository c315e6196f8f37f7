package org.warmvat.engine;

/**
 * Heat from everything slow into the slurry over a stretch of time as a parabola: from its known beginning to its end, with the
 * mean that was really given, so that what leaves one arrives in the other to the last joule.
 */
final class SlowHeat {

    private double startS;
    private double inverseLengthPerS;
    private double startW;
    private double slopeW;
    private double curveW;

    /**
     * Takes a parabola.
     *
     * @param fromS beginning, s
     * @param lengthS length, s
     * @param beginW heat at the beginning, W
     * @param endW heat at the end, W
     * @param meanW mean, W
     */
    void fit(double fromS, double lengthS, double beginW, double endW, double meanW) {
        startS = fromS;
        inverseLengthPerS = 1 / lengthS;
        startW = beginW;
        slopeW = 6 * meanW - 4 * beginW - 2 * endW;
        curveW = 3 * (beginW + endW - 2 * meanW);
    }

    /** Mean heat into the slurry from the beginning until a time, W. */
    double meanUntilW(double timeS) {
        double share = (timeS - startS) * inverseLengthPerS;
        return startW + share * (slopeW / 2 + share * curveW / 3);
    }

    /** Slope at the end, W/s. */
    double endSlopeWPerS() {
        return (slopeW + 2 * curveW) * inverseLengthPerS;
    }

    /** Heat into the slurry at a time, W. */
    double wattsAt(double timeS) {
        double share = (timeS - startS) * inverseLengthPerS;
        return startW + share * (slopeW + share * curveW);
    }
}
