package org.warmvat.design.feeding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Heating of each day's batch before it is fed (equation 15.1).
 *
 * @param heat temperatures and times
 * @param recovery share of the batch's heat passed to the next
 * @param source what heats it
 * @param efficiency heat over what is bought
 * @param lossUaWPerK loss of the vessel while it heats and holds, W/K
 * @param appliesTo names of the feedstocks heated; empty for all of them
 */
public record Hygienisation(
        @Key Heat heat,

        @Key(name = "recovery", says = "Share of the batch's heat passed to the next", range = "0 to 0.9", usual = "0")
        double recovery,

        @Key(
                name = "source",
                says = "What heats it: electricity, the digester's own gas, or bought fuel",
                usual = "electric")
        BackupSource source,

        @Key(name = "efficiency", says = "Heat over what is bought", range = "0.01 to 6", usual = "1.0")
        double efficiency,

        @Key(
                name = "loss_ua_w_k",
                says = "Loss of the vessel while it heats and holds",
                range = "0 to 1000 W/K",
                usual = "0")
        double lossUaWPerK,

        @Key(
                name = "applies_to",
                says = "Names of the feedstocks heated, or all; water never is",
                entries = 1,
                word = "all",
                otherwise = "all",
                pattern = "\\S",
                form = "the name of a feedstock")
        Optional<List<String>> appliesTo) {

    /** Refuses numbers out of range. */
    public Hygienisation {
        appliesTo = appliesTo.map(List::copyOf);
        Ranges.check(Hygienisation.class, heat, recovery, source, efficiency, lossUaWPerK, appliesTo);
    }

    /**
     * Temperatures and times of a batch.
     *
     * @param temperatureC what it is held at, C
     * @param holdH how long, h
     * @param heatUpH how long it takes to get there, h
     * @param coolToC what it is cooled to before it is fed, C; empty: as recovery leaves it
     */
    public record Heat(
            @Key(name = "temperature_c", says = "What the batch is held at", range = "40 to 100 C", usual = "70")
            double temperatureC,

            @Key(name = "hold_h", says = "How long it is held", range = "0 to 240 h", usual = "1")
            double holdH,

            @Key(name = "heat_up_h", says = "How long it takes to get there", range = "0 to 240 h", usual = "1")
            double heatUpH,

            @Key(
                    name = "cool_to_c",
                    says = "What it is cooled to before it is fed",
                    range = "0 to 100 C",
                    otherwise = "as recovery leaves it")
            OptionalDouble coolToC) {

        /** Refuses numbers out of range. */
        public Heat {
            Ranges.check(Heat.class, temperatureC, holdH, heatUpH, coolToC);
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
