package org.warmvat.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.network.Gate;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;

/** One body that loses heat to known surroundings, the simplest of networks, put together for tests. */
final class Body {
    static final double HOUR_S = 3600;

    /** Heat capacity of a cubic metre of water, as in most cases here, J/K. */
    static final double CUBIC_METRE_J_PER_K = 4.18e6;

    final Network.Assembly assembly;
    final int slurry = Network.SLURRY;
    final int around;

    Body(double capacityJPerK, double initialC) {
        assembly = new Network.Assembly(capacityJPerK, initialC);
        around = assembly.meter("around");
    }

    /** A loss to surroundings that may change with time. */
    Body losing(double uaWPerK, DoubleUnaryOperator aroundC) {
        assembly.exchange(slurry, known(assembly, "around", aroundC), uaWPerK, around);
        return this;
    }

    /** A known temperature as a function of time. */
    static int known(Network.Assembly assembly, String name, DoubleUnaryOperator celsius) {
        int node = assembly.known(name, celsius.applyAsDouble(0));
        assembly.part(new Part() {
            @Override
            public void look(double timeS, State state) {
                state.setNodeC(node, celsius.applyAsDouble(timeS));
            }
        });
        return node;
    }

    /** Constant heat. */
    Body heated(double watts, String meter) {
        assembly.source(slurry, assembly.meter(meter)).set(watts);
        return this;
    }

    /** A heat that depends on the body's temperature in any way, told with its slope by a difference. */
    Body receiving(DoubleUnaryOperator wattsAtC) {
        Source source = assembly.source(slurry, around);
        assembly.part(new Part() {
            @Override
            public void ask(double timeS, State state) {
                double celsius = state.nodeC(slurry);
                double watts = wattsAtC.applyAsDouble(celsius);
                source.set(watts, (wattsAtC.applyAsDouble(celsius + 1e-4) - watts) / 1e-4);
            }
        });
        return this;
    }

    Network build() {
        return assembly.build();
    }

    /** Remembers when a switch moved: an engine looks at gates afresh after every switching, at that very instant. */
    static final class Moves implements Gate {
        final List<Double> timesS = new ArrayList<>();
        private final int index;
        private final int clock;
        private boolean before;

        Moves(int index, Network.Assembly assembly) {
            this.index = index;
            clock = known(assembly, "clock", timeS -> timeS);
            assembly.source(Network.NOWHERE, assembly.meter("moves"), this);
        }

        @Override
        public boolean isOpen(State state) {
            if (state.isOn(index) != before) {
                before = !before;
                timesS.add(state.nodeC(clock));
            }
            return false;
        }
    }
}
