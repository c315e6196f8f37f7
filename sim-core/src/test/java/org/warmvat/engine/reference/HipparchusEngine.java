package org.warmvat.engine.reference;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.AbstractODEDetector;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourLoop;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.Switchboard;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * A second opinion for tests: another library's integrator of another order, with that library's own location of switchings.
 * Temperatures, stocks and meters make one vector, of which the meters do not steer the step. It keeps no watches.
 */
public final class HipparchusEngine implements Engine {

    private static final double LEAST_SPAN_S = 1e-5;

    @Override
    public String name() {
        return "hipparchus";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        HourRecord record = new HourRecord(network, state);
        HourLoop.run(record, hours, new Run(network, state, record)::over, sink);
    }

    /** One network's integration. */
    private static final class Run implements OrdinaryDifferentialEquation, ODEEventHandler {
        private final Network network;
        private final State state;
        private final State scratch;
        private final HourRecord record;
        private final Equations equations;
        private final Switchboard switchboard;
        private final int[] massive;
        private final int metersFrom;
        private final int length;
        private final DormandPrince54Integrator integrator;
        private int triggered;

        Run(Network network, State state, HourRecord record) {
            this.network = network;
            this.state = state;
            this.record = record;
            scratch = state.copy();
            equations = new Equations(network);
            switchboard = new Switchboard(network);
            double[] capacity = network.capacitiesJPerK();
            massive = IntStream.range(0, capacity.length)
                    .filter(i -> capacity[i] > 0)
                    .toArray();
            metersFrom = massive.length + network.stocks().size();
            length = metersFrom + network.meters().size();
            double[] absolute = new double[length];
            Arrays.fill(absolute, 0, metersFrom, 1e-8);
            Arrays.fill(absolute, metersFrom, length, 1e12);
            double[] relative = new double[length];
            Arrays.fill(relative, 0, metersFrom, 1e-9);
            integrator = new DormandPrince54Integrator(1e-9, Hours.HOUR_S, absolute, relative);
            for (int i = 0; i < network.switches().size(); i++) {
                integrator.addEventDetector(new Detector(i, AdaptableInterval.of(120), 100, this));
            }
        }

        void over(int hour) {
            double timeS = hour * Hours.HOUR_S;
            double endS = timeS + Hours.HOUR_S;
            while (timeS < endS) {
                double jumpS = Math.min(endS, network.nextJumpS(timeS));
                over(new Interval(timeS, jumpS, hour));
                timeS = jumpS;
            }
        }

        private void over(Interval interval) {
            network.enter(interval);
            double timeS = interval.startS();
            while (interval.endS() - timeS > LEAST_SPAN_S) {
                switchboard.settle(timeS, state, record, 0);
                timeS = integrate(timeS, interval.endS());
                if (triggered >= 0) {
                    switchboard.move(triggered, state, record);
                }
            }
            switchboard.settle(timeS, state, record, 0);
        }

        private double integrate(double fromS, double toS) {
            triggered = -1;
            double[] y = new double[length];
            for (int i = 0; i < massive.length; i++) {
                y[i] = state.nodeC(massive[i]);
            }
            for (int i = massive.length; i < metersFrom; i++) {
                y[i] = state.stock(i - massive.length);
            }
            integrator.setInitialStepSize(Math.min(1, toS - fromS));
            ODEStateAndDerivative end = integrator.integrate(new ExpandableODE(this), new ODEState(fromS, y), toS);
            double[] last = end.getPrimaryState();
            unpack(last, state);
            equations.evaluate(end.getTime(), state);
            for (int i = metersFrom; i < length; i++) {
                record.meters()[i - metersFrom] += last[i];
            }
            return triggered >= 0 ? end.getTime() : toS;
        }

        private void unpack(double[] y, State into) {
            for (int i = 0; i < massive.length; i++) {
                into.setNodeC(massive[i], y[i]);
            }
            for (int i = massive.length; i < metersFrom; i++) {
                into.setStock(i - massive.length, y[i]);
            }
        }

        private State at(double[] y) {
            unpack(y, scratch);
            for (int i = 0; i < network.switches().size(); i++) {
                scratch.setOn(i, state.isOn(i));
            }
            return scratch;
        }

        @Override
        public int getDimension() {
            return length;
        }

        @Override
        public double[] computeDerivatives(double timeS, double[] y) {
            equations.evaluate(timeS, at(y));
            double[] rates = new double[length];
            for (int i = 0; i < massive.length; i++) {
                rates[i] = equations.heatW(massive[i])
                        / network.nodes().get(massive[i]).capacityJPerK();
            }
            for (int i = massive.length; i < metersFrom; i++) {
                rates[i] = equations.stockPerS(i - massive.length);
            }
            System.arraycopy(equations.meterPerS(), 0, rates, metersFrom, length - metersFrom);
            return rates;
        }

        @Override
        public Action eventOccurred(ODEStateAndDerivative at, ODEEventDetector detector, boolean increasing) {
            if (!increasing) {
                return Action.CONTINUE;
            }
            triggered = ((Detector) detector).index;
            return Action.STOP;
        }

        /** A switch as an event of the library's. */
        private final class Detector extends AbstractODEDetector<Detector> {
            private final int index;

            Detector(int index, AdaptableInterval check, int iterations, ODEEventHandler handler) {
                super(check, iterations, new BracketingNthOrderBrentSolver(0, 1e-7, 0, 5), handler);
                this.index = index;
            }

            @Override
            public double g(ODEStateAndDerivative at) {
                return network.switches().get(index).margin(Run.this.at(at.getPrimaryState()));
            }

            @Override
            protected Detector create(
                    AdaptableInterval check,
                    int iterations,
                    BracketedUnivariateSolver<UnivariateFunction> solver,
                    ODEEventHandler handler) {
                return new Detector(index, check, iterations, handler);
            }
        }
    }
}
