package org.warmvat.question.fit;

import java.util.Arrays;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;

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

    /** Why there is nothing for it to multiply, where there is not. */
    Optional<String> lackedBy(Design design, Log log) {
        return switch (this) {
            case ENVELOPE, CAPACITY -> Optional.empty();
            case FITTINGS -> design.fittings().isEmpty() ? Optional.of("the design has no fittings") : Optional.empty();
            case SOLAR_COIL, COLLECTOR ->
                design.solar().isEmpty()
                        ? Optional.of("the design has no solar circuit")
                        : measured(log, LogColumn.SOLAR_HEAT);
            case BACKUP_COIL ->
                design.backup()
                                .filter(backup -> backup.through() instanceof BackupCircuit.Circuit)
                                .isEmpty()
                        ? Optional.of("the design has no backup circuit")
                        : measured(log, LogColumn.BACKUP_HEAT);
        };
    }

    private static Optional<String> measured(Log log, LogColumn heat) {
        return log.steps(heat)
                .map(steps -> "the heat of " + heat.key() + " goes into the slurry as logged, whatever the circuit is");
    }
}
