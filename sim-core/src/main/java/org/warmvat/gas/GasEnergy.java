package org.warmvat.gas;

/** Energy of methane (equation 7.4). */
public final class GasEnergy {

    /** Net heating value of methane at 0 °C and 101.325 kPa, J/Nm3 (ISO 6976, rounded). */
    public static final double METHANE_J_PER_NM3 = 35.8e6;

    private GasEnergy() {}
}
