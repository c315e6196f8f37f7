package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The steps of the live nodes over a stretch of time, kept until the stretch is accepted: between their ends temperatures follow
 * the cubic through temperatures and rates at both ends.
 */
final class LiveTrace {

    private final int nodes;
    private final State like;
    private final State between;
    private int count;
    private double[] startS = new double[16];
    private State[] at = new State[17];
    private double[][] startKPerS = new double[16][];
    private double[][] endKPerS = new double[16][];

    LiveTrace(Network network, State like) {
        nodes = network.liveNodes();
        this.like = like;
        between = like.copy();
        grow(0);
    }

    private void grow(int from) {
        for (int i = from; i < startS.length; i++) {
            at[i + 1] = like.copy();
            startKPerS[i] = new double[nodes];
            endKPerS[i] = new double[nodes];
        }
        if (from == 0) {
            at[0] = like.copy();
        }
    }

    /** Forgets everything; the stretch begins at a state. */
    void begin(double timeS, State from) {
        count = 0;
        startS[0] = timeS;
        at[0].setLive(from, nodes);
    }

    /** Adds a step that has been taken. */
    void add(LiveStep step, double endS) {
        if (count + 1 == startS.length) {
            int size = startS.length;
            startS = Arrays.copyOf(startS, 2 * size);
            at = Arrays.copyOf(at, 2 * size + 1);
            startKPerS = Arrays.copyOf(startKPerS, 2 * size);
            endKPerS = Arrays.copyOf(endKPerS, 2 * size);
            grow(size);
        }
        for (int i = 0; i < nodes; i++) {
            startKPerS[count][i] = step.startRateKPerS(i);
            endKPerS[count][i] = step.endRateKPerS(i);
        }
        at[count + 1].setLive(step.result(), nodes);
        startS[++count] = endS;
    }

    /** How many steps there are. */
    int steps() {
        return count;
    }

    /** When a step begins; that of the step after the last is the end. */
    double startS(int step) {
        return startS[step];
    }

    /** State at the beginning of a step; that of the step after the last is the end. */
    State at(int step) {
        return at[step];
    }

    /** Slurry temperature at a time within the stretch, °C. */
    double slurryC(double timeS) {
        int step = count - 1;
        while (step > 0 && startS[step] > timeS) {
            step--;
        }
        double stepS = startS[step + 1] - startS[step];
        return cubicC(step, (timeS - startS[step]) / stepS, stepS, 0);
    }

    /** State at a share of a step; reused by the next call. */
    State within(int step, double share) {
        between.setLive(at[step], nodes);
        double stepS = startS[step + 1] - startS[step];
        for (int i = 0; i < nodes; i++) {
            between.setNodeC(i, cubicC(step, share, stepS, i));
        }
        return between;
    }

    private double cubicC(int step, double share, double stepS, int node) {
        return Cubic.at(
                share,
                stepS,
                at[step].nodeC(node),
                at[step + 1].nodeC(node),
                startKPerS[step][node],
                endKPerS[step][node]);
    }
}
