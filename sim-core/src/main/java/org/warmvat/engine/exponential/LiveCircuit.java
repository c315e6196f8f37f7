package org.warmvat.engine.exponential;

import org.warmvat.network.Circuit;
import org.warmvat.network.Exchange;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Source;
import org.warmvat.network.State;

/**
 * A circuit over a segment: what drives it from the segment's beginning, and its closed form while its pump stands: linear, or Riccati's
 * with a quadratic loss.
 */
final class LiveCircuit {

    /** Within this share of the heater's band from a corner the net heat decides to which side it belongs. */
    private static final double AT_CORNER = 1e-9;

    final Circuit circuit;
    final int node;
    final double capacityJPerK;
    /** Margins of the two corners of the heater's band. */
    final Margin fading;

    final Margin spent;

    /** Conductance to the slurry, 0 while the pump stands; all of the following hold from the segment's beginning. */
    double coilWPerK;

    double lossWPerK;
    double heatW;
    double heatWPerS;
    double startC;
    double powerW;
    double powerWPerK;
    /** Where the water stands: 0 below the heater's band, 1 in it, 2 above, -1 while it may not heat. */
    int band;
    /** Difference at which the quadratic loss is linearised while the pump runs. */
    double linearisedK;

    double aroundStartC;
    double aroundKPerS;
    /** Where it was last gone to by itself. */
    double endC;

    private final Exchange[] exchanges;
    private final Source[] sources;
    private final RiccatiSolution riccati = new RiccatiSolution();
    private final boolean quadratic;
    private boolean byRiccati;

    LiveCircuit(Network network, Circuit circuit) {
        this.circuit = circuit;
        node = circuit.node();
        capacityJPerK = network.nodes().get(node).capacityJPerK();
        exchanges =
                network.exchanges().stream().filter(one -> one.node() == node).toArray(Exchange[]::new);
        sources = network.sources().stream().filter(one -> one.node() == node).toArray(Source[]::new);
        quadratic = circuit.quadratic().wPerK2() > 0;
        fading = Margin.above(node, circuit.heater().limitC() - circuit.heater().bandK());
        spent = Margin.above(node, circuit.heater().limitC());
    }

    /** Takes the beginning of a segment. */
    void begin(State state, LinearSubsystem around, double stepS) {
        startC = state.nodeC(node);
        coilWPerK = state.isOn(circuit.coil().pump()) ? circuit.coilWPerK() : 0;
        heatW = 0;
        heatWPerS = 0;
        lossWPerK = 0;
        for (Source source : sources) {
            heatW += source.isOn(state) ? source.rate() : 0;
        }
        for (Exchange exchange : exchanges) {
            double wPerK = exchange.wPerK();
            heatW += wPerK * (state.nodeC(exchange.other()) - startC);
            heatWPerS += wPerK * around.riseK(exchange.other()) / stepS;
            lossWPerK += wPerK;
        }
        if (quadratic) {
            aroundStartC = state.nodeC(circuit.quadratic().around());
            aroundKPerS = around.riseK(circuit.quadratic().around()) / stepS;
            linearisedK = startC - aroundStartC;
        }
        setPower(state);
    }

    /** Adds what it gives to every room as it stands, W. */
    void toRoomsNow(State state, double[] watts) {
        for (Exchange exchange : exchanges) {
            double otherC = state.nodeC(exchange.other());
            watts[exchange.other()] += exchange.wPerK() * (state.nodeC(node) - otherC);
        }
    }

    private void setPower(State state) {
        Circuit.Heater heater = circuit.heater();
        powerW = 0;
        powerWPerK = 0;
        band = -1;
        if (heater.gate().isOpen(state)) {
            double share = (heater.limitC() - startC) / heater.bandK();
            double netW = heatW - coilWPerK * (startC - state.nodeC(Network.SLURRY));
            if (share > 1 + AT_CORNER || (share > 1 - AT_CORNER && netW + heater.ratedW() < 0)) {
                band = 0;
                powerW = heater.ratedW();
            } else if (share < -AT_CORNER || (share < AT_CORNER && netW > 0)) {
                band = 2;
            } else {
                band = 1;
                powerW = heater.ratedW() * share;
                powerWPerK = heater.ratedW() / heater.bandK();
            }
        }
        heatW += powerW;
        lossWPerK += powerWPerK;
    }

    /** Loss by its own deviation with the quadratic loss linearised, W/K; only while the pump runs. */
    double linearisedLossWPerK() {
        return lossWPerK + 2 * bentWPerK();
    }

    /** Heat at the beginning without the coil's, W; only while the pump runs. */
    double linearisedHeatW() {
        return heatW - bentWPerK() * (2 * (startC - aroundStartC) - linearisedK);
    }

