package org.warmvat.network;

import org.warmvat.network.meter.Meter;

/** What a heater of the tank burns: bought energy, of which there is always enough, or gas of the tank's own holder. */
public interface Supply {

    /** Always enough. */
    Supply BOUGHT = new Supply() {
        @Override
        public boolean isLimited() {
            return false;
        }

        @Override
        public Gate isThere() {
            return Gate.OPEN;
        }

        @Override
        public int meter(Network.Assembly assembly, Meter meter, double energyJ) {
            return assembly.meter(meter);
        }
    };

    /** Whether it may run out. */
    boolean isLimited();

    /** Open while there is any. */
    Gate isThere();

    /**
     * The meter of what is burnt, which takes from the supply.
     *
     * @param assembly the network being gathered
     * @param meter the meter as its part declares it
     * @param energyJ energy burnt for each unit of the meter, J
     */
    int meter(Network.Assembly assembly, Meter meter, double energyJ);
}
