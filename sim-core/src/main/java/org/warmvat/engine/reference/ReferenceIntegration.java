package org.warmvat.engine.reference;

import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.ode.ExpandableStatefulODE;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.SecondaryEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.warmvat.engine.EngineFailure;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.Hours;
import org.warmvat.engine.Switchboard;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** One network's integration by the library, interval after interval, switching after switching. */
final class ReferenceIntegration implements FirstOrderDifferentialEquations, StepHandler {

    private static final double SHORTEST_STEP_S = 1e-7;
    private static final double ABSOLUTE_TOLERANCE = 1e-8;
    private static final double RELATIVE_TOLERANCE = 1e-9;
    /** A switch whose margins hold together for a shorter time than this may be missed. */
    private static final double EVENT_CHECK_S = 10;

    private static final double EVENT_CONVERGENCE_S = 1e-6;
    private static final int EVENT_ITERATIONS = 100;
    private static final int MOST_EVALUATIONS = 50_000_000;

    private final Network network;
    private final State state;
    private final State scratch;
    private final HourRecord record;
    private final Equations equations;
    private final Switchboard switchboard;
    private final WatchKeeper watches;
    private final double[] capacity;
    private final int[] massive;
    private final double[] vector;
    private final DormandPrince853Integrator integrator;
    private double usualStepS = 60;
    private int triggered = -1;

    ReferenceIntegration(Network network, State state, HourRecord record) {
        this.network = network;
        this.state = state;
        this.record = record;
        scratch = state.copy();
        equations = new Equations(network);
        switchboard = new Switchboard(network);
        watches = new WatchKeeper(network, record);
        capacity = network.capacitiesJPerK();
        massive =
                IntStream.range(0, capacity.length).filter(i -> capacity[i] > 0).toArray();
        vector = new double[massive.length + network.stocks().size()];
        integrator =
                new DormandPrince853Integrator(SHORTEST_STEP_S, Hours.HOUR_S, ABSOLUTE_TOLERANCE, RELATIVE_TOLERANCE);
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        integrator.addStepHandler(this);
        for (int i = 0; i < network.switches().size(); i++) {
            integrator.addEventHandler(new Located(i), EVENT_CHECK_S, EVENT_CONVERGENCE_S, EVENT_ITERATIONS);
        }
    }

    /** Integrates over an hour, interval after interval. */
    void over(int hour) {
        double timeS = hour * Hours.HOUR_S;
        double endS = timeS + Hours.HOUR_S;
        while (timeS < endS) {
            double jumpS = Math.min(endS, network.nextJumpS(timeS));
            over(new Interval(timeS, jumpS, hour));
            timeS = jumpS;
        }
    }

    /** Integrates over an interval without jumps, restarting at every switching. */
    private void over(Interval interval) {
        network.enter(interval);
        double timeS = interval.startS();
        while (interval.endS() - timeS > leastSpanS(interval.endS())) {
            switchboard.settle(timeS, state, record, 0);
            timeS = integrate(timeS, interval.endS());
            if (triggered >= 0) {
                switchboard.move(triggered, state, record);
            }
        }
        switchboard.settle(timeS, state, record, 0);
        network.look(timeS, state);
        network.reached(timeS, state);
    }

    /** The library refuses a span of a thousand units in the last place; a switching may leave less of an interval. */
    private static double leastSpanS(double endS) {
        return Math.max(EVENT_CONVERGENCE_S, 2000 * Math.ulp(endS));
    }

    private double integrate(double fromS, double toS) {
        triggered = -1;
        pack(state, vector);
        ExpandableStatefulODE ode = new ExpandableStatefulODE(this);
        ode.addSecondaryEquations(new Meters());
        ode.setTime(fromS);
        ode.setPrimaryState(vector);
        ode.setSecondaryState(0, new double[record.meters().length]);
        integrator.setInitialStepSize(Math.min(usualStepS, toS - fromS));
        try {
            integrator.integrate(ode, toS);
        } catch (MathIllegalArgumentException | MathIllegalStateException e) {
            throw new EngineFailure(
                    "the reference engine could not go on at hour " + (int) (fromS / Hours.HOUR_S) + ": "
                            + e.getMessage(),
                    e);
        }
        unpack(ode.getPrimaryState(), state);
        network.look(ode.getTime(), state);
        equations.settleRooms(state);
        double[] metered = ode.getSecondaryState(0);
        double[] totals = record.meters();
        for (int i = 0; i < totals.length; i++) {
            totals[i] += metered[i];
        }
        return triggered >= 0 ? ode.getTime() : toS;
    }

    private void pack(State from, double[] into) {
        for (int i = 0; i < massive.length; i++) {
            into[i] = from.nodeC(massive[i]);
        }
        for (int i = massive.length; i < into.length; i++) {
            into[i] = from.stock(i - massive.length);
        }
    }

    /** The library hands events the meters behind the state proper. */
    private void unpack(double[] from, State into) {
        for (int i = 0; i < massive.length; i++) {
            into.setNodeC(massive[i], from[i]);
        }
        for (int i = massive.length; i < vector.length; i++) {
            into.setStock(i - massive.length, from[i]);
        }
    }

    /** The scratch state at a vector of the library's, with the switches as they stand. */
    private State at(double[] y) {
        unpack(y, scratch);
        for (int i = 0; i < network.switches().size(); i++) {
            scratch.setOn(i, state.isOn(i));
        }
        return scratch;
    }

    @Override
    public int getDimension() {
        return vector.length;
    }

    @Override
    public void computeDerivatives(double timeS, double[] y, double[] yDot) {
        equations.evaluate(timeS, at(y));
        for (int i = 0; i < massive.length; i++) {
            yDot[i] = equations.heatW(massive[i]) / capacity[massive[i]];
        }
        for (int i = massive.length; i < vector.length; i++) {
            yDot[i] = equations.stockPerS(i - massive.length);
        }
    }

    @Override
    public void init(double t0, double[] y0, double t) {
        // nothing to prepare: the state is the record's own
    }

    @Override
    public void handleStep(StepInterpolator step, boolean isLast) {
        double fromS = step.getPreviousTime();
        double toS = step.getCurrentTime();
        if (!isLast) {
            usualStepS = toS - fromS;
        }
        watches.overStep(fromS, toS, timeS -> {
            step.setInterpolatedTime(timeS);
            State seen = at(step.getInterpolatedState());
            network.look(timeS, seen);
            return seen;
        });
    }

    /** A switch as an event of the library's. */
    private final class Located implements EventHandler {
        private final int index;

        Located(int index) {
            this.index = index;
        }

        @Override
        public void init(double t0, double[] y0, double t) {
            // nothing to prepare
        }

        @Override
        public double g(double timeS, double[] y) {
            return network.switches().get(index).margin(at(y));
        }

        @Override
        public Action eventOccurred(double timeS, double[] y, boolean increasing) {
            if (!increasing) {
                return Action.CONTINUE;
            }
            triggered = index;
            return Action.STOP;
        }

        @Override
        public void resetState(double timeS, double[] y) {
            throw new IllegalStateException("a switch never resets the state");
        }
    }

    /** Rates of the meters; the library asks for them right after the derivatives at the same instant. */
    private final class Meters implements SecondaryEquations {

        @Override
        public int getDimension() {
            return record.meters().length;
        }

        @Override
        public void computeDerivatives(double timeS, double[] y, double[] yDot, double[] metered, double[] meterRate) {
            System.arraycopy(equations.meterPerS(), 0, meterRate, 0, meterRate.length);
        }
    }
}
