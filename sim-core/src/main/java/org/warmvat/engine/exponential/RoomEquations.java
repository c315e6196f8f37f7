package org.warmvat.engine.exponential;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;

/**
 * The linear equations of the rooms' means and rises over a step, and from them what the slurry gives. Each holder of heat, the slurry and
 * the rooms, has lasting conductances of its own and is driven by lines of the others, of known temperatures and of what chains return.
 * The rooms are eliminated one after the other, mean and rise together (block Gaussian elimination).
 */
final class RoomEquations {

    /** What the slurry gives: mean {@code a00 m + a01 r - j0}, rise {@code a10 m + a11 r - j1} of its mean and rise. */
    double a00;

    double a01;
    double j0;
    double a10;
    double j1;

    private final double[] meanC;
    private final double[] riseK;
    /** Nodes of the holders, the slurry first; and the holder of each node, -1 none. */
    private final int[] nodes;

    private final int[] holder;
    private final double[] capacityJPerK;
    private final double[] startC;
    /** Of each holder: lasting conductance, and what drives it by itself and by the line of another holder. */
    private final double[] ownWPerK;

    private final double[] meanW;
    private final double[] riseW;
    private final MeanRiseBlock[][] by;
    /** How the rooms follow: mean and rise by themselves and by those of a holder that is not eliminated before them. */
    private final double[] meanAlone;

    private final double[] riseAlone;
    private final MeanRiseBlock[][] follows;
    private final LineResponse response = new LineResponse();

    RoomEquations(Network network, double[] meanC, double[] riseK) {
        this.meanC = meanC;
        this.riseK = riseK;
        nodes = network.nodes(Node.Kind.SLURRY, Node.Kind.ROOM);
        holder = new int[network.nodes().size()];
        Arrays.fill(holder, -1);
        int holders = nodes.length;
        capacityJPerK = new double[holders];
        for (int i = 0; i < holders; i++) {
            holder[nodes[i]] = i;
            capacityJPerK[i] = network.nodes().get(nodes[i]).capacityJPerK();
        }
        startC = new double[holders];
        ownWPerK = new double[holders];
        meanW = new double[holders];
        riseW = new double[holders];
        by = MeanRiseBlock.square(holders);
        meanAlone = new double[holders];
        riseAlone = new double[holders];
        follows = MeanRiseBlock.square(holders);
    }

    boolean isRoom(int node) {
        return holder[node] > 0;
    }

    /** Takes the rooms' temperatures at the beginning of a step; null for 0 °C. */
    void begin(State state) {
        for (int j = 1; j < nodes.length; j++) {
            startC[j] = state == null ? 0 : state.nodeC(nodes[j]);
            meanC[nodes[j]] = startC[j];
            riseK[nodes[j]] = 0;
        }
    }

    void clear() {
        for (int i = 0; i < nodes.length; i++) {
            ownWPerK[i] = 0;
            meanW[i] = 0;
            riseW[i] = 0;
            for (MeanRiseBlock block : by[i]) {
                block.set(0, 0, 0, 0);
            }
        }
    }

    /** A lasting conductance of a node; what stands at its other end comes beside it. */
    void hold(int node, double wPerK) {
        ownWPerK[holder[node]] += wPerK;
    }

    /** Heat into a node, mean and rise, W. */
    void drive(int node, double watts, double rise) {
        meanW[holder[node]] += watts;
        riseW[holder[node]] += rise;
    }

    /** A conductance between two nodes. */
    void exchange(int node, int other, double wPerK) {
        half(node, other, wPerK);
        half(other, node, wPerK);
    }

    private void half(int node, int other, double wPerK) {
        int i = holder[node];
        int k = holder[other];
        if (i >= 0) {
            ownWPerK[i] += wPerK;
            if (k >= 0) {
                by[i][k].add(wPerK, 0, 0, wPerK);
            } else {
                meanW[i] += wPerK * meanC[other];
                riseW[i] += wPerK * riseK[other];
            }
        }
    }

    /** A chain whose outside is known. */
    void outwards(ChainLine line) {
        hold(line.inside, line.linkWPerK);
        drive(line.inside, line.j0, line.j1);
        int i = holder[line.inside];
        by[i][i].add(line.linkWPerK - line.y00, -line.y01, -line.y10, line.linkWPerK - line.y11);
    }

    /** A chain whose outside is a room. */
    void between(ChainLine line, StepResponse response) {
        hold(line.inside, line.linkWPerK);
        hold(line.outside, line.modes.outerWPerK);
        drive(line.inside, line.meanIn, line.riseIn);
        drive(line.outside, line.meanOut, line.riseOut);
        int i = holder[line.inside];
        int o = holder[line.outside];
        by[i][i].add(response.iimm, response.iimr, response.iirm, response.iirr);
        by[i][o].add(response.iomm, response.iomr, response.iorm, response.iorr);
        by[o][i].add(response.iomm, response.iomr, response.iorm, response.iorr);
        by[o][o].add(response.oomm, response.oomr, response.oorm, response.oorr);
    }

