package org.warmvat.network.meter;

/** Units in which results are told, and how they follow from what a run counts (J, s, Nm3). */
public enum Unit {
    /** Energy, from J. */
    KWH("kWh", 3.6e6),
    /** Gas at 0 °C and 101.325 kPa. */
    NM3("Nm³", 1),
    /** Water, from kg. */
    LITRES("l", 1),
    /** Duration, from s. */
    HOURS("h", 3600),
    /** Number of times. */
    TIMES("", 1),
    /** Temperature. */
    CELSIUS("°C", 1),
    /** Share of a whole, 0 to 1; a share of nothing is not a number. */
    SHARE("", 1);

    private final String text;
    private final double counted;

    Unit(String text, double counted) {
        this.text = text;
        this.counted = counted;
    }

    /** As it is printed; empty where there is none. */
    public String text() {
        return text;
    }

    /** A counted quantity in this unit. */
    public double of(double counted) {
        return counted / this.counted;
    }
}
