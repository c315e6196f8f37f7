package org.warmvat.speed;

import java.util.EnumMap;
import java.util.Map;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.tank.Runner;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** The built-in demonstration, made longer or finer. */
final class Demonstration {

    /** Faces of one chain of nodes each; the wall has two, beside the slurry and beside the gas. */
    private static final String[] CUT = {"lid", "floor"};

    private Demonstration() {}

    /** The design as it is shipped. */
    static Design design() {
        return DesignDocument.demonstration().design();
    }

    /** An engine by the name that it has on the command line. */
    static Engine engine(String name) {
        return name.equals("reference") ? new ReferenceEngine() : new ExponentialEngine();
    }

    /** The demonstration's weather, its year repeated. */
    static Weather weather(int years) {
        HourlyTable table = WeatherFiles.demonstration().table();
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        table.columns().forEach((quantity, values) -> columns.put(quantity, repeated(values, years)));
        return new Weather(new HourlyTable(table.site(), table.start(), table.stamp(), columns));
    }

    private static double[] repeated(double[] values, int times) {
        double[] all = new double[values.length * times];
        for (int i = 0; i < times; i++) {
            System.arraycopy(values, 0, all, i * values.length, values.length);
        }
        return all;
    }

    /** The design with its foam cut into sub-nodes until the network has so many nodes. */
    static Design design(int nodes) {
        Design uncut = cut(
                DesignDocument.demonstration().design().with("envelope.wall[pir_foam].sub_nodes", 1), new int[] {1, 1});
        int least = nodes(uncut);
        if (nodes < least) {
            throw new IllegalArgumentException(nodes + " nodes, expected " + least + " or more");
        }
        int more = nodes - least;
        int[] subNodes = new int[CUT.length];
        for (int i = 0; i < CUT.length; i++) {
            subNodes[i] = 1 + (more + i) / CUT.length;
        }
        Design design = cut(uncut, subNodes);
        int reached = nodes(design);
        if (reached != nodes) {
            throw new IllegalStateException(reached + " nodes, expected " + nodes);
        }
        return design;
    }

    private static Design cut(Design document, int[] subNodes) {
        Design cut = document;
        for (int i = 0; i < CUT.length; i++) {
            cut = cut.with("envelope." + CUT[i] + "[pir_foam].sub_nodes", subNodes[i]);
        }
        return cut;
    }

    /** How many nodes the network of a design has. */
    static int nodes(Design design) {
        NodeCount count = new NodeCount();
        new Runner(weather(1), count).start(design, 0).over(new Hours(0, 0), HourSink.IGNORE);
        return count.nodes;
    }

    /** Looks at the network it is given and runs nothing. */
    private static final class NodeCount implements Engine {
        private int nodes;

        @Override
        public String name() {
            return "count";
        }

        @Override
        public void run(Network network, State state, Hours hours, HourSink sink) {
            nodes = network.nodes().size();
        }
    }
}
