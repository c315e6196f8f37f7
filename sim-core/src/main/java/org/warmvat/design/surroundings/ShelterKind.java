package org.warmvat.design.surroundings;

import java.util.OptionalDouble;

/** Kinds of unheated shelters with what is taken of them unless the design says otherwise (equation 13.5; common practice, no source). */
public enum ShelterKind {
    /** A tunnel under one film. */
    POLYTUNNEL_SINGLE(6.5, 0.75, 0, OptionalDouble.of(30)),
    /** A tunnel under two films with air between. */
    POLYTUNNEL_DOUBLE(4.0, 0.75, 0, OptionalDouble.of(30)),
    /** A shed or lean-to of boards. */
    TIMBER(2.5, 0, 0.6, OptionalDouble.empty()),
    /** An insulated hut. */
    INSULATED(0.5, 0, 0.6, OptionalDouble.empty());

    private final double coverUWPerM2K;
    private final double sunTransmittance;
    private final double coverAbsorptance;
    private final OptionalDouble openedAboveC;

    ShelterKind(double coverUWPerM2K, double sunTransmittance, double coverAbsorptance, OptionalDouble openedAboveC) {
        this.coverUWPerM2K = coverUWPerM2K;
        this.sunTransmittance = sunTransmittance;
        this.coverAbsorptance = coverAbsorptance;
        this.openedAboveC = openedAboveC;
    }

    /** Usual conductance of the cover, W/(m2 K). */
    public double coverUWPerM2K() {
        return coverUWPerM2K;
    }

    /** Usual share of the sun let in. */
    public double sunTransmittance() {
        return sunTransmittance;
    }

    /** Usual absorptance of the cover. */
    public double coverAbsorptance() {
        return coverAbsorptance;
    }

    /** Temperature inside above which it is usually opened, °C; empty for what is not opened. */
    public OptionalDouble openedAboveC() {
        return openedAboveC;
    }
}
