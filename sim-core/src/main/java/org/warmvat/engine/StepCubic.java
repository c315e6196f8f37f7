package org.warmvat.engine;

import org.warmvat.network.State;

/**
 * The cubic through temperatures and rates at both ends of the step just tried: what switches and watches see between its
 * ends. It follows slurry and circuits; the envelope's nodes stay as they were at the beginning.
 */
final class StepCubic {

    private final TreeStep step;
    private final int[] nodes;
    private final State between;

    StepCubic(TreeStep step, int[] nodes, State like) {
        this.step = step;
        this.nodes = nodes.clone();
        between = like.copy();
    }

    /**
     * The state at a share of the step.
     *
     * @param share 0 at the beginning, 1 at the end
     * @param stepS length of the step
     * @param from state at the beginning
     */
    State at(double share, double stepS, State from) {
        between.set(from);
        double rest = 1 - share;
        for (int node : nodes) {
            double start = from.nodeC(node);
            double end = step.result().nodeC(node);
            double bend = rest * (step.rateKPerS(0, node) * stepS - (end - start))
                    - share * (step.rateKPerS(Tableau.STAGES - 1, node) * stepS - (end - start));
            between.setNodeC(node, rest * start + share * end + share * rest * bend);
        }
        return between;
    }
}
