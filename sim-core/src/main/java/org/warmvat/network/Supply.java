package org.warmvat.network;

import org.warmvat.network.meter.Meter;

/** What a heater of the tank burns: bought energy, of which there is always enough, or gas of the tank's own holder. */
public interface Supply {

    /** Bought energy. */
    Supply BOUGHT = new Supply() {};

    /** Whether it may run out. */
    default boolean isLimited() {
        return false;
    }

    /** Open while there is any. */
    default Gate isThere() {
        return Gate.OPEN;
    }

    /**
     * The meter of what is burnt, which takes from a supply that may run out.
     *
     * @param assembly the network being gathered
     * @param meter the meter as its part declares it
     * @param energyJ energy burnt for each unit of the meter, J
     */
    default int meter(Network.Assembly assembly, Meter meter, double energyJ) {
        return assembly.meter(meter);
    }
}
