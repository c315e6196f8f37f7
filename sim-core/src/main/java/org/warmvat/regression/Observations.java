package org.warmvat.regression;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Values observed at rising times, even or not; a gap of more than three median steps begins a new stretch. */
public final class Observations {

    private static final double STEPS_OF_A_GAP = 3;

    private final double[] timeS;
    private final double[] values;
    private final double medianStepS;

    /**
     * Takes a series.
     *
     * @param timeS times, rising, at least two
     * @param values one finite value for each time
     */
    public Observations(double[] timeS, double[] values) {
        if (timeS.length < 2 || timeS.length != values.length) {
            throw new IllegalArgumentException(
                    timeS.length + " times and " + values.length + " values, expected as many of both, at least 2");
        }
        double[] steps = IntStream.range(1, timeS.length)
                .mapToDouble(i -> timeS[i] - timeS[i - 1])
                .sorted()
                .toArray();
        if (!(steps[0] > 0) || !Arrays.stream(values).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("expected rising times and finite values");
        }
        this.timeS = timeS.clone();
        this.values = values.clone();
        medianStepS = 0.5 * (steps[(steps.length - 1) / 2] + steps[steps.length / 2]);
    }

    /** How many. */
    public int size() {
        return values.length;
    }

    /** Time of an observation, s. */
    public double timeS(int index) {
        return timeS[index];
    }

    /** All values, in order; a copy. */
    public double[] values() {
        return values.clone();
    }

    /** The middle one of the steps between observations, s. */
    public double medianStepS() {
        return medianStepS;
    }

    /** Whether an observation is the first, or the first after a gap of more than three median steps. */
    public boolean startsAfresh(int index) {
        return index == 0 || timeS[index] - timeS[index - 1] > STEPS_OF_A_GAP * medianStepS;
    }
}
