package org.warmvat.tank;

import org.warmvat.network.Network;
import org.warmvat.network.Surroundings;

/** Adds parts to a tank that no design describes, such as one of a user of this library; what they declare is told as any other. */
@FunctionalInterface
public interface Guest {

    /** Nobody. */
    Guest NONE = (assembly, surroundings) -> {};

    /**
     * Joins a network while it is gathered.
     *
     * @param assembly the network, whose slurry is {@link Network#SLURRY}
     * @param surroundings air, ground and clock
     */
    void join(Network.Assembly assembly, Surroundings surroundings);
}
