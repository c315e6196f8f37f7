package org.warmvat.sampling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Draws of some inputs, and what it takes to say from which of them an answer's spread comes: two sets of draws, the halves of points of
 * twice as many dimensions, and for each input the first set with that input taken from the second (Saltelli et al. 2010, Variance based
 * sensitivity analysis of model output).
 *
 * <p>Runs are numbered row by row: of each row the first set's draw, the second's, and then one mixed for each input. Any of them can be
 * asked for alone, so that parts of a study can be done apart.
 */
public final class SaltelliSample {

    private static final int SETS = 2;

    private final int inputs;
    private final double[][] points;

    /**
     * A sample.
     *
     * @param inputs how many inputs, 1 to 500
     * @param rows draws of each set, 1 or more
     * @param seed the same seed gives the same draws
     * @throws IllegalArgumentException when there are fewer or more inputs
     */
    public SaltelliSample(int inputs, int rows, long seed) {
        this.inputs = inputs;
        points = new ShiftedSobol(SETS * inputs, seed).points(0, rows);
    }

    /** How many runs in all. */
    public int runs() {
        return points.length * (inputs + SETS);
    }

    /** Whether a run is a draw of one of the sets, of all inputs; otherwise it is a mixed one. */
    public boolean isDraw(int run) {
        return place(run) < SETS;
    }

    private int place(int run) {
        return run % (inputs + SETS);
    }

    /** The inputs of a run, each above 0 and below 1. */
    public double[] point(int run) {
        double[] row = points[run / (inputs + SETS)];
        double[] point = new double[inputs];
        for (int input = 0; input < inputs; input++) {
            point[input] = row[isSecond(run, input) ? inputs + input : input];
        }
        return point;
    }

    /**
     * One input as a choice among some things, dealt out in the order of the input's ranks so that each set of draws has all of them
     * equally often, to within one.
     *
     * @param input the input, counted from 0
     * @param things among how many
     * @return the thing of each run, counted from 0
     */
    public int[] dealt(int input, int things) {
        int[][] bySet = new int[SETS][points.length];
        for (int set = 0; set < SETS; set++) {
            int[] ranked = ranked(set * inputs + input);
            for (int rank = 0; rank < ranked.length; rank++) {
                bySet[set][ranked[rank]] = (int) ((long) rank * things / ranked.length);
            }
        }
        return IntStream.range(0, runs())
                .map(run -> bySet[isSecond(run, input) ? 1 : 0][run / (inputs + SETS)])
                .toArray();
    }

    private int[] ranked(int column) {
        return IntStream.range(0, points.length)
                .boxed()
                .sorted(Comparator.comparingDouble(row -> points[row][column]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private boolean isSecond(int run, int input) {
        return place(run) == 1 || place(run) == input + SETS;
    }

    /**
     * The indices of all inputs, with errors by bootstrap.
     *
     * @param answers of all runs in order
     * @param seed of the bootstrap
     * @throws IllegalArgumentException when these are not as many as runs, or there is but one row
     */
    public List<SobolIndices> indices(double[] answers, long seed) {
        if (answers.length != runs()) {
            throw new IllegalArgumentException(answers.length + " answers, expected " + runs());
        }
        double[][] columns = new double[inputs + SETS][points.length];
        for (int run = 0; run < answers.length; run++) {
            columns[place(run)][run / (inputs + SETS)] = answers[run];
        }
        List<SobolIndices> indices = new ArrayList<>();
        for (int input = 0; input < inputs; input++) {
            indices.add(SobolIndices.estimate(columns[0], columns[1], columns[SETS + input], seed));
        }
        return indices;
    }
}
