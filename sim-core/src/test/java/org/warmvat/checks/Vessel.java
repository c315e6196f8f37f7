package org.warmvat.checks;

import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.ReferenceEngine;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/**
 * A body or vessel of one temperature, integrated by the program's reference engine.
 *
 * @param capacityJPerK what it holds
 * @param startC where it starts
 * @param flow what flows into it
 */
record Vessel(double capacityJPerK, double startC, Flow flow) {

    private static final int MOST_HOURS = 10_000;

    /** What flows into the body, node 0. */
    interface Flow {
        /** Adds the flows at an instant. */
        void add(double timeS, State state, Flows flows);
    }

    /** A body that exchanges heat with one fluid. */
    static Vessel between(double capacityJPerK, double startC, double uaWPerK, double fluidC) {
        return new Vessel(
                capacityJPerK, startC, (timeS, state, flows) -> flows.exchange(0, uaWPerK, fluidC, Flows.UNMETERED));
    }

    /** Time until it reaches a temperature, s, by a switch located in time. */
    double secondsUntilC(double targetC) {
        double sign = Math.signum(targetC - startC);
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(new Network.Node("body", capacityJPerK, -1, startC, false));
        int until = assembly.meter("until");
        int reached = assembly.switchOf("reached", (timeS, state, on) -> on ? -1 : sign * (state.nodeC(0) - targetC));
        assembly.part((timeS, state, flows) -> {
            flow.add(timeS, state, flows);
            flows.meter(until, state.isOn(reached) ? 0 : 1);
        });
        Network network = assembly.build();
        double[] seconds = new double[1];
        new ReferenceEngine().run(network, network.initialState(), new Hours(0, MOST_HOURS), hour -> {
            seconds[0] += hour.meter(until);
            return !hour.state().isOn(reached);
        });
        return seconds[0];
    }

    /** Its temperature after a time, °C: from then on nothing flows. */
    double afterS(double seconds) {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(new Network.Node("body", capacityJPerK, -1, startC, false));
        assembly.part(new Until(seconds, flow));
        Network network = assembly.build();
        State state = network.initialState();
        int hours = (int) Math.ceil(seconds / Hours.HOUR_S);
        new ReferenceEngine().run(network, state, new Hours(0, hours), HourSink.IGNORE);
        return state.nodeC(0);
    }

    /** A flow that ends at a time. */
    private static final class Until implements Part {
        private final double endS;
        private final Flow flow;
        private boolean flowing;

        Until(double endS, Flow flow) {
            this.endS = endS;
            this.flow = flow;
        }

        @Override
        public double nextJumpS(double timeS) {
            return timeS < endS ? endS : Double.POSITIVE_INFINITY;
        }

        @Override
        public void enter(Interval interval) {
            flowing = interval.middleS() < endS;
        }

        @Override
        public void contribute(double timeS, State state, Flows flows) {
            if (flowing) {
                flow.add(timeS, state, flows);
            }
        }
    }
}
