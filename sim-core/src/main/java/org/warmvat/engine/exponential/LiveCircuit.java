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
    final double perRoot;
    final double quadraticWPerK2;
    /** Margins of the two corners of the heater's band. */
    final Margin fading;

    final Margin spent;

    /** Conductance to the slurry, 0 while the pump stands. */
    double coilWPerK;
    /** From the segment's beginning: loss by its own deviation, heat without the coil's, and how fast that changes. */
    double lossWPerK;

    double heatW;
    double heatWPerS;
    double startC;
    double powerW;
    /** Where the water stands: 0 below the heater's band, 1 in it, 2 above, -1 while it may not heat. */
    int band;
    /** Share of each mode while its pump runs, times the root of its capacity. */
    final double[] share;
    /** Where it stands at the time last looked at, as a rise since the beginning; and the integral of that, K s. */
    double riseK;

    double integralKs;

    private final Exchange[] exchanges;
    private final Source[] sources;
    private final RiccatiSolution riccati = new RiccatiSolution();
    private final int around;
    private double powerWPerK;
    private boolean heats;
    /** Over an interval: sources that are on, and what exchanges give and take. */
    private double sourcesW;

    private double exchangeWPerK;
    private double aroundW;
    private double aroundWPerS;
    private double wholeKs;
    /** What the quadratic loss meets, and at which difference to it the loss is linearised while the pump runs. */
    private double aroundC;

    private double aroundKPerS;
    private double aroundStartC;
    private double linearisedK;

    LiveCircuit(Network network, Circuit circuit) {
        this.circuit = circuit;
        node = circuit.node();
        capacityJPerK = network.nodes().get(node).capacityJPerK();
        perRoot = 1 / Math.sqrt(capacityJPerK);
        exchanges =
                network.exchanges().stream().filter(one -> one.node() == node).toArray(Exchange[]::new);
        sources = network.sources().stream().filter(one -> one.node() == node).toArray(Source[]::new);
        quadraticWPerK2 = circuit.quadratic().wPerK2();
        around = quadraticWPerK2 > 0 ? circuit.quadratic().around() : Network.SLURRY;
        fading = Margin.above(node, circuit.heater().limitC() - circuit.heater().bandK());
        spent = Margin.above(node, circuit.heater().limitC());
        share = new double[network.circuits().size() + 1];
    }

    /** Enters an interval; lines of what is around are told from the step's middle, s. */
    void enter(LinearSubsystem lines, double stepS) {
        exchangeWPerK = 0;
        aroundW = 0;
        aroundWPerS = 0;
        wholeKs = 0;
        for (Exchange exchange : exchanges) {
            double wPerK = exchange.wPerK();
            exchangeWPerK += wPerK;
            aroundW += wPerK * lines.meanC(exchange.other());
            aroundWPerS += wPerK * lines.riseK(exchange.other()) / stepS;
        }
        aroundC = lines.meanC(around);
        aroundKPerS = lines.riseK(around) / stepS;
    }

    /** Takes over the positions of the switches. */
    void position(State state) {
        coilWPerK = state.isOn(circuit.coil().pump()) ? circuit.coilWPerK() : 0;
        heats = circuit.heater().gate().isOpen(state);
        sourcesW = 0;
        for (Source source : sources) {
            sourcesW += source.isOn(state) ? source.rate() : 0;
        }
    }

    /** Takes the beginning of a segment, some time after the step's middle. */
    void begin(double celsius, double slurryC, double afterMiddleS) {
        startC = celsius;
        heatW = sourcesW + aroundW + aroundWPerS * afterMiddleS - exchangeWPerK * celsius;
        heatWPerS = aroundWPerS;
        lossWPerK = exchangeWPerK;
        aroundStartC = aroundC + aroundKPerS * afterMiddleS;
        linearisedK = celsius - aroundStartC;
        setPower(slurryC);
    }

    private void setPower(double slurryC) {
        powerW = 0;
        powerWPerK = 0;
        band = -1;
        if (heats) {
            Circuit.Heater heater = circuit.heater();
            double left = (heater.limitC() - startC) / heater.bandK();
            double netW = heatW - coilWPerK * (startC - slurryC);
            if (left > 1 + AT_CORNER || (left > 1 - AT_CORNER && netW + heater.ratedW() < 0)) {
                band = 0;
                powerW = heater.ratedW();
            } else if (left < -AT_CORNER || (left < AT_CORNER && netW > 0)) {
                band = 2;
            } else {
                band = 1;
                powerW = heater.ratedW() * left;
                powerWPerK = heater.ratedW() / heater.bandK();
            }
            heatW += powerW;
            lossWPerK += powerWPerK;
        }
    }

    /** Adds what it gives to every room as it stands, W. */
    void toRoomsNow(State state, double[] watts) {
        for (Exchange exchange : exchanges) {
            double otherC = state.nodeC(exchange.other());
            watts[exchange.other()] += exchange.wPerK() * (state.nodeC(node) - otherC);
        }
    }

    // ---- while the pump runs: linear, its quadratic loss by a tangent

    double linearisedLossWPerK() {
        return lossWPerK + 2 * bentWPerK();
    }

    double linearisedHeatW() {
        return heatW - bentWPerK() * (2 * (startC - aroundStartC) - linearisedK);
    }

    double linearisedHeatWPerS() {
        return heatWPerS + 2 * bentWPerK() * aroundKPerS;
    }

    private double bentWPerK() {
        return quadraticWPerK2 * Math.abs(linearisedK);
    }

    /** Linearises about the mean difference over a segment that was gone to, if the loss is wrong there by more than allowed. */
    boolean linearisesAgain(double t, double allowedJ) {
        double meanK = startC - aroundStartC + integralKs / t - 0.5 * aroundKPerS * t;
        double off = meanK - linearisedK;
        boolean again = coilWPerK > 0 && quadraticWPerK2 * off * off * t > allowedJ;
        linearisedK = again ? meanK : linearisedK;
        return again;
    }

    // ---- while the pump stands: by itself

    boolean isAlone() {
        return coilWPerK == 0;
    }

    void prepareAlone() {
        if (quadraticWPerK2 > 0) {
            double driveW = heatW + lossWPerK * linearisedK - capacityJPerK * aroundKPerS;
            riccati.set(driveW, lossWPerK, quadraticWPerK2, capacityJPerK, linearisedK);
        }
    }

    /** Looks at a time. */
    void lookAlone(double t, PhiFunctions phi) {
        if (quadraticWPerK2 > 0) {
            riseK = aroundKPerS * t + riccati.at(t, phi) - linearisedK;
        } else {
            phi.at(lossWPerK / capacityJPerK * t);
            riseK = t * (phi.phi1 * heatW + t * phi.phi2 * heatWPerS) / capacityJPerK;
            integralKs = t * t * (phi.phi2 * heatW + t * phi.phi3 * heatWPerS) / capacityJPerK;
        }
    }

    /** Completes the integral up to the time last looked at. */
    void integrateAlone(double t) {
        if (quadraticWPerK2 > 0) {
            integralKs = riccati.integralKs(t) + (0.5 * aroundKPerS * t - linearisedK) * t;
        }
    }

    /** How fast it moves at a rise after a time, K/s. */
    double aloneKPerS(double t, double risenK) {
        double d = linearisedK + risenK - aroundKPerS * t;
        return (heatW + heatWPerS * t - lossWPerK * risenK - quadraticWPerK2 * d * Math.abs(d)) / capacityJPerK;
    }

    /** How fast it decays by itself, 1/s. */
    double aloneRatePerS() {
        return quadraticWPerK2 > 0 ? riccati.ratePerS : lossWPerK / capacityJPerK;
    }

    /** Counts what a segment gave, for integrals of its own and the slurry's deviation from where they began. */
    void count(double t, double slurryStartC, double slurryKs, double[] meters) {
        wholeKs += t * startC + integralKs;
        if (coilWPerK > 0) {
            add(meters, circuit.coil().meter(), coilWPerK * (t * (startC - slurryStartC) + integralKs - slurryKs));
        }
        if (quadraticWPerK2 > 0) {
            double differenceKs = t * (startC - aroundStartC) + integralKs - 0.5 * aroundKPerS * t * t;
            double lostJ =
                    coilWPerK > 0 ? bentWPerK() * (2 * differenceKs - linearisedK * t) : riccati.quadraticLossJ(t);
            add(meters, circuit.quadratic().meter(), -lostJ);
        }
        if (band >= 0) {
            add(meters, circuit.heater().meter(), powerW * t - powerWPerK * integralKs);
        }
    }

    /** Counts what exchanges gave over an interval of some length and middle, and what every room got of it. */
    void leave(LinearSubsystem lines, double lengthS, double shareOfMiddle, double[] meters, double[] toRoomJ) {
        for (Exchange exchange : exchanges) {
            double joules = exchange.wPerK() * (lengthS * lines.lineC(exchange.other(), shareOfMiddle) - wholeKs);
            add(meters, exchange.meter(), joules);
            toRoomJ[exchange.other()] -= joules;
        }
    }

    private static void add(double[] meters, int meter, double amount) {
        if (meter >= 0) {
            meters[meter] += amount;
        }
    }
}
