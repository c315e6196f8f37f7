package org.warmvat.design.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.design.season.SeasonTable;

/**
 * What is fed, when and how.
 *
 * @param feedstocks at least one
 * @param temperature how warm the feedstocks are
 * @param water dilution water, if any
 * @param entry when feed and water enter; the daily mass is spread evenly over its open time
 * @param handling auger, shredder, exchanger, frost
 * @param hygienisation heating of the batch before it is fed, if any
 */
public record Feed(
        @Key(name = "feedstocks", says = "What is fed every day", entries = 1)
        List<Feedstock> feedstocks,

        @Key(
                name = "temperature",
                says = "How warm the feedstocks are: as the air of the last 24 h, the ground, the room, or fixed",
                usual = "air")
        FeedTemperature temperature,

        @Key(name = "water", says = "Dilution water; leave the block out for none")
        Optional<DilutionWater> water,

        @Key(name = "continuous", says = "Whether feed enters all day long instead of in windows", usual = "false")
        Entry entry,

        @Key FeedHandling handling,

        @Key(
                name = "hygienisation",
                says = "Heating of each day's batch before it is fed; leave the block out for none")
        Optional<Hygienisation> hygienisation) {

    /** Refuses a feed without feedstocks. */
    public Feed {
        feedstocks = List.copyOf(feedstocks);
        Ranges.check(Feed.class, feedstocks, temperature, water, entry, handling, hygienisation);
        List<String> names = feedstocks.stream().map(Feedstock::name).toList();
        Ranges.stated(
                names.stream().distinct().count() == names.size(),
                "feedstocks",
                "have a name twice, expected each once");
        hygienisation
                .flatMap(Hygienisation::appliesTo)
                .ifPresent(heated -> heated.forEach(name -> Ranges.stated(
                        names.contains(name),
                        "hygienisation.applies_to",
                        "\"" + name + "\" is none of the feedstocks, expected " + String.join(", ", names))));
    }

    /** Names of the feedstocks, in their order. */
    public List<String> names() {
        return feedstocks.stream().map(Feedstock::name).toList();
    }

    /** When feed and water enter. */
    public sealed interface Entry {

        /** The open time of a day. */
        DailySchedule schedule();
    }

    /**
     * In windows.
     *
     * @param windows they may cross midnight; at least one
     */
    @Word("false")
    public record InWindows(
            @Key(
                    name = "windows",
                    says = "When feed enters each day; windows may cross midnight, overlaps count once",
                    entries = 1,
                    usual = "[{start: 08:00, hours: 3}]")
            List<DailyWindow> windows)
            implements Entry {

        /** Refuses an empty list. */
        public InWindows {
            windows = List.copyOf(windows);
            Ranges.check(InWindows.class, windows);
        }

        @Override
        public DailySchedule schedule() {
            return DailySchedule.of(windows);
        }
    }

    /** All day long. */
    @Word("true")
    public record AllDay() implements Entry {

        @Override
        public DailySchedule schedule() {
            return DailySchedule.continuous();
        }
    }

    /** The open time of a day. */
    public DailySchedule schedule() {
        return entry.schedule();
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

    /** Whole feed with its water on a day of the calendar, kg/day. */
    public double totalKgOn(SeasonTable.Day day) {
        double kg = waterKgPerDay() * day.waterFactor();
        for (int i = 0; i < feedstocks.size(); i++) {
            kg += feedstocks.get(i).kgPerDay() * day.feedstockFactor(i);
        }
        return kg;
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

    /**
     * Keys of the streams that are as warm as the room.
     *
     * @return their paths
     */
    public List<String> roomKeys() {
        List<String> keys = new ArrayList<>();
        if (temperature instanceof FeedTemperature.Room) {
            keys.add("temperature");
        }
        if (water.filter(w -> w.temperature() instanceof FeedTemperature.Room).isPresent()) {
            keys.add("water.temperature");
        }
        return keys;
    }
}
