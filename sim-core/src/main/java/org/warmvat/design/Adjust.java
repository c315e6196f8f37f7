package org.warmvat.design;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Factors on what the drawing says, as a log or a measurement has shown (equation 16.1).
 *
 * @param envelope on every conductance between slurry and surroundings through wall, lid, base and edges
 * @param fittings on the conductance of fittings
 * @param capacity on the heat capacity of the contents
 * @param solarCoil on the conductance of the solar coil
 * @param backupCoil on the conductance of the backup coil
 * @param collector on the collector's peak efficiency
 */
public record Adjust(
        @Key(
                name = "envelope",
                says = "Factor on every conductance through wall, lid, base and edges, films included",
                range = "0.1 to 10",
                usual = "1")
        double envelope,

        @Key(name = "fittings", says = "Factor on the loss of fittings", range = "0.1 to 10", usual = "1")
        double fittings,

        @Key(name = "capacity", says = "Factor on the heat capacity of the contents", range = "0.1 to 10", usual = "1")
        double capacity,

        @Key(
                name = "solar_coil",
                says = "Factor on the conductance of the solar coil",
                range = "0.1 to 10",
                usual = "1")
        double solarCoil,

        @Key(
                name = "backup_coil",
                says = "Factor on the conductance of the backup coil",
                range = "0.1 to 10",
                usual = "1")
        double backupCoil,

        @Key(name = "collector", says = "Factor on eta0", range = "0.1 to 10", usual = "1")
        double collector) {

    /** Refuses factors out of range. */
    public Adjust {
        Ranges.check(Adjust.class, envelope, fittings, capacity, solarCoil, backupCoil, collector);
    }
}
