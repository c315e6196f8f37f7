package org.warmvat.result;

/** What a backup heater is fed with. */
public enum BoughtEnergy {
    /** Mains electricity. */
    ELECTRICITY,
    /** The digester's own gas. */
    OWN_GAS,
    /** A bought fuel. */
    FUEL
}
