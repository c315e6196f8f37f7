package org.warmvat.engine.exponential;

import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Slurry and circuits from one switching to the next, in closed form: the other subsystem of the waveform relaxation. The slurry is the hub
 * of a star of the circuits whose pumps run, {@code C dx/dt = F + e t - k x - g (x - hub)}, x being deviations from the beginning; scaled
 * with the root of C its matrix is symmetric and its modes answer to straight lines. Circuits whose pump stands go by themselves.
 */
final class StarSegment {

    /** Slurry: capacity, loss by its own deviation, heat at the beginning without coils, and how fast that changes. */
    double slurryJPerK;

    double lossWPerK;
    double heatW;
    double heatWPerS;
    /** Its temperature at the beginning. */
    double slurryC;

    final LiveCircuit[] circuits;
    /** Integrals of deviations over what was last finished, the slurry's first, K s. */
    final double[] integralKs;

    private final PhiFunctions phi = new PhiFunctions();
    private final int[] coupled;
    private final double[] ratePerS;
    private final double[] force;
    private final double[] slope;
    private final double[][] shape;
    private final double[][] matrix;
    private final double[][] vector;
    private final double[] root;
    private final double[] drive;
    private final double[] driveRise;
    private final double[] sum;
    private final double[] integral;
    private int modes;

    StarSegment(LiveCircuit[] circuits) {
        this.circuits = circuits;
        int n = circuits.length + 1;
        integralKs = new double[n];
        coupled = new int[n];
        ratePerS = new double[n];
        force = new double[n];
        slope = new double[n];
        shape = new double[n][n];
        matrix = new double[n][n];
        vector = new double[n][n];
        root = new double[n];
        drive = new double[n];
        driveRise = new double[n];
        sum = new double[n];
        integral = new double[n];
    }

    /** Works out the closed form from what has been said. */
    void prepare() {
        modes = 1;
        coupled[0] = 0;
        root[0] = 1 / Math.sqrt(slurryJPerK);
        drive[0] = heatW;
        driveRise[0] = heatWPerS;
        double hubWPerK = lossWPerK;
        for (int i = 0; i < circuits.length; i++) {
            LiveCircuit one = circuits[i];
            if (one.isAlone()) {
                one.prepareAlone();
            } else {
                double coilW = one.coilWPerK * (one.startC - slurryC);
                coupled[modes] = i + 1;
                root[modes] = 1 / Math.sqrt(one.capacityJPerK);
                drive[0] += coilW;
                drive[modes] = one.linearisedHeatW() - coilW;
                driveRise[modes] = one.linearisedHeatWPerS();
                matrix[modes][modes] = (one.linearisedLossWPerK() + one.coilWPerK) * root[modes] * root[modes];
                matrix[0][modes] = -one.coilWPerK * root[0] * root[modes];
                hubWPerK += one.coilWPerK;
                modes++;
            }
        }
        matrix[0][0] = hubWPerK * root[0] * root[0];
        diagonalise();
        for (int m = 0; m < modes; m++) {
            double f = 0;
            double e = 0;
            for (int i = 0; i < modes; i++) {
                double v = vector[i][m] * root[i];
                shape[m][i] = v;
                f += v * drive[i];
                e += v * driveRise[i];
            }
            force[m] = f;
            slope[m] = e;
        }
    }

    /** One or two by hand, more by rotations. */
    private void diagonalise() {
        if (modes == 1) {
            vector[0][0] = 1;
        } else if (modes == 2) {
            double b = matrix[0][1];
            double half = 0.5 * (matrix[0][0] - matrix[1][1]);
            double r = Math.sqrt(half * half + b * b);
            double tangent = b / (Math.abs(half) + r);
            double cosine = 1 / Math.sqrt(1 + tangent * tangent);
            double sine = half < 0 ? -tangent * cosine : tangent * cosine;
            double middle = 0.5 * (matrix[0][0] + matrix[1][1]);
            double apart = half < 0 ? -r : r;
            matrix[0][0] = middle + apart;
            matrix[1][1] = middle - apart;
            vector[0][0] = cosine;
            vector[1][0] = sine;
            vector[0][1] = -sine;
            vector[1][1] = cosine;
        } else {
            for (int i = 1; i < modes; i++) {
                matrix[i][0] = matrix[0][i];
                for (int j = i + 1; j < modes; j++) {
                    matrix[i][j] = 0;
                    matrix[j][i] = 0;
                }
            }
            JacobiRotations.diagonalise(matrix, vector, modes);
        }
        for (int m = 0; m < modes; m++) {
            ratePerS[m] = matrix[m][m];
        }
    }

