package org.warmvat.engine;

import org.warmvat.network.Network;

/**
 * What a step gets wrong by letting heats follow parabolas, told from the law between heats and temperatures at its beginning and
 * from what is left at its end of temperatures without their fitted parabolas.
 */
final class StepError {

    /** Error allowed in a step at a circuit in any case, K. */
    static final double CIRCUIT_TOLERANCE_K = 3e-4;

    /** Error allowed in a step at the slurry, K. */
    private static final double SLURRY_TOLERANCE_K = 3e-6;

    /** Error allowed in a step at the slurry by wrong heat next to the weather, K. */
    private static final double LAYER_TOLERANCE_K = 6e-6;

    /** A circuit may err by this share of what is left to the nearest switching. */
    private static final double SHARE_OF_MARGIN = 0.01;

    /** Error allowed in a step at a circuit at most, as if all of its heat were given to the slurry, K. */
    private static final double CIRCUIT_IN_SLURRY_TOLERANCE_K = 3e-5;

    /**
     * How much of the difference at the beginning, between a heat and what its law within the step would make of it, tells of the
     * error: what bends is over within the first instant.
     */
    private static final double SHARE_OF_DIFFERENCE = 0.05;

    /** What bends at the beginning of a long step is over within some minutes, of which this is what counts at most, s. */
    private static final double DIFFERENCE_S = 36;

    private static final double[] AT_BEGINNING = {Parabola.at(0, 0), Parabola.at(1, 0), Parabola.at(2, 0)};
    private static final int INSTANTS = Parabola.INSTANTS;
    private static final int END = Parabola.END;

    private final int liveNodes;
    private final int[] fed;
    private final Moment[] instants;
    private final double[] endC;
    private final double[] mostCircuitErrorK;
    private Moment start;

    /**
     * For the steps of a network.
     *
     * @param network the network
     * @param fed nodes that receive heat from elsewhere than their neighbours, the live ones first
     * @param instants the instants of a step, as they stand when it is asked about
     * @param endC true temperatures of the fed nodes at its end, likewise
     */
    StepError(Network network, int[] fed, Moment[] instants, double[] endC) {
        this.fed = fed;
        this.instants = instants;
        this.endC = endC;
        liveNodes = network.liveNodes();
        double[] capacity = network.capacitiesJPerK();
        mostCircuitErrorK = new double[liveNodes];
        for (int node = 0; node < liveNodes; node++) {
            mostCircuitErrorK[node] = CIRCUIT_IN_SLURRY_TOLERANCE_K * capacity[0] / capacity[node];
        }
    }

    /**
     * The error over what is allowed.
     *
     * @param from where the step begins
     * @param modes modes of the step
     * @param responses how fed nodes answer to their own heat over it
     * @param stepS its length
     * @param marginK what is left to the nearest switching
     */
    double of(Moment from, Modes modes, OwnResponses responses, double stepS, double marginK) {
        start = from;
        double share = Math.min(SHARE_OF_DIFFERENCE, DIFFERENCE_S / stepS);
        double slurryKPerW = responses.lastingKPerW(0);
        Moment end = instants[END];
        double error = 0;
        for (int i = 0; i < fed.length; i++) {
            boolean live = i < liveNodes;
            double wrongW = share * (live ? bendMissedW(i) : changeMissedW(i));
            double toleranceK = live ? SLURRY_TOLERANCE_K : LAYER_TOLERANCE_K;
            error = Math.max(error, wrongW * modes.transfer(fed[i]) * slurryKPerW / toleranceK);
            double restW = Math.abs(end.excessWPerK[i] * (end.celsius[i] - endC[i]));
            error = Math.max(error, restW * responses.slurryRestKPerW(i) / SLURRY_TOLERANCE_K);
            if (live && i > 0) {
                double mostK = Math.max(CIRCUIT_TOLERANCE_K, Math.min(mostCircuitErrorK[i], SHARE_OF_MARGIN * marginK));
                double wrongK = wrongW * responses.forgettingKPerW(i);
                error = Math.max(error, Math.max(wrongK, restW * responses.restKPerW(i)) / mostK);
            }
        }
        return error;
    }

    /**
     * Difference at the beginning between a layer's heat and what its law within the step would make of the temperature there, W: how far
     * conductances and outside temperatures are from changing along parabolas.
     */
    private double changeMissedW(int i) {
        double missedW = start.owedW(i);
        for (int m = 0; m < INSTANTS; m++) {
            Moment instant = instants[m];
            missedW -= AT_BEGINNING[m] * (instant.sourceW[i] - instant.excessWPerK[i] * start.celsius[i]);
        }
        return Math.abs(missedW);
    }

    /**
     * What the law at the beginning, with slope and bend, misses of a live node's heats within the step, extrapolated to the beginning,
     * that is corners, bends of another kind, and outside temperatures that do not change along parabolas; and what the bend makes
     * of what the parabola leaves of the temperature there, W.
     */
    private double bendMissedW(int i) {
        double bendWPerK2 = start.live.bendWPerK2(i);
        double missedW = 0;
        double leftK = start.celsius[i];
        for (int m = 0; m < INSTANTS; m++) {
            Moment instant = instants[m];
            double celsius = instant.celsius[i];
            double movedK = celsius - start.celsius[i];
            double foreseenW = start.sourceW[i] - start.excessWPerK[i] * celsius + 0.5 * bendWPerK2 * movedK * movedK;
            missedW += AT_BEGINNING[m] * (instant.owedW(i) - foreseenW);
            leftK -= AT_BEGINNING[m] * celsius;
        }
        return Math.abs(missedW) + 0.5 * Math.abs(bendWPerK2) * leftK * leftK;
    }
}
