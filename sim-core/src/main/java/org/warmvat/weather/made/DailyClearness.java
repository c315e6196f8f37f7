package org.warmvat.weather.made;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How daily clearness indices spread about their monthly mean: the distribution of P. Bendt, M. Collares-Pereira and A. Rabl
 * (1981), "The frequency distribution of daily insolation values", Solar Energy 27(1) 1-5, with the upper limit of K. G. T.
 * Hollands and R. G. Huget (1983), Solar Energy 30(3) 195-209, and the explicit exponent of M. E. Herzog (1985), as quoted
 * from memory in this project's notes. Monthly means from 0.1 to 0.75.
 */
final class DailyClearness {
    /** Darkest day of many years. */
    static final double DARKEST_OF_MANY_YEARS = 0.05;
    /**
     * Darkest day of one month over the month's mean. A convention: in the 24 months of two real typical years the darkest day had
     * 0.24 to 0.55 of the mean, 0.42 on average, where many years together reach the published 0.05.
     */
    private static final double DARKEST_OF_A_MONTH_OVER_MEAN = 0.4;

    private static final double MOST_EXPONENT = 80;
    private static final int MOST_EVALUATIONS = 200;

    private final double least;
    private final double most;
    private final double gamma;

    private DailyClearness(double least, double most, double gamma) {
        this.least = least;
        this.most = most;
        this.gamma = gamma;
    }

    /** The days of one month of many years, as published. */
    static DailyClearness ofManyYears(double monthlyMean) {
        double mean = within(monthlyMean);
        double most = most(mean);
        double width = most - DARKEST_OF_MANY_YEARS;
        double xi = width / (most - mean);
        double gamma = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / width;
        return new DailyClearness(DARKEST_OF_MANY_YEARS, most, gamma);
    }

    /**
     * The days of one month of one year, whose darkest day is not the darkest of many years. Herzog's exponent would miss the mean by 2 to
     * 16 % here, so the exponent is solved for.
     */
    static DailyClearness ofOneMonth(double monthlyMean) {
        double mean = within(monthlyMean);
        double least = DARKEST_OF_A_MONTH_OVER_MEAN * mean;
        double most = most(mean);
        double gamma = new BrentSolver()
                .solve(
                        MOST_EVALUATIONS,
                        g -> new DailyClearness(least, most, g).mean() - mean,
                        -MOST_EXPONENT,
                        MOST_EXPONENT);
        return new DailyClearness(least, most, gamma);
    }

    private static double most(double mean) {
        return 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
    }

    private static double within(double monthlyMean) {
        return Math.max(0.1, Math.min(0.75, monthlyMean));
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
        double width = most - least;
        if (Math.abs(gamma * width) < 1e-6) {
            return least + share * width;
        }
        // F = (1 - e^(g (K - Kmin)))/(1 - e^(g (Kmax - Kmin))), solved for K.
        return least + Math.log1p(share * Math.expm1(gamma * width)) / gamma;
    }

    /** Mean of the distribution. */
    double mean() {
        double width = most - least;
        double x = gamma * width;
        if (Math.abs(x) < 1e-6) {
            return least + width / 2;
        }
        return least + width / -Math.expm1(-x) - 1 / gamma;
    }
}
