package org.warmvat.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.AirDosing;
import org.warmvat.design.Design;
import org.warmvat.design.Gas;
import org.warmvat.engine.HourRecord;
import org.warmvat.gas.GasPart;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;
import org.warmvat.tank.TankNetwork;

/** Adds hours up as they come and keeps none of them. */
final class RunningSums implements SpanSums {

    private final TankNetwork tank;
    private final double[] meters;
    private final double[] watchS;
    private final int[] starts;
    private final Stores first;
    private final double airNm3PerH;
    private final double methaneFraction;
    private final double warningShare;
    private final int methaneMeter;
    private Stores last;
    private int hours;
    private double leastC = Double.POSITIVE_INFINITY;
    private double mostC = Double.NEGATIVE_INFINITY;
    private double highestShare;
    private int hoursAbove;

    /** What nodes hold at an instant: slurry in °C, the others in J above 0 °C. */
    private record Stores(double slurryC, double envelopeJ, double collectorJ, double backupJ) {

        static Stores of(TankNetwork tank, State state) {
            double[] capacity = tank.network().capacitiesJPerK();
            List<Node> nodes = tank.network().nodes();
            double envelope = 0;
            for (int node = 0; node < capacity.length; node++) {
                if (nodes.get(node).startsSteady()) {
                    envelope += capacity[node] * state.nodeC(node);
                }
            }
            return new Stores(
                    state.nodeC(tank.slurry()),
                    envelope,
                    tank.collector().isPresent() ? heat(tank.collector().getAsInt(), capacity, state) : 0,
                    tank.backupWater().isPresent() ? heat(tank.backupWater().getAsInt(), capacity, state) : 0);
        }

        private static double heat(int node, double[] capacity, State state) {
            return capacity[node] * state.nodeC(node);
        }
    }

    /**
     * Starts at a state.
     *
     * @param design the design that runs
     * @param tank its network
     * @param state state before the first hour
     */
    RunningSums(Design design, TankNetwork tank, State state) {
        this.tank = tank;
        Network network = tank.network();
        meters = new double[network.meters().size()];
        watchS = new double[network.watches().size()];
        starts = new int[network.switches().size()];
        first = Stores.of(tank, state);
        last = first;
        Optional<AirDosing> dosing = design.gas().flatMap(Gas::airDosing);
        airNm3PerH = dosing.map(GasPart::dosedAirNm3PerH).orElse(0.0);
        methaneFraction = design.gas().map(Gas::methaneFraction).orElse(1.0);
        warningShare = AirShare.warningShare(design);
        methaneMeter = network.meters().indexOf(GasPart.METHANE);
    }

    void add(HourRecord hour) {
        hours++;
        for (int i = 0; i < meters.length; i++) {
            meters[i] += hour.meter(i);
        }
        for (int i = 0; i < watchS.length; i++) {
            watchS[i] += hour.watchS(i);
        }
        for (int i = 0; i < starts.length; i++) {
            starts[i] += hour.starts(i);
        }
        leastC = Math.min(leastC, hour.slurryLeastC());
        mostC = Math.max(mostC, hour.slurryMostC());
        if (airNm3PerH > 0) {
            addAirShare(hour.meter(methaneMeter) / methaneFraction);
        }
    }

    private void addAirShare(double biogasNm3) {
        double share = biogasNm3 > 0 ? airNm3PerH / biogasNm3 : Double.POSITIVE_INFINITY;
        highestShare = Math.max(highestShare, share);
        if (share > warningShare) {
            hoursAbove++;
        }
    }

    /** Ends at a state, which is that after the last hour added. */
    void end(State state) {
        last = Stores.of(tank, state);
    }

    @Override
    public double hours() {
        return hours;
    }

    @Override
    public double meter(String name) {
        int index = tank.network().meters().indexOf(name);
        return index < 0 ? 0 : meters[index];
    }

    @Override
    public double watchS(String name) {
        for (int i = 0; i < watchS.length; i++) {
            if (tank.network().watches().get(i).name().equals(name)) {
                return watchS[i];
            }
        }
        return 0;
    }

    @Override
    public int starts(String name) {
        for (int i = 0; i < starts.length; i++) {
            if (tank.network().switches().get(i).name().equals(name)) {
                return starts[i];
            }
        }
        return 0;
    }

    @Override
    public boolean hasSwitch(String name) {
        return tank.network().switches().stream().anyMatch(one -> one.name().equals(name));
    }

    @Override
    public double slurryRiseK() {
        return last.slurryC() - first.slurryC();
    }

    @Override
    public double envelopeStoredJ() {
        return last.envelopeJ() - first.envelopeJ();
    }

    @Override
    public double collectorStoredJ() {
        return last.collectorJ() - first.collectorJ();
    }

    @Override
    public double backupStoredJ() {
        return last.backupJ() - first.backupJ();
    }

    @Override
    public double slurryLeastC() {
        return leastC;
    }

    @Override
    public double slurryMostC() {
        return mostC;
    }

    @Override
    public OptionalDouble highestAirShare() {
        return airNm3PerH == 0 ? OptionalDouble.empty() : OptionalDouble.of(highestShare);
    }

    @Override
    public int hoursAboveAirLimit() {
        return hoursAbove;
    }
}
