package org.warmvat.question.fit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.Design;
import org.warmvat.log.Log;
import org.warmvat.regression.Curve;
import org.warmvat.regression.Observations;
import org.warmvat.regression.Parameter;

/** A log as a series to be fitted: factors of the design first, then the starting temperature of each stretch. */
final class FitModel {

    static final double LEAST = 0.1;
    static final double MOST = 10;

    /** Moves the slurry by a tenth of a kelvin and more, where the everyday engine's own error is a few ten-thousandths. */
    private static final double FACTOR_STEP = 0.02;

    private static final double START_RANGE_K = 20;
    private static final double START_STEP_K = 0.1;

    private final Design design;
    private final List<Factor> factors;
    private final List<Log> stretches;
    private final List<Along> tanks;
    private final List<Map<List<Double>, double[]>> known = new ArrayList<>();

    FitModel(Design design, List<Factor> factors, List<Log> stretches, List<Along> tanks) {
        this.design = design;
        this.factors = factors;
        this.stretches = stretches;
        this.tanks = tanks;
        tanks.forEach(tank -> known.add(new Lately()));
    }

    /** Stretches are run again and again with the same numbers, since most of what is moved moves one stretch alone. */
    private static final class Lately extends LinkedHashMap<List<Double>, double[]> {

        private static final long serialVersionUID = 1L;
        private static final int MOST = 32;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Double>, double[]> eldest) {
            return size() > MOST;
        }
    }

    List<Factor> factors() {
        return factors;
    }

    Design design() {
        return design;
    }

    FitModel withFactors(List<Factor> others) {
        return new FitModel(design, others, stretches, tanks);
    }

    /** The design with factors put in. */
    Design adjusted(double[] point) {
        Design adjusted = design;
        for (int i = 0; i < factors.size(); i++) {
            adjusted = adjusted.with("adjust." + factors.get(i).key(), point[i]);
        }
        return adjusted;
    }

    /** The design with the factors that are sought at 1. */
    Design drawn() {
        double[] ones = new double[factors.size()];
        Arrays.fill(ones, 1);
        return adjusted(ones);
    }

    List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>();
        for (Factor factor : factors) {
            double start = design.number("adjust." + factor.key());
            parameters.add(new Parameter(factor.key(), start, LEAST, MOST, FACTOR_STEP));
        }
        for (Log stretch : stretches) {
            double first = stretch.slurryC().at(0);
            parameters.add(new Parameter(
                    "start " + stretch.start(), first, first - START_RANGE_K, first + START_RANGE_K, START_STEP_K));
        }
        return parameters;
    }

    /** All readings, stretch after stretch, s since the first. */
    Observations observations() {
        List<Double> times = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Log stretch : stretches) {
            double sinceS =
                    Duration.between(stretches.get(0).start(), stretch.start()).toMillis() / 1000.0;
            for (double time : stretch.slurryC().timesS()) {
                times.add(sinceS + time);
            }
            for (double value : stretch.slurryC().values()) {
                values.add(value);
            }
        }
        return new Observations(array(times), array(values));
    }

    Curve curve() {
        return point -> slurryC(adjusted(point), point);
    }

    /** What a tank makes of the log, its stretches starting as some parameters say. */
    double[] slurryC(Design tank, double[] point) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            Along along = tanks.get(i);
            double startC = point[factors.size() + i];
            for (double value :
                    known.get(i).computeIfAbsent(key(tank, startC), unknown -> along.slurryC(tank, startC))) {
                all.add(value);
            }
        }
        return array(all);
    }

    private List<Double> key(Design tank, double startC) {
        List<Double> key = new ArrayList<>(List.of(startC));
        factors.forEach(factor -> key.add(tank.number("adjust." + factor.key())));
        return key;
    }

    /** Index of the first reading of each stretch, and of the end. */
    int[] bounds() {
        int[] bounds = new int[stretches.size() + 1];
        for (int i = 0; i < stretches.size(); i++) {
            bounds[i + 1] = bounds[i] + stretches.get(i).slurryC().size();
        }
        return bounds;
    }

    List<Log> stretches() {
        return stretches;
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
