package org.warmvat.network;

/** A two-position switch driven by the state, such as a thermostat or the control of a pump. */
@FunctionalInterface
public interface Switch {

    /**
     * How far the switch is from leaving its present position: negative while it stays, zero or more when it must move. Must
     * be continuous between jumps and switchings, and clearly negative after a move, or the switch would chatter.
     *
     * @param timeS seconds since the start of the weather file
     * @param state temperatures and switch positions
     * @param on present position
     */
    double margin(double timeS, State state, boolean on);
}
