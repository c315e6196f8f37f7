package org.warmvat.question.fit;

import java.util.Arrays;
import java.util.Optional;

/** A factor of the design's {@code adjust} that a log may find. */
public enum Factor {
    /** Conductances of walls, lid, base and edges. */
    ENVELOPE("envelope"),
    /** Conductance of fittings. */
    FITTINGS("fittings"),
    /** Heat capacity of the contents. */
    CAPACITY("capacity"),
    /** Conductance of the solar coil. */
    SOLAR_COIL("solar_coil"),
    /** Conductance of the backup coil. */
    BACKUP_COIL("backup_coil"),
    /** Optical efficiency of the collector. */
    COLLECTOR("collector");

    private final String key;

    Factor(String key) {
        this.key = key;
    }

    /** Its key under {@code adjust}. */
    public String key() {
        return key;
    }

    /** The factor of a key. */
    public static Optional<Factor> ofKey(String key) {
        return Arrays.stream(values()).filter(factor -> factor.key.equals(key)).findFirst();
    }
}
