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
 */
public record Feed(
        List<Feedstock> feedstocks,
        FeedTemperature temperature,
        Optional<DilutionWater> water,
        DailySchedule schedule,
        FeedHandling handling) {

    /** Refuses a feed without feedstocks. */
    public Feed {
        feedstocks = Ranges.someOf("feedstocks", feedstocks);
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
