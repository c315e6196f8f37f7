package org.warmvat.heating;

import org.warmvat.network.Interval;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;

/** Heat that was measured, into the slurry in place of the circuit that gave it. */
public final class MeasuredHeat implements Part {

    private final KnownRate watts;
    private final Source source;

    /** Adds it to a network. */
    public MeasuredHeat(KnownRate watts, Network.Assembly assembly) {
        this.watts = watts;
        source = assembly.source(Network.SLURRY, Network.UNMETERED);
        assembly.part(this);
    }

    @Override
    public double nextJumpS(double timeS) {
        return watts.nextJumpS(timeS);
    }

    @Override
    public void enter(Interval interval) {
        source.set(watts.at(interval.middleS()));
    }
}
