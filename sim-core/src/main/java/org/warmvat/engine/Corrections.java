package org.warmvat.engine;

import java.util.Arrays;

/**
 * Finds, over a step, heats beyond the modes that agree with the temperatures they make: each node by itself, since what its heat
 * does is mostly done to itself, and then all together, until nothing moves any more.
 */
final class Corrections {

    /** Heats found together may still move a node by this, K. */
    private static final double SETTLED_WITHIN_K = 2e-6;

    /** A correction that moves a node by less than this is not worth carrying out, K. */
    private static final double FORGOTTEN_K = 1e-9;

    private static final int INSTANTS = Parabola.INSTANTS;
    private static final int MOST_CORRECTIONS = 12;

    private final int[] fed;
    private final Moment[] instants;
    private final double[] solved = new double[INSTANTS];
    private Modes modes;
    private Decays decays;
    private OwnResponses responses;

    /**
     * For the steps of a network.
     *
     * @param fed nodes that receive heat from elsewhere than their neighbours
     * @param instants the instants of a step, as they stand when it is tried
     */
    Corrections(int[] fed, Moment[] instants) {
        this.fed = fed;
        this.instants = instants;
    }

    /** Temperatures at the instants of a step if the heats stay as they are at its beginning; with what the step is made of. */
    void foresee(Moment start, Modes with, Decays over, OwnResponses own) {
        modes = with;
        decays = over;
        responses = own;
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].follow(start);
            double[] content = instants[m].content;
            double[] left = decays.fittedLeft[m];
            double[] by = decays.fittedByLasting[m];
            for (int k = 0; k < content.length; k++) {
                content[k] = left[k] * start.content[k] + by[k] * start.push[k];
            }
        }
        read();
    }

    /** Finds heats that agree with the temperatures they make; returns whether they do. */
    boolean agree() {
        double beforeK = 0;
        for (int round = 0; round < MOST_CORRECTIONS; round++) {
            double movedK = correctOnce();
            if (movedK <= FORGOTTEN_K) {
                return true;
            }
            respond();
            read();
            // each correction moves less than the one before, by about the same share
            if (movedK * movedK <= SETTLED_WITHIN_K * Math.max(movedK, beforeK)) {
                return true;
            }
            beforeK = movedK;
        }
        return false;
    }

    /** Temperatures of the fed nodes from the contents at the instants. */
    private void read() {
        for (int i = 0; i < fed.length; i++) {
            Sums.products(modes.shape(fed[i]), instants[0].content, instants[1].content, instants[2].content, solved);
            double atOnce = modes.masslessKPerW(fed[i]);
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].celsius[i] = solved[m] + atOnce * instants[m].heatW[i];
            }
        }
    }

    /** Corrects every heat as if no other node's moved; returns by how much this moves temperatures at most, K. */
    private double correctOnce() {
        double mostK = 0;
        for (Moment instant : instants) {
            Arrays.fill(instant.change, 0);
        }
        for (int i = 0; i < fed.length; i++) {
            double movedK = responses.solve(i, instants, FORGOTTEN_K, solved);
            // what is not a number must not be forgotten
            if (!(movedK <= FORGOTTEN_K)) {
                mostK = Math.max(mostK, movedK);
                for (int m = 0; m < INSTANTS; m++) {
                    instants[m].heatW[i] += solved[m];
                }
                Sums.add(solved, modes.shape(fed[i]), instants[0].change, instants[1].change, instants[2].change);
            }
        }
        return mostK;
    }

    /** Lets the contents follow the changes of the push. */
    private void respond() {
        double[] change0 = instants[0].change;
        double[] change1 = instants[1].change;
        double[] change2 = instants[2].change;
        for (int m = 0; m < INSTANTS; m++) {
            double[] content = instants[m].content;
            double[] by0 = decays.fittedBy[m][0];
            double[] by1 = decays.fittedBy[m][1];
            double[] by2 = decays.fittedBy[m][2];
            for (int k = 0; k < content.length; k++) {
                content[k] += by0[k] * change0[k] + by1[k] * change1[k] + by2[k] * change2[k];
            }
            Sums.add(1, instants[m].change, instants[m].push);
        }
    }
}
