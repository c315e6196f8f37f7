package org.warmvat.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/** One body that loses heat to known surroundings, the simplest of networks, put together for tests. */
final class Body {
    static final double HOUR_S = 3600;

    /** Heat capacity of a cubic metre of water, as in most cases here, J/K. */
    static final double CUBIC_METRE_J_PER_K = 4.18e6;

    final Network.Assembly assembly = new Network.Assembly();
    final int slurry;
    final int around;

    Body(double capacityJPerK, double initialC) {
        slurry = assembly.node(new Network.Node("slurry", capacityJPerK, -1, initialC, false));
        around = assembly.meter("around");
    }

    /** A loss to surroundings that may change with time. */
    Body losing(double uaWPerK, DoubleUnaryOperator aroundC) {
        assembly.part((timeS, state, flows) -> flows.exchange(slurry, uaWPerK, aroundC.applyAsDouble(timeS), around));
        return this;
    }

    /** Constant heat. */
    Body heated(double watts, String meter) {
        int index = assembly.meter(meter);
        assembly.part((timeS, state, flows) -> flows.heat(slurry, watts, index));
        return this;
    }

    Network build() {
        return assembly.build();
    }

    /** Remembers when a switch moved: an engine starts afresh at every switching, so parts see that very instant. */
    static final class Moves implements Part {
        final List<Double> timesS = new ArrayList<>();
        private final int index;
        private boolean before;

        Moves(int index) {
            this.index = index;
        }

        @Override
        public void contribute(double timeS, State state, Flows flows) {
            if (state.isOn(index) != before) {
                before = !before;
                timesS.add(timeS);
            }
        }
    }
}
