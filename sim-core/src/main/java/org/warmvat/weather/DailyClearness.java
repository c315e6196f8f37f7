package org.warmvat.weather;

/**
 * How daily clearness indices spread about their monthly mean: the distribution of P. Bendt, M. Collares-Pereira and A. Rabl
 * (1981), "The frequency distribution of daily insolation values", Solar Energy 27(1) 1-5, with the upper limit of K. G. T.
 * Hollands and R. G. Huget (1983), Solar Energy 30(3) 195-209, and the explicit exponent of M. E. Herzog (1985), as quoted
 * from memory in this project's notes. Monthly means from 0.1 to 0.75.
 */
final class DailyClearness {
    /** Darkest day. */
    static final double LEAST = 0.05;

    private final double most;
    private final double gamma;

    DailyClearness(double monthlyMean) {
        double k = Math.max(0.1, Math.min(0.75, monthlyMean));
        this.most = 0.6313 + 0.267 * k - 11.9 * Math.pow(k - 0.75, 8);
        double xi = (most - LEAST) / (most - k);
        this.gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (most - LEAST);
    }

    /** Clearest day. */
    double most() {
        return most;
    }

    /** Exponent of the distribution; 0 spreads the days evenly. */
    double gamma() {
        return gamma;
    }

    /** The clearness that a share of the days stays below, a share from 0 to 1. */
    double quantile(double share) {
        double width = most - LEAST;
        if (Math.abs(gamma * width) < 1e-6) {
            return LEAST + share * width;
        }
        // F = (1 - e^(g (K - Kmin)))/(1 - e^(g (Kmax - Kmin))), solved for K.
        return LEAST + Math.log1p(share * Math.expm1(gamma * width)) / gamma;
    }

    /** Mean of the distribution. */
    double mean() {
        double width = most - LEAST;
        double x = gamma * width;
        if (Math.abs(x) < 1e-6) {
            return LEAST + width / 2;
        }
        return LEAST + width / -Math.expm1(-x) - 1 / gamma;
    }
}
