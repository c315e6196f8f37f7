package org.warmvat.design;

import java.util.List;
import java.util.Optional;

/**
 * What is fed, when and how.
 *
 * @param feedstocks at least one
 * @param temperature how warm the feedstocks are
 * @param water dilution water, if any
 * @param schedule when feed and water enter; the daily mass is spread evenly over its open time
 * @param handling auger, shredder, exchanger, frost
 * @param hygienisation heating of the batch before it is fed, if any
 */
public record Feed(
        List<Feedstock> feedstocks,
        FeedTemperature temperature,
        Optional<DilutionWater> water,
        DailySchedule schedule,
        FeedHandling handling,
        Optional<Hygienisation> hygienisation) {

    /** Refuses a feed without feedstocks, and a feedstock to be heated that is not among them. */
    public Feed {
        feedstocks = Ranges.someOf("feedstocks", feedstocks);
        List<String> names = names(feedstocks);
        hygienisation
                .flatMap(Hygienisation::appliesTo)
                .ifPresent(heated -> heated.forEach(
                        name -> Ranges.stated("hygienisation of " + name, names.contains(name), "a feedstock's name")));
    }

    /** A feed that is not heated before. */
    public Feed(
            List<Feedstock> feedstocks,
            FeedTemperature temperature,
            Optional<DilutionWater> water,
            DailySchedule schedule,
            FeedHandling handling) {
        this(feedstocks, temperature, water, schedule, handling, Optional.empty());
    }

    private static List<String> names(List<Feedstock> feedstocks) {
        return feedstocks.stream().map(Feedstock::name).toList();
    }

    /** Names of the feedstocks, in their order. */
    public List<String> names() {
        return names(feedstocks);
    }

    /** Fresh mass of the feedstocks together, kg/day, water left out. */
    public double feedstockKgPerDay() {
        return feedstocks.stream().mapToDouble(Feedstock::kgPerDay).sum();
    }

    /** Dilution water, kg/day; 0 without. */
    public double waterKgPerDay() {
        return water.map(DilutionWater::kgPerDay).orElse(0.0);
    }

    /** Whole feed with its water, kg/day. */
    public double totalKgPerDay() {
        return feedstockKgPerDay() + waterKgPerDay();
    }

    /** Total solids of the feedstocks together as one stream, mass fraction, water left out; 0 without feed. */
    public double feedstockTotalSolidsFraction() {
        double kg = feedstockKgPerDay();
        return kg == 0
                ? 0
                : feedstocks.stream()
                                .mapToDouble(Feedstock::totalSolidsKgPerDay)
                                .sum()
                        / kg;
    }

    /** Whether feed or water is as warm as the ground. */
    public boolean usesGround() {
        return temperature instanceof FeedTemperature.Ground
                || water.filter(w -> w.temperature() instanceof FeedTemperature.Ground)
                        .isPresent();
    }

    /** Whether feed or water is as warm as the room. */
    public boolean needsRoom() {
        return temperature instanceof FeedTemperature.Room
                || water.filter(w -> w.temperature() instanceof FeedTemperature.Room)
                        .isPresent();
    }
}
