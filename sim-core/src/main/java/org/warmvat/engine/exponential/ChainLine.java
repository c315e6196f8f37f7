package org.warmvat.engine.exponential;

/**
 * A chain over a step as two straight lines: mean and rise of the heat that it takes from inside, by mean and rise of what is inside. A
 * film that differs from the modes' reference by a factor rho acts as if the outside stood at {@code rho Te + (1 - rho) Tn}, Tn being the
 * outermost node: two linear equations, for mean and rise.
 */
final class ChainLine {

    final ChainModes modes;
    /** Nodes at either end, and meter of the heat received from outside. */
    final int inside;

    final int outside;
    final int meter;
    /** Conductance from what is inside to the first node, W/K. */
    final double linkWPerK;
    /** Where its modes begin among all modes. */
    final int at;
    /** Taken: mean {@code y00 m + y01 r - j0}, rise {@code y10 m + y11 r - j1}. */
    double y00;

    double y01;
    double y10;
    double y11;
    double j0;
    double j1;
    /** What the modes' contents at the beginning give inside and outside, mean and rise. */
    double meanIn;

    double meanOut;
    double riseIn;
    double riseOut;
    /** The outside that the modes meet: mean {@code m0 + mm m + mr r}, rise {@code r0 + rm m + rr r}. */
    private final double perOuterKPerW;

    private double m0;

    private double mm;
    private double mr;
    private double r0;
    private double rm;
    private double rr;

    ChainLine(ChainModes modes, int at) {
        this.modes = modes;
        this.at = at;
        inside = modes.chain.inside();
        outside = modes.chain.face().outside();
        meter = modes.chain.face().meter();
        linkWPerK = modes.chain.linkWPerK(0);
        perOuterKPerW = 1 / modes.outerWPerK;
    }

    /** What the contents at the beginning give by themselves. */
    void begin(double[] content, StepResponse by) {
        double da = 0;
        double db = 0;
        double ea = 0;
        double eb = 0;
        double[] of = by.ofMode;
        for (int m = at, i = 0; i < of.length; m++, i += StepResponse.NUMBERS) {
            double z = content[m];
            da += of[i + StepResponse.MEAN_IN] * z;
            db += of[i + StepResponse.MEAN_OUT] * z;
            ea += of[i + StepResponse.RISE_IN] * z;
            eb += of[i + StepResponse.RISE_OUT] * z;
        }
        meanIn = da;
        meanOut = db;
        riseIn = ea;
        riseOut = eb;
    }

    /** Meets a known temperature of some mean and rise through a conductance. */
    void meet(StepResponse by, double wPerK, double outsideC, double outsideRiseK) {
        double rho = wPerK * perOuterKPerW;
        double kappa = (1 - rho) * perOuterKPerW;
        double a = 1 - kappa * by.oomm;
        double b = -kappa * by.oomr;
        double c = -kappa * by.oorm;
        double d = 1 - kappa * by.oorr;
        double perDeterminant = 1 / (a * d - b * c);
        double f0 = rho * outsideC + kappa * meanOut;
        double f1 = rho * outsideRiseK + kappa * riseOut;
        double k = kappa * perDeterminant;
        m0 = (d * f0 - b * f1) * perDeterminant;
        r0 = (a * f1 - c * f0) * perDeterminant;
        mm = (d * by.iomm - b * by.iorm) * k;
        mr = (d * by.iomr - b * by.iorr) * k;
        rm = (a * by.iorm - c * by.iomm) * k;
        rr = (a * by.iorr - c * by.iomr) * k;
        y00 = linkWPerK - by.iimm - mm * by.iomm - rm * by.iomr;
        y01 = -by.iimr - mr * by.iomm - rr * by.iomr;
        j0 = meanIn + m0 * by.iomm + r0 * by.iomr;
        y10 = -by.iirm - mm * by.iorm - rm * by.iorr;
        y11 = linkWPerK - by.iirr - mr * by.iorm - rr * by.iorr;
        j1 = riseIn + m0 * by.iorm + r0 * by.iorr;
    }

    /** Goes on to the end of a step through whose known outside it met; returns the mean heat that left, W. */
    double accept(double[] content, StepResponse by, double m, double r) {
        return accept(content, by, m, r, m0 + mm * m + mr * r, r0 + rm * m + rr * r);
    }

    /** Goes on to the end of a step between two lines; returns the mean heat that left through the outer face, W. */
    double accept(double[] content, StepResponse by, double m, double r, double outM, double outR) {
        double[] of = by.ofMode;
        for (int k = at, i = 0; i < of.length; k++, i += StepResponse.NUMBERS) {
            content[k] = of[i + StepResponse.LEFT] * content[k]
                    + (of[i + StepResponse.BY_MEAN_IN] * m + of[i + StepResponse.BY_RISE_IN] * r)
                    + (of[i + StepResponse.BY_MEAN_OUT] * outM + of[i + StepResponse.BY_RISE_OUT] * outR);
        }
        return meanOut + m * by.iomm + r * by.iomr + outM * by.oomm + outR * by.oomr - modes.outerWPerK * outM;
    }
}