    /** Looks at a time after the beginning. */
    void look(double s, State seen) {
        clear(sum);
        for (int m = 0; m < modes; m++) {
            phi.at(ratePerS[m] * s);
            add(sum, m, s * (phi.phi1 * force[m] + s * phi.phi2 * slope[m]));
        }
        write(seen);
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                seen.setNodeC(one.node, one.aloneC(s, phi));
            }
        }
    }

    /** Looks at a time after the beginning and integrates deviations up to it. */
    void finish(double s, State seen) {
        clear(sum);
        clear(integral);
        for (int m = 0; m < modes; m++) {
            phi.at(ratePerS[m] * s);
            add(sum, m, s * (phi.phi1 * force[m] + s * phi.phi2 * slope[m]));
            add(integral, m, s * s * (phi.phi2 * force[m] + s * phi.phi3 * slope[m]));
        }
        write(seen);
        for (int i = 0; i < modes; i++) {
            integralKs[coupled[i]] = integral[i];
        }
        for (int i = 0; i < circuits.length; i++) {
            if (circuits[i].isAlone()) {
                integralKs[i + 1] = circuits[i].finishAlone(s, phi);
                seen.setNodeC(circuits[i].node, circuits[i].endC);
            }
        }
    }

    private void clear(double[] sums) {
        for (int i = 0; i < modes; i++) {
            sums[i] = 0;
        }
    }

    private void add(double[] into, int mode, double amount) {
        double[] of = shape[mode];
        for (int i = 0; i < modes; i++) {
            into[i] += of[i] * amount;
        }
    }

    private void write(State seen) {
        seen.setNodeC(Network.SLURRY, slurryC + sum[0]);
        for (int i = 1; i < modes; i++) {
            LiveCircuit one = circuits[coupled[i] - 1];
            seen.setNodeC(one.node, one.startC + sum[i]);
        }
    }

    /** How fast everything moves at the beginning, K/s. */
    void speeds(State perS) {
        perS.setNodeC(Network.SLURRY, drive[0] * root[0] * root[0]);
        for (int i = 1; i < modes; i++) {
            perS.setNodeC(circuits[coupled[i] - 1].node, drive[i] * root[i] * root[i]);
        }
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                perS.setNodeC(one.node, one.aloneKPerS(0, one.startC));
            }
        }
    }

    /** How fast everything moves at a time after the beginning, where it has just been looked at, K/s. */
    void speeds(double s, State seen, State perS) {
        clear(sum);
        for (int m = 0; m < modes; m++) {
            phi.at(ratePerS[m] * s);
            add(sum, m, force[m] + s * phi.phi1 * (slope[m] - ratePerS[m] * force[m]));
        }
        perS.setNodeC(Network.SLURRY, sum[0]);
        for (int i = 1; i < modes; i++) {
            perS.setNodeC(circuits[coupled[i] - 1].node, sum[i]);
        }
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                perS.setNodeC(one.node, one.aloneKPerS(s, seen.nodeC(one.node)));
            }
        }
    }

    /** Fastest decay of a circuit that takes part now, 1/s. */
    double ratePerS(LiveCircuit one) {
        if (one.isAlone()) {
            return one.aloneRatePerS();
        }
        double fastest = 0;
        for (int m = 0; m < modes; m++) {
            fastest = Math.max(fastest, ratePerS[m]);
        }
        return fastest;
    }
}
