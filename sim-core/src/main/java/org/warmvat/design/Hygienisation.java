package org.warmvat.design;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Heating of each day's batch before it is fed (equation 15.1).
 *
 * @param heat temperatures and times
 * @param recovery share of the batch's heat passed to the next, 0..0.9
 * @param source what heats it
 * @param efficiency heat over what is bought, above 0 and up to 6
 * @param lossUaWPerK loss of the vessel while it heats and holds, W/K, 0..1000
 * @param appliesTo names of the feedstocks heated; empty for all of them
 */
public record Hygienisation(
        Heat heat,
        double recovery,
        BackupSource source,
        double efficiency,
        double lossUaWPerK,
        Optional<Set<String>> appliesTo) {

    /** Refuses numbers out of range. */
    public Hygienisation {
        Ranges.within("heat recovery of hygienisation", recovery, 0, 0.9);
        Ranges.above("efficiency of hygienisation", efficiency, 0, 6);
        Ranges.within("loss of hygienisation in W/K", lossUaWPerK, 0, 1000);
        appliesTo = appliesTo.map(Set::copyOf);
    }

    /**
     * Temperatures and times of a batch.
     *
     * @param temperatureC what it is held at, C, 40..100
     * @param holdH how long, h, 0..240
     * @param heatUpH how long it takes to get there, h, 0..240
     * @param coolToC what it is cooled to before it is fed, C, 0..100; empty: as recovery leaves it
     */
    public record Heat(double temperatureC, double holdH, double heatUpH, OptionalDouble coolToC) {

        /** Refuses numbers out of range. */
        public Heat {
            Ranges.within("temperature of hygienisation in C", temperatureC, 40, 100);
            Ranges.within("holding time of hygienisation in h", holdH, 0, 240);
            Ranges.within("heat-up time of hygienisation in h", heatUpH, 0, 240);
            coolToC.ifPresent(c -> Ranges.within("temperature fed after hygienisation in C", c, 0, 100));
        }
    }

    /** Whether a feedstock is heated. */
    public boolean heats(String feedstock) {
        return appliesTo.map(names -> names.contains(feedstock)).orElse(true);
    }

    /** Temperature at which a batch that came at some temperature enters the tank, °C. */
    public double entersC(double feedC) {
        double afterRecovery = heat.temperatureC() - recovery * (heat.temperatureC() - Math.max(feedC, 0));
        return heat.coolToC().isPresent()
                ? Math.min(afterRecovery, Math.max(heat.coolToC().getAsDouble(), feedC))
                : afterRecovery;
    }

    /** Loss of a day's batch, J, with the vessel's surroundings at some temperature. */
    public double lossJPerDay(double aroundC) {
        return lossUaWPerK * (heat.temperatureC() - aroundC) * 3600 * (heat.holdH() + heat.heatUpH());
    }
}