    /** Constant heat into the rooms, W. */
    void heat(double[] wattsOfNode) {
        for (int j = 1; j < nodes.length; j++) {
            meanW[j] += wattsOfNode[nodes[j]];
        }
    }

    /** Solves for the rooms and puts them into what the slurry gives. */
    void solve(double stepS) {
        for (int j = 1; j < nodes.length; j++) {
            follow(j, stepS);
            for (int i = 0; i < nodes.length; i = next(i, j)) {
                MeanRiseBlock of = by[i][j];
                meanW[i] += of.mm * meanAlone[j] + of.mr * riseAlone[j];
                riseW[i] += of.rm * meanAlone[j] + of.rr * riseAlone[j];
                for (int k = 0; k < nodes.length; k = next(k, j)) {
                    by[i][k].addProduct(of, follows[j][k]);
                }
            }
        }
        MeanRiseBlock own = by[0][0];
        a00 = ownWPerK[0] - own.mm;
        a01 = -own.mr;
        j0 = meanW[0];
        a10 = -own.rm;
        j1 = riseW[0];
    }

    /** The holder after another of those that are left when a room and all before it are eliminated. */
    private static int next(int i, int eliminated) {
        return Math.max(i, eliminated) + 1;
    }

    /** How a room follows those that are left: one without mass is the limit of one that decays at once. */
    private void follow(int j, double stepS) {
        double mm = 1 / ownWPerK[j];
        double mr = 0;
        double rm = 0;
        double rr = mm;
        double left = 0;
        double riseLeft = 0;
        if (capacityJPerK[j] > 0) {
            response.at(ownWPerK[j] * stepS / capacityJPerK[j]);
            double per = stepS / capacityJPerK[j];
            mm = per * response.meanByMean;
            mr = per * response.meanByRise;
            rm = per * response.riseByMean;
            rr = per * response.riseByRise;
            left = response.meanLeft * startC[j];
            riseLeft = response.riseLeft * startC[j];
        }
        // (1 - R A) x = R (what others drive) + left, R being the room's response and A what it drives in itself
        MeanRiseBlock own = by[j][j];
        double a = 1 - mm * own.mm - mr * own.rm;
        double b = -mm * own.mr - mr * own.rr;
        double c = -rm * own.mm - rr * own.rm;
        double d = 1 - rm * own.mr - rr * own.rr;
        double per = 1 / (a * d - b * c);
        MeanRiseBlock solved = follows[j][j];
        solved.set((d * mm - b * rm) * per, (d * mr - b * rr) * per, (a * rm - c * mm) * per, (a * rr - c * mr) * per);
        meanAlone[j] = solved.mm * meanW[j] + solved.mr * riseW[j] + (d * left - b * riseLeft) * per;
        riseAlone[j] = solved.rm * meanW[j] + solved.rr * riseW[j] + (a * riseLeft - c * left) * per;
        for (int k = 0; k < nodes.length; k = next(k, j)) {
            follows[j][k].set(0, 0, 0, 0);
            follows[j][k].addProduct(solved, by[j][k]);
        }
    }

    /** Lays the lines of slurry and rooms for a slurry of some mean and rise. */
    void settle(double slurryMeanC, double slurryRiseK) {
        meanC[Network.SLURRY] = slurryMeanC;
        riseK[Network.SLURRY] = slurryRiseK;
        for (int j = nodes.length - 1; j > 0; j--) {
            double mean = meanAlone[j];
            double rise = riseAlone[j];
            for (int k = 0; k < nodes.length; k = next(k, j)) {
                MeanRiseBlock of = follows[j][k];
                mean += of.mm * meanC[nodes[k]] + of.mr * riseK[nodes[k]];
                rise += of.rm * meanC[nodes[k]] + of.rr * riseK[nodes[k]];
            }
            meanC[nodes[j]] = mean;
            riseK[nodes[j]] = rise;
        }
    }

    /** Goes on to the rooms' temperatures at the end: those with mass by the heat that they received. */
    void end(double stepS, State state) {
        for (int j = 1; j < nodes.length; j++) {
            startC[j] = capacityJPerK[j] > 0
                    ? startC[j] + stepS * receivedW(j) / capacityJPerK[j]
                    : meanC[nodes[j]] + 0.5 * riseK[nodes[j]];
            if (state != null) {
                state.setNodeC(nodes[j], startC[j]);
            }
        }
    }

    private double receivedW(int j) {
        double watts = meanW[j] - ownWPerK[j] * meanC[nodes[j]];
        for (int k = 0; k < nodes.length; k = k == 0 ? j : k + 1) {
            watts += by[j][k].mm * meanC[nodes[k]] + by[j][k].mr * riseK[nodes[k]];
        }
        return watts;
    }
}
