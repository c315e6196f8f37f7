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
    /** Its temperature at the beginning, and the integral of its deviation from that up to the time last looked at, K s. */
    double slurryC;

    double slurryKs;

    final LiveCircuit[] circuits;

    private final PhiFunctions phi = new PhiFunctions();
    /** Circuits whose pump runs, in their order; with the slurry before them as many as modes. */
    private final LiveCircuit[] coupled;

    private final double[] ratePerS;
    private final double[] force;
    private final double[] slope;
    private final double[] share;
    private final double[][] matrix;
    private final double[][] vector;
    private int modes;
    private double perRoot;
    private double startW;

    StarSegment(LiveCircuit[] circuits) {
        this.circuits = circuits;
        int n = circuits.length + 1;
        coupled = new LiveCircuit[n - 1];
        ratePerS = new double[n];
        force = new double[n];
        slope = new double[n];
        share = new double[n];
        matrix = new double[n][n];
        vector = new double[n][n];
    }

    /** Works out the closed form from what has been said. */
    void prepare() {
        modes = 1;
        perRoot = 1 / Math.sqrt(slurryJPerK);
        startW = heatW;
        double hubWPerK = lossWPerK;
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                one.prepareAlone();
            } else {
                hubWPerK += one.coilWPerK;
                startW += one.coilWPerK * (one.startC - slurryC);
                coupled[modes - 1] = one;
                modes++;
            }
        }
        matrix[0][0] = hubWPerK * perRoot * perRoot;
        for (int i = 1; i < modes; i++) {
            LiveCircuit one = coupled[i - 1];
            matrix[0][i] = -one.coilWPerK * perRoot * one.perRoot;
            matrix[i][i] = (one.linearisedLossWPerK() + one.coilWPerK) * one.perRoot * one.perRoot;
        }
        diagonalise();
        for (int m = 0; m < modes; m++) {
            ratePerS[m] = matrix[m][m];
            share[m] = vector[0][m] * perRoot;
            force[m] = share[m] * startW;
            slope[m] = share[m] * heatWPerS;
        }
        for (int i = 1; i < modes; i++) {
            drive(coupled[i - 1], vector[i]);
        }
    }

    private void drive(LiveCircuit one, double[] components) {
        double watts = one.linearisedHeatW() - one.coilWPerK * (one.startC - slurryC);
        double wattsPerS = one.linearisedHeatWPerS();
        for (int m = 0; m < modes; m++) {
            one.share[m] = components[m] * one.perRoot;
            force[m] += one.share[m] * watts;
            slope[m] += one.share[m] * wattsPerS;
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
    }

    /** Looks at a time after the beginning. */
    void look(double s, State seen) {
        double hubK = 0;
        slurryKs = 0;
        for (int i = 1; i < modes; i++) {
            coupled[i - 1].riseK = 0;
            coupled[i - 1].integralKs = 0;
        }
        for (int m = 0; m < modes; m++) {
            phi.at(ratePerS[m] * s);
            double rise = s * (phi.phi1 * force[m] + s * phi.phi2 * slope[m]);
            double integral = s * s * (phi.phi2 * force[m] + s * phi.phi3 * slope[m]);
            hubK += share[m] * rise;
            slurryKs += share[m] * integral;
            for (int i = 1; i < modes; i++) {
                coupled[i - 1].riseK += coupled[i - 1].share[m] * rise;
                coupled[i - 1].integralKs += coupled[i - 1].share[m] * integral;
            }
        }
        seen.setNodeC(Network.SLURRY, slurryC + hubK);
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                one.lookAlone(s, phi);
            }
            seen.setNodeC(one.node, one.startC + one.riseK);
        }
    }

    /** Completes the integrals of deviations up to the time last looked at. */
    void integrate(double s) {
        for (LiveCircuit one : circuits) {
            if (one.isAlone()) {
                one.integrateAlone(s);
            }
        }
    }

    /** How fast everything moves at the beginning, K/s. */
    void speeds(State perS) {
        perS.setNodeC(Network.SLURRY, startW * perRoot * perRoot);
        for (LiveCircuit one : circuits) {
            double watts = one.linearisedHeatW() - one.coilWPerK * (one.startC - slurryC);
            perS.setNodeC(one.node, one.isAlone() ? one.aloneKPerS(0, 0) : watts / one.capacityJPerK);
        }
    }

    /** How fast everything moves at a time after the beginning, where it has just been looked at, K/s. */
    void speeds(double s, State seen, State perS) {
        perS.setNodeC(Network.SLURRY, 0);
        for (LiveCircuit one : circuits) {
            perS.setNodeC(one.node, one.isAlone() ? one.aloneKPerS(s, seen.nodeC(one.node) - one.startC) : 0);
        }
        for (int m = 0; m < modes; m++) {
            phi.at(ratePerS[m] * s);
            double speed = force[m] + s * phi.phi1 * (slope[m] - ratePerS[m] * force[m]);
            perS.setNodeC(Network.SLURRY, perS.nodeC(Network.SLURRY) + share[m] * speed);
            for (int i = 1; i < modes; i++) {
                int node = coupled[i - 1].node;
                perS.setNodeC(node, perS.nodeC(node) + coupled[i - 1].share[m] * speed);
            }
        }
    }

    /** Fastest decay of a circuit that takes part now, 1/s. */
    double ratePerS(LiveCircuit one) {
        double fastest = one.isAlone() ? one.aloneRatePerS() : 0;
        for (int m = 0; m < modes && !one.isAlone(); m++) {
            fastest = Math.max(fastest, ratePerS[m]);
        }
        return fastest;
    }
}
