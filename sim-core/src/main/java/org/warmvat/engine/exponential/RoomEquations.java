package org.warmvat.engine.exponential;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;

/**
 * The linear equations of the rooms' means and rises over a step, and from them what the slurry gives. Each holder of heat, the slurry and
 * the rooms, has lasting conductances of its own and is driven by lines of the others, of known temperatures and of what chains return.
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
    private final int[] rooms;
    private final double[] capacityJPerK;
    /** Holder of each node: 0 the slurry, then the rooms, -1 none; and where its mean stands in a row, its rise behind it. */
    private final int[] holder;

    private final int[] column;
    private final int unknowns;
    private final double[] ownWPerK;
    private final double[][] drive;
    private final double[][] driveRise;
    private final double[][] matrix;
    private final double[] startC;
    private final double[] value;
    private final LineResponse response = new LineResponse();

    RoomEquations(Network network, double[] meanC, double[] riseK) {
        this.meanC = meanC;
        this.riseK = riseK;
        rooms = network.nodes(Node.Kind.ROOM);
        capacityJPerK = network.capacitiesJPerK();
        unknowns = 2 * rooms.length;
        holder = new int[network.nodes().size()];
        column = new int[holder.length];
        Arrays.fill(holder, -1);
        Arrays.fill(column, -1);
        holder[Network.SLURRY] = 0;
        column[Network.SLURRY] = unknowns + 1;
        for (int j = 0; j < rooms.length; j++) {
            holder[rooms[j]] = j + 1;
            column[rooms[j]] = 2 * j;
        }
        int width = unknowns + 3;
        ownWPerK = new double[rooms.length + 1];
        drive = new double[rooms.length + 1][width];
        driveRise = new double[rooms.length + 1][width];
        matrix = new double[unknowns][width];
        startC = new double[rooms.length];
        value = new double[width];
    }

    boolean isRoom(int node) {
        return holder[node] > 0;
    }

    /** Takes the rooms' temperatures at the beginning of a step; null for 0 °C. */
    void begin(State state) {
        for (int j = 0; j < rooms.length; j++) {
            startC[j] = state == null ? 0 : state.nodeC(rooms[j]);
            meanC[rooms[j]] = startC[j];
            riseK[rooms[j]] = 0;
        }
    }

    void clear() {
        Arrays.fill(ownWPerK, 0);
        for (int i = 0; i < drive.length; i++) {
            Arrays.fill(drive[i], 0);
            Arrays.fill(driveRise[i], 0);
        }
    }

    private void add(double[] row, int node, double ofMean, double ofRise) {
        int at = column[node];
        if (at >= 0) {
            row[at] += ofMean;
            row[at + 1] += ofRise;
        } else {
            row[unknowns] += ofMean * meanC[node] + ofRise * riseK[node];
        }
    }

    /** A lasting conductance of a node; what stands at its other end comes beside it. */
    void hold(int node, double wPerK) {
        ownWPerK[holder[node]] += wPerK;
    }

    /** Heat into a node, mean and rise, W. */
    void drive(int node, double watts, double rise) {
        drive[holder[node]][unknowns] += watts;
        driveRise[holder[node]][unknowns] += rise;
    }

    /** A conductance between two nodes. */
    void exchange(int node, int other, double wPerK) {
        half(node, other, wPerK);
        half(other, node, wPerK);
    }

    private void half(int node, int other, double wPerK) {
        int i = holder[node];
        if (i >= 0) {
            ownWPerK[i] += wPerK;
            int at = column[other];
            if (at >= 0) {
                drive[i][at] += wPerK;
                driveRise[i][at + 1] += wPerK;
            } else {
                drive[i][unknowns] += wPerK * meanC[other];
                driveRise[i][unknowns] += wPerK * riseK[other];
            }
        }
    }

    /** A chain whose outside is known. */
    void outwards(ChainLine line, int inside) {
        int i = holder[inside];
        double linkWPerK = line.linkWPerK;
        ownWPerK[i] += linkWPerK;
        add(drive[i], inside, linkWPerK - line.y00, -line.y01);
        drive[i][unknowns] += line.j0;
        add(driveRise[i], inside, -line.y10, linkWPerK - line.y11);
        driveRise[i][unknowns] += line.j1;
    }

    /** A chain whose outside is a room. */
    void between(ChainLine line, StepResponse by, int inside, int outside) {
        int i = holder[inside];
        ownWPerK[i] += line.linkWPerK;
        add(drive[i], inside, by.iimm, by.iimr);
        add(drive[i], outside, by.iomm, by.iomr);
        drive[i][unknowns] += line.meanIn;
        add(driveRise[i], inside, by.iirm, by.iirr);
        add(driveRise[i], outside, by.iorm, by.iorr);
        driveRise[i][unknowns] += line.riseIn;
        int o = holder[outside];
        ownWPerK[o] += line.modes.outerWPerK;
        add(drive[o], inside, by.iomm, by.iomr);
        add(drive[o], outside, by.oomm, by.oomr);
        drive[o][unknowns] += line.meanOut;
        add(driveRise[o], inside, by.iorm, by.iorr);
        add(driveRise[o], outside, by.oorm, by.oorr);
        driveRise[o][unknowns] += line.riseOut;
    }

    /** Constant heat into the rooms, W. */
    void heat(double[] wattsOfNode) {
        for (int room : rooms) {
            drive[holder[room]][unknowns] += wattsOfNode[room];
        }
    }

    /** Solves for the rooms and puts them into what the slurry gives. */
    void solve(double stepS) {
        for (int j = 0; j < rooms.length; j++) {
            rows(j, stepS);
        }
        eliminate();
        double[] mean = drive[0];
        double[] rise = driveRise[0];
        double byConstant = mean[unknowns];
        double byMean = mean[unknowns + 1];
        double byRise = mean[unknowns + 2];
        double riseByConstant = rise[unknowns];
        double riseByMean = rise[unknowns + 1];
        for (int u = 0; u < unknowns; u++) {
            double[] row = matrix[u];
            byConstant += mean[u] * row[unknowns];
            byMean += mean[u] * row[unknowns + 1];
            byRise += mean[u] * row[unknowns + 2];
            riseByConstant += rise[u] * row[unknowns];
            riseByMean += rise[u] * row[unknowns + 1];
        }
        a00 = ownWPerK[0] - byMean;
        a01 = -byRise;
        j0 = byConstant;
        a10 = -riseByMean;
        j1 = riseByConstant;
    }

    /** The two equations of a room: one without mass is the limit of one that decays at once. */
    private void rows(int j, double stepS) {
        double own = ownWPerK[j + 1];
        double capacity = capacityJPerK[rooms[j]];
        double ofMean = 1 / own;
        double ofRise = 0;
        double riseOfMean = 0;
        double riseOfRise = 1 / own;
        double left = 0;
        double riseLeft = 0;
        if (capacity > 0) {
            response.at(own * stepS / capacity);
            double per = stepS / capacity;
            ofMean = per * response.meanByMean;
            ofRise = per * response.meanByRise;
            riseOfMean = per * response.riseByMean;
            riseOfRise = per * response.riseByRise;
            left = response.meanLeft * startC[j];
            riseLeft = response.riseLeft * startC[j];
        }
        double[] mean = matrix[2 * j];
        double[] rise = matrix[2 * j + 1];
        double[] q = drive[j + 1];
        double[] r = driveRise[j + 1];
        for (int i = 0; i < unknowns; i++) {
            mean[i] = -(ofMean * q[i] + ofRise * r[i]);
            rise[i] = -(riseOfMean * q[i] + riseOfRise * r[i]);
        }
        mean[2 * j] += 1;
        rise[2 * j + 1] += 1;
        for (int i = unknowns; i < mean.length; i++) {
            mean[i] = ofMean * q[i] + ofRise * r[i];
            rise[i] = riseOfMean * q[i] + riseOfRise * r[i];
        }
        mean[unknowns] += left;
        rise[unknowns] += riseLeft;
    }

    /** Gauss and Jordan's elimination; the diagonal dominates. */
    private void eliminate() {
        int width = unknowns + 3;
        for (int p = 0; p < unknowns; p++) {
            double[] pivot = matrix[p];
            double per = 1 / pivot[p];
            for (int i = p; i < width; i++) {
                pivot[i] *= per;
            }
            for (int k = 0; k < unknowns; k++) {
                double factor = matrix[k][p];
                if (k != p && factor != 0) {
                    for (int i = p; i < width; i++) {
                        matrix[k][i] -= factor * pivot[i];
                    }
                }
            }
        }
    }

    /** Lays the lines of slurry and rooms for a slurry of some mean and rise. */
    void settle(double slurryMeanC, double slurryRiseK) {
        meanC[Network.SLURRY] = slurryMeanC;
        riseK[Network.SLURRY] = slurryRiseK;
        for (int u = 0; u < unknowns; u++) {
            double[] row = matrix[u];
            value[u] = row[unknowns] + row[unknowns + 1] * slurryMeanC + row[unknowns + 2] * slurryRiseK;
        }
        value[unknowns] = 1;
        value[unknowns + 1] = slurryMeanC;
        value[unknowns + 2] = slurryRiseK;
        for (int j = 0; j < rooms.length; j++) {
            meanC[rooms[j]] = value[2 * j];
            riseK[rooms[j]] = value[2 * j + 1];
        }
    }

    /** Goes on to the rooms' temperatures at the end: those with mass by the heat that they received. */
    void end(double stepS, State state) {
        for (int j = 0; j < rooms.length; j++) {
            int room = rooms[j];
            if (capacityJPerK[room] > 0) {
                double watts = -ownWPerK[j + 1] * meanC[room];
                for (int i = 0; i < value.length; i++) {
                    watts += drive[j + 1][i] * value[i];
                }
                startC[j] += stepS * watts / capacityJPerK[room];
            } else {
                startC[j] = meanC[room] + 0.5 * riseK[room];
            }
            if (state != null) {
                state.setNodeC(room, startC[j]);
            }
        }
    }
}