    /** How fast that changes by itself, W/s. */
    double linearisedHeatWPerS() {
        return heatWPerS + 2 * bentWPerK() * aroundKPerS;
    }

    private double bentWPerK() {
        return circuit.quadratic().wPerK2() * Math.abs(linearisedK);
    }

    /** Error of the linearised loss at another difference, W. */
    double linearisationErrorW(double differenceK) {
        double off = differenceK - linearisedK;
        return circuit.quadratic().wPerK2() * off * off;
    }

    // ---- by itself, while the pump stands

    boolean isAlone() {
        return coilWPerK == 0;
    }

    void prepareAlone() {
        byRiccati = quadratic;
        if (byRiccati) {
            double differenceK = startC - aroundStartC;
            double driveW = heatW + lossWPerK * differenceK - capacityJPerK * aroundKPerS;
            riccati.set(driveW, lossWPerK, circuit.quadratic().wPerK2(), capacityJPerK, differenceK);
        }
    }

    /** Temperature after a time. */
    double aloneC(double t, PhiFunctions phi) {
        if (byRiccati) {
            return aroundStartC + aroundKPerS * t + riccati.at(t, phi);
        }
        phi.at(lossWPerK / capacityJPerK * t);
        return startC + t * (phi.phi1 * heatW + t * phi.phi2 * heatWPerS) / capacityJPerK;
    }

    /** Goes to a time: its temperature there is {@link #endC}; returns the integral of its deviation from the beginning, K s. */
    double finishAlone(double t, PhiFunctions phi) {
        if (byRiccati) {
            double integralKs = riccati.finish(t, phi);
            endC = aroundStartC + aroundKPerS * t + riccati.endK;
            return (aroundStartC - startC) * t + 0.5 * aroundKPerS * t * t + integralKs;
        }
        phi.at(lossWPerK / capacityJPerK * t);
        endC = startC + t * (phi.phi1 * heatW + t * phi.phi2 * heatWPerS) / capacityJPerK;
        return t * t * (phi.phi2 * heatW + t * phi.phi3 * heatWPerS) / capacityJPerK;
    }

    /** How fast it moves at a temperature after a time, K/s. */
    double aloneKPerS(double t, double celsius) {
        double watts = heatW + heatWPerS * t - lossWPerK * (celsius - startC);
        if (quadratic) {
            double d = celsius - aroundStartC - aroundKPerS * t;
            watts -= circuit.quadratic().wPerK2() * d * Math.abs(d);
        }
        return watts / capacityJPerK;
    }

    /** How fast it decays by itself, 1/s. */
    double aloneRatePerS() {
        return byRiccati ? riccati.ratePerS : lossWPerK / capacityJPerK;
    }

    /**
     * Counts what the segment gave.
     *
     * @param t its length
     * @param ownKs integral of the circuit's deviation from its beginning
     * @param slurryKs the same of the slurry's
     * @param slurryStartC slurry at the beginning
     * @param beginning state there
     * @param toRoomJ heat given to every room, counted up
     */
    void count(
            double t,
            double ownKs,
            double slurryKs,
            double slurryStartC,
            State beginning,
            LinearSubsystem around,
            double stepS,
            double[] meters,
            double[] toRoomJ) {
        if (coilWPerK > 0) {
            add(meters, circuit.coil().meter(), coilWPerK * (t * (startC - slurryStartC) + ownKs - slurryKs));
        }
        for (Source source : sources) {
            if (source.isOn(beginning)) {
                add(meters, source.meter(), source.rate() * t);
            }
        }
        for (Exchange exchange : exchanges) {
            double otherKs = 0.5 * t * t * around.riseK(exchange.other()) / stepS;
            double joules = exchange.wPerK() * (t * (beginning.nodeC(exchange.other()) - startC) + otherKs - ownKs);
            add(meters, exchange.meter(), joules);
            toRoomJ[exchange.other()] -= joules;
        }
        if (quadratic) {
            double differenceKs = t * (startC - aroundStartC) + ownKs - 0.5 * aroundKPerS * t * t;
            double lostJ =
                    coilWPerK > 0 ? bentWPerK() * (2 * differenceKs - linearisedK * t) : riccati.quadraticLossJ(t);
            add(meters, circuit.quadratic().meter(), -lostJ);
        }
        if (band >= 0) {
            add(meters, circuit.heater().meter(), powerW * t - powerWPerK * ownKs);
        }
    }

    private static void add(double[] meters, int meter, double amount) {
        if (meter >= 0) {
            meters[meter] += amount;
        }
    }
}
