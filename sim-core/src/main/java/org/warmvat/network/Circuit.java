package org.warmvat.network;

/**
 * A body with one capacity, joined to the slurry by a conductance while a pump runs, that may lose heat by the square of its
 * difference to a known temperature besides what exchanges, sources and a heater give it.
 */
public final class Circuit {

    private final int node;
    private final Coil coil;
    private final Quadratic quadratic;
    private final Heater heater;
    private double coilWPerK;

    /**
     * The way to the slurry.
     *
     * @param pump switch of the pump
     * @param meter meter of the heat that the slurry receives, J
     */
    public record Coil(int pump, int meter) {}

    /**
     * Heat {@code -q d |d|} received from a known temperature, d being the difference to it.
     *
     * @param wPerK2 q, W/K2, 0 or more
     * @param around node of the known temperature
     * @param meter meter of the heat received, J
     */
    public record Quadratic(double wPerK2, int around, int meter) {

        /** None. */
        public static final Quadratic NONE = new Quadratic(0, Network.NOWHERE, Network.UNMETERED);
    }

    /**
     * Power that falls in a straight line as the body nears a limit: {@code rated clamp((limit - T)/band, 0, 1)}.
     *
     * @param ratedW power below the band, W
     * @param limitC temperature at which nothing is left, °C
     * @param bandK kelvin below the limit over which it falls
     * @param gate when it may heat
     * @param meter meter of the power, J
     */
    public record Heater(double ratedW, double limitC, double bandK, Gate gate, int meter) {

        /** None. */
        public static final Heater NONE = new Heater(0, 0, 1, Gate.SHUT, Network.UNMETERED);

        /** Power at a temperature, W. */
        public double powerW(double celsius) {
            return ratedW * Math.max(0, Math.min(1, (limitC - celsius) / bandK));
        }
    }

    Circuit(int node, Coil coil, Quadratic quadratic, Heater heater) {
        this.node = node;
        this.coil = coil;
        this.quadratic = quadratic;
        this.heater = heater;
    }

    /** Its node. */
    public int node() {
        return node;
    }

    /** The way to the slurry. */
    public Coil coil() {
        return coil;
    }

    /** What it loses by the square of a difference. */
    public Quadratic quadratic() {
        return quadratic;
    }

    /** What heats it. */
    public Heater heater() {
        return heater;
    }

    /** Conductance to the slurry while the pump runs, W/K. */
    public double coilWPerK() {
        return coilWPerK;
    }

    /** Changes that conductance, W/K. */
    public void setCoil(double wPerK) {
        coilWPerK = wPerK;
    }
}
