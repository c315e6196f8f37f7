package org.warmvat.network.meter;

/** The sides of the account of net energy (equation 7.5), which are also what is paid for or worth something. */
public enum Energy {
    /** Gas made, by its net heating value. */
    GAS_MADE,
    /** Own gas burnt for heat. */
    OWN_GAS,
    /** Fuel bought for heat. */
    FUEL,
    /** Electricity bought for heat. */
    HEATING_ELECTRICITY,
    /** Electricity of the machinery. */
    MACHINERY
}
