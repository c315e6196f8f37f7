package org.warmvat.engine.exponential;

/** How a chain answers, over a step of one length, to what is inside and outside running in straight lines: exact. */
final class StepResponse {

    /** Numbers of a mode, side by side: what is left of it, its part in mean and rise of the heat at either end, what moves it. */
    static final int LEFT = 0;

    static final int MEAN_IN = 1;
    static final int MEAN_OUT = 2;
    static final int RISE_IN = 3;
    static final int RISE_OUT = 4;
    static final int BY_MEAN_IN = 5;
    static final int BY_RISE_IN = 6;
    static final int BY_MEAN_OUT = 7;
    static final int BY_RISE_OUT = 8;
    static final int NUMBERS = 9;

    final double[] ofMode;
    /** Heat (i inside, o outside) by temperature (i, o), mean (m) or rise (r) by mean or rise. */
    double iimm;

    double iimr;
    double iirm;
    double iirr;
    double iomm;
    double iomr;
    double iorm;
    double iorr;
    double oomm;
    double oomr;
    double oorm;
    double oorr;

    StepResponse(ChainModes modes, double stepS) {
        int count = modes.ratePerS.length;
        ofMode = new double[NUMBERS * count];
        LineResponse line = new LineResponse();
        for (int m = 0; m < count; m++) {
            line.at(modes.ratePerS[m] * stepS);
            add(NUMBERS * m, line, stepS, modes.in[m], modes.out[m]);
        }
    }

    private void add(int at, LineResponse line, double h, double a, double b) {
        ofMode[at + LEFT] = line.left;
        ofMode[at + MEAN_IN] = a * line.meanLeft;
        ofMode[at + MEAN_OUT] = b * line.meanLeft;
        ofMode[at + RISE_IN] = a * line.riseLeft;
        ofMode[at + RISE_OUT] = b * line.riseLeft;
        ofMode[at + BY_MEAN_IN] = h * line.endByMean * a;
        ofMode[at + BY_RISE_IN] = h * line.endByRise * a;
        ofMode[at + BY_MEAN_OUT] = h * line.endByMean * b;
        ofMode[at + BY_RISE_OUT] = h * line.endByRise * b;
        iimm += h * a * a * line.meanByMean;
        iimr += h * a * a * line.meanByRise;
        iirm += h * a * a * line.riseByMean;
        iirr += h * a * a * line.riseByRise;
        iomm += h * a * b * line.meanByMean;
        iomr += h * a * b * line.meanByRise;
        iorm += h * a * b * line.riseByMean;
        iorr += h * a * b * line.riseByRise;
        oomm += h * b * b * line.meanByMean;
        oomr += h * b * b * line.meanByRise;
        oorm += h * b * b * line.riseByMean;
        oorr += h * b * b * line.riseByRise;
    }
}
