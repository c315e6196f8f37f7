package org.warmvat.checks;

import org.warmvat.engine.Hours;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Gate;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
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

    /** What flows into the body. */
    interface Flow {
        /** Heat at an instant and a temperature of the body, W. */
        double watts(double timeS, double celsius);
    }

    /** A body that exchanges heat with one fluid. */
    static Vessel between(double capacityJPerK, double startC, double uaWPerK, double fluidC) {
        return new Vessel(capacityJPerK, startC, (timeS, celsius) -> uaWPerK * (fluidC - celsius));
    }

    /** Time until it reaches a temperature, s, by a switch located in time. */
    double secondsUntilC(double targetC) {
        Network.Assembly assembly = assembly();
        Margin margin = startC < targetC ? Margin.above(0, targetC) : Margin.below(0, targetC);
        int reached = assembly.switchOf("reached").startsWhen(Gate.OPEN, margin).number();
        int until = assembly.meter("until");
        assembly.source(Network.NOWHERE, until, state -> !state.isOn(reached)).set(1);
        Network network = assembly.build();
        double[] seconds = new double[1];
        new ReferenceEngine().run(network, network.initialState(), new Hours(0, MOST_HOURS), hour -> {
            seconds[0] += hour.meter(until);
            return !hour.state().isOn(reached);
        });
        return seconds[0];
    }

    /** Its temperature after a time, °C. */
    double afterS(double seconds) {
        return Moment.of(seconds, assembly()).nodeC(Network.SLURRY);
    }

    private Network.Assembly assembly() {
        Network.Assembly assembly = new Network.Assembly(capacityJPerK, startC);
        Source source = assembly.source(Network.SLURRY, Network.UNMETERED);
        assembly.part(new Part() {
            @Override
            public void ask(double timeS, State state) {
                source.set(flow.watts(timeS, state.nodeC(Network.SLURRY)));
            }
        });
        return assembly;
    }
}
