package org.warmvat.physics;

/** Constants of nature and agreed reference points. */
public final class PhysicalConstants {

    /** Stefan-Boltzmann constant, W/(m2 K4) (CODATA 2018, exact since the 2019 SI). */
    public static final double STEFAN_BOLTZMANN_W_PER_M2_K4 = 5.670374419e-8;

    /** 0 °C in kelvin (by definition of the Celsius scale). */
    public static final double ZERO_CELSIUS_K = 273.15;

    /** Standard atmosphere, Pa (by definition). */
    public static final double STANDARD_PRESSURE_PA = 101_325;

    private PhysicalConstants() {}

    /** Absolute temperature, K, of a temperature in °C. */
    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }
}
