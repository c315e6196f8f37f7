package org.warmvat.network;

/**
 * A two-position switch driven by the state, such as a thermostat or the control of a pump. It starts when a gate is open and all
 * its starting margins are reached, it stops when a gate is open and any of its stopping margins is reached, or when it is forced off.
 * After a move the margins of the way back must be clearly negative, or it would chatter.
 */
public final class Switch {

    private static final double WILL_NOT = -1;
    private static final double MUST = 1;

    private final String name;
    private final int number;
    private Gate mayStart = Gate.SHUT;
    private Gate mayStop = Gate.SHUT;
    private Gate mustBeOff = Gate.SHUT;
    private boolean isHeldOff;
    private boolean alwaysStarts;
    private boolean alwaysStops;
    private Margin[] start = {};
    private Margin[] stop = {};

    Switch(String name, int number) {
        this.name = name;
        this.number = number;
    }

    /** When it starts: all margins are reached while the gate is open. */
    public Switch startsWhen(Gate gate, Margin... all) {
        mayStart = gate;
        alwaysStarts = gate.equals(Gate.OPEN);
        start = all.clone();
        return this;
    }

    /** When it stops: any margin is reached while the gate is open. */
    public Switch stopsWhen(Gate gate, Margin... any) {
        mayStop = gate;
        alwaysStops = gate.equals(Gate.OPEN);
        stop = any.clone();
        return this;
    }

    /** While this gate is open it stands off whatever its margins. */
    public Switch offWhile(Gate gate) {
        mustBeOff = gate;
        isHeldOff = true;
        return this;
    }

    /** Its name. */
    public String name() {
        return name;
    }

    /** Its number in {@link State#isOn(int)}. */
    public int number() {
        return number;
    }

    /** Whether margins can move it as the switches stand. */
    public boolean canMove(State state) {
        return state.isOn(number)
                ? alwaysStops || mayStop.isOpen(state)
                : !mustBeOff(state) && (alwaysStarts || mayStart.isOpen(state));
    }

    private boolean mustBeOff(State state) {
        return isHeldOff && mustBeOff.isOpen(state);
    }

    /** The margins that would move it from its position: all of them to start, any of them to stop. Shared: read only. */
    public Margin[] margins(boolean on) {
        return on ? stop : start;
    }

    /** How far it is from leaving its position: negative while it stays, zero or more when it must move. */
    public double margin(State state) {
        boolean on = state.isOn(number);
        if (on && mustBeOff(state)) {
            return MUST;
        }
        if (!canMove(state)) {
            return WILL_NOT;
        }
        double margin = on ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (Margin one : margins(on)) {
            margin = on ? Math.max(margin, one.at(state)) : Math.min(margin, one.at(state));
        }
        return margin;
    }
}
