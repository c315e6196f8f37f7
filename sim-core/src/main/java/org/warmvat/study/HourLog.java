package org.warmvat.study;

import java.util.List;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;
import org.warmvat.tank.TankNetwork;

/** Keeps what every hour of a run gave: meters, starts, watches, and the temperatures that the results need. */
final class HourLog implements HourSink {

    private final TankNetwork tank;
    private final double[][] meters;
    private final int[][] starts;
    private final double[][] watchS;
    private final double[][] watchWorst;
    private final double[] slurryC;
    private final double[] collectorC;
    private final double[] backupC;
    private final double[] envelopeJ;
    private final double[] leastC;
    private final double[] mostC;
    private final HourSink progress;
    private final int firstHour;
    private final double[] capacity;
    private final List<Node> nodes;

    /**
     * A log that starts at a state.
     *
     * @param tank the network that runs
     * @param start state before the first hour
     * @param firstHour index of the first weather hour
     * @param hours how many hours will come
     * @param progress told of each hour after it is kept
     */
    HourLog(TankNetwork tank, State start, int firstHour, int hours, HourSink progress) {
        this.tank = tank;
        this.progress = progress;
        this.firstHour = firstHour;
        Network network = tank.network();
        nodes = network.nodes();
        capacity = network.capacitiesJPerK();
        meters = new double[network.meters().size()][hours];
        starts = new int[network.switches().size()][hours];
        watchS = new double[network.watches().size()][hours];
        watchWorst = new double[network.watches().size()][hours];
        slurryC = new double[hours + 1];
        collectorC = new double[hours + 1];
        backupC = new double[hours + 1];
        envelopeJ = new double[hours + 1];
        leastC = new double[hours];
        mostC = new double[hours];
        keepState(0, start);
    }

    private void keepState(int index, State state) {
        slurryC[index] = state.nodeC(tank.slurry());
        tank.collector().ifPresent(node -> collectorC[index] = state.nodeC(node));
        tank.backupWater().ifPresent(node -> backupC[index] = state.nodeC(node));
        double stored = 0;
        for (int node = 0; node < nodes.size(); node++) {
            if (nodes.get(node).startsSteady()) {
                stored += capacity[node] * state.nodeC(node);
            }
        }
        envelopeJ[index] = stored;
    }

    @Override
    public boolean accept(HourRecord hour) {
        int index = hour.hour() - firstHour;
        for (int i = 0; i < meters.length; i++) {
            meters[i][index] = hour.meter(i);
        }
        for (int i = 0; i < starts.length; i++) {
            starts[i][index] = hour.starts(i);
        }
        for (int i = 0; i < watchS.length; i++) {
            watchS[i][index] = hour.watchS(i);
            watchWorst[i][index] = hour.watchWorst(i);
        }
        leastC[index] = hour.slurryLeastC();
        mostC[index] = hour.slurryMostC();
        keepState(index + 1, hour.state());
        return progress.accept(hour);
    }

    /** Integrals of a meter by hour; zeros when the design has no such meter. Shared: read only. */
    double[] meter(String name) {
        int index = tank.network().meters().indexOf(name);
        return index < 0 ? new double[leastC.length] : meters[index];
    }

    /** Starts of a switch by hour; zeros when there is none. Shared: read only. */
    int[] starts(String name) {
        for (int i = 0; i < starts.length; i++) {
            if (tank.network().switches().get(i).name().equals(name)) {
                return starts[i];
            }
        }
        return new int[leastC.length];
    }

    /** Seconds of a watch by hour; zeros when there is none. Shared: read only. */
    double[] watchS(String name) {
        int index = watchIndex(name);
        return index < 0 ? new double[leastC.length] : watchS[index];
    }

    /** Largest margin of a watch over the whole run; minus infinity when there is none. */
    double worst(String name) {
        double worst = Double.NEGATIVE_INFINITY;
        int index = watchIndex(name);
        for (int hour = 0; index >= 0 && hour < leastC.length; hour++) {
            worst = Math.max(worst, watchWorst[index][hour]);
        }
        return worst;
    }

    private int watchIndex(String name) {
        for (int i = 0; i < watchS.length; i++) {
            if (tank.network().watches().get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    int hours() {
        return leastC.length;
    }

    /** Slurry temperature at hour edges, one more than there are hours. Shared: read only. */
    double[] slurryC() {
        return slurryC;
    }

    /** Collector temperature at hour edges. Shared: read only. */
    double[] collectorC() {
        return collectorC;
    }

    /** Backup water temperature at hour edges. Shared: read only. */
    double[] backupC() {
        return backupC;
    }

    /** Heat stored in the envelope above 0 °C at hour edges, J. Shared: read only. */
    double[] envelopeJ() {
        return envelopeJ;
    }

    /** Lowest slurry temperature by hour. Shared: read only. */
    double[] leastC() {
        return leastC;
    }

    /** Highest slurry temperature by hour. Shared: read only. */
    double[] mostC() {
        return mostC;
    }

    /** Heat capacity of the solar circuit, J/K; 0 without one. */
    double capacityOfCollectorJPerK() {
        return tank.collector().isPresent() ? capacity[tank.collector().getAsInt()] : 0;
    }

    /** Heat capacity of the backup water, J/K; 0 without it. */
    double capacityOfBackupJPerK() {
        return tank.backupWater().isPresent() ? capacity[tank.backupWater().getAsInt()] : 0;
    }

    /** Whether the network has a switch of a name. */
    boolean hasSwitch(String name) {
        return tank.network().switches().stream().anyMatch(one -> one.name().equals(name));
    }
}
