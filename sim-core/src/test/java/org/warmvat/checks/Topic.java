package org.warmvat.checks;

/** The headings of the page of checks, in its order. */
public enum Topic {
    /** Surface coefficients and plane walls. */
    WALLS("Films and walls", false),
    /** Pipes, cylinders, fins, edges, whole tanks. */
    TANKS("Pipes, tanks, fins and edges", false),
    /** Bodies of one temperature. */
    LUMPED("Warming and cooling bodies", false),
    /** Conduction that takes its time. */
    CONDUCTION("Conduction in walls and soil", false),
    /** Stirred vessels and their coils. */
    COILS("Heated vessels and coils", true),
    /** Heat that a digester takes. */
    DIGESTERS("Digesters", true),
    /** Methane and what its gas carries off. */
    GAS("Gas and vapour", true),
    /** Position of the sun and light on planes. */
    SUN("Sun", false),
    /** Sky, air and ground. */
    SKY("Sky, humidity and made weather", false),
    /** Solar collectors. */
    COLLECTORS("Collectors", false),
    /** What the trade goes by. */
    TRADE("Facts of the trade", true);

    private final String heading;
    private final boolean digesterOrCoil;

    Topic(String heading, boolean digesterOrCoil) {
        this.heading = heading;
        this.digesterOrCoil = digesterOrCoil;
    }

    /** As the page says it. */
    public String heading() {
        return heading;
    }

    /** Whether it is a matter of digesters or coils. */
    public boolean isDigesterOrCoil() {
        return digesterOrCoil;
    }
}
