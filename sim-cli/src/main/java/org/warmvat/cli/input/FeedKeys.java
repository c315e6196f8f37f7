package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.DailySchedule;
import org.warmvat.design.DailyWindow;
import org.warmvat.design.DilutionWater;
import org.warmvat.design.Feed;
import org.warmvat.design.FeedHandling;
import org.warmvat.design.Feedstock;

/** The block {@code feed}. */
record FeedKeys(
        @JsonProperty("feedstocks") @Key(says = "What is fed every day", entries = 1)
        List<StockKeys> feedstocks,

        @JsonProperty("temperature")
        @Key(
                says = "How warm the feedstocks are: as the air of the last 24 h, the ground, the room, or fixed",
                usual = "\"air\"")
        TemperatureChoice temperature,

        @JsonProperty("may_freeze")
        @Key(says = "Whether feed and water may stand below 0 C; false means kept from frost", usual = "true")
        boolean mayFreeze,

        @JsonProperty("freezing_range_k")
        @Key(
                says = "Kelvin below 0 C over which the feed's water turns to ice",
                unit = "K",
                above = 0,
                most = 20,
                usual = "2")
        double freezingRangeK,

        @JsonProperty("water") @Key(says = "Dilution water; leave the block out for none")
        Optional<WaterKeys> water,

        @JsonProperty("continuous")
        @Key(says = "Whether feed enters all day long instead of in windows", usual = "false")
        boolean continuous,

        @JsonProperty("windows")
        @Key(
                says = "When feed enters each day; windows may cross midnight, overlaps count once",
                entries = 1,
                usual = "[{\"start\": \"08:00\", \"hours\": 3}]",
                when = "continuous is not true")
        Optional<List<WindowKeys>> windows,

        @JsonProperty("auger_wh_per_kg")
        @Key(
                says = "Electricity of the auger per kg of feedstock, water left out",
                unit = "Wh/kg",
                least = 0,
                most = 1000,
                usual = "4")
        double augerWhPerKg,

        @JsonProperty("shredder_wh_per_kg")
        @Key(
                says = "Electricity of the shredder per kg of feedstock, water left out",
                unit = "Wh/kg",
                least = 0,
                most = 1000,
                usual = "10")
        double shredderWhPerKg,

        @JsonProperty("effluent_exchanger_effectiveness")
        @Key(
                says = "Effectiveness of an exchanger that warms the feed with the effluent; 0 for none",
                least = 0,
                most = 1,
                usual = "0.0")
        double effluentExchangerEffectiveness) {

    /** One feedstock. */
    record StockKeys(
            @JsonProperty("name")
            @Key(
                    says = "Name of the feedstock",
                    usual = "\"kitchen scraps\"",
                    pattern = "\\S",
                    form = "text that is not blank")
            String name,

            @JsonProperty("kg_per_day")
            @Key(says = "Fresh mass fed each day", unit = "kg/day", least = 0, most = 100000)
            double kgPerDay,

            @JsonProperty("total_solids")
            @Key(says = "Total solids over fresh mass", unit = "kg/kg", least = 0, most = 1, usual = "0.22")
            double totalSolids,

            @JsonProperty("vs_of_ts")
            @Key(says = "Volatile solids over total solids", unit = "kg/kg", least = 0, most = 1, usual = "0.88")
            double vsOfTs,

            @JsonProperty("methane_nm3_per_kg_vs")
            @Key(
                    says = "Methane potential per kg of volatile solids, at 0 C and 101.325 kPa",
                    unit = "Nm3/kg",
                    least = 0,
                    most = 1.5,
                    usual = "0.42")
            double methaneNm3PerKgVs,

            @JsonProperty("rate_per_day")
            @Key(
                    says = "First-order rate of digestion at gas.reference_c",
                    unit = "1/day",
                    least = 0,
                    most = 5,
                    usual = "0.20")
            double ratePerDay) {

        Feedstock feedstock() {
            return new Feedstock(name, kgPerDay, totalSolids, vsOfTs, methaneNm3PerKgVs, ratePerDay);
        }
    }

    /** Dilution water. */
    record WaterKeys(
            @JsonProperty("kg_per_day")
            @Key(says = "Water fed each day", unit = "kg/day", least = 0, most = 100000, usual = "10")
            double kgPerDay,

            @JsonProperty("temperature")
            @Key(says = "How warm it is: air, ground, room or fixed", usual = "{\"fixed_c\": 10}")
            TemperatureChoice temperature) {}

    /** One daily window. */
    record WindowKeys(
            @JsonProperty("start")
            @Key(says = "Start, by the weather file's clock", pattern = Clock.TIME, form = "a time such as \"08:00\"")
            String start,

            @JsonProperty("hours") @Key(says = "Length", unit = "h", above = 0, most = 24)
            double hours) {

        DailyWindow window() {
            return new DailyWindow(Clock.secondOfDay(start), hours * 3600);
        }
    }

    void check(Faults faults, boolean indoors) {
        String fact =
                "room, but the tank is not in a room, expected place: indoors with room_c, or air, ground or {fixed_c: number}";
        if (temperature.isRoom() && !indoors) {
            faults.add("feed.temperature", fact, "tank");
        }
        if (water.filter(w -> w.temperature().isRoom()).isPresent() && !indoors) {
            faults.add("feed.water.temperature", fact, "tank");
        }
        faults.unwanted("feed.windows", windows, continuous, "continuous: true is given: give the one or the other");
    }

    Feed feed() {
        return new Feed(
                feedstocks.stream().map(StockKeys::feedstock).toList(),
                temperature.temperature(),
                water.map(w -> new DilutionWater(w.kgPerDay(), w.temperature().temperature())),
                schedule(),
                new FeedHandling(
                        augerWhPerKg, shredderWhPerKg, effluentExchangerEffectiveness, mayFreeze, freezingRangeK));
    }

    private DailySchedule schedule() {
        return continuous
                ? DailySchedule.continuous()
                : DailySchedule.of(
                        windows.orElseThrow().stream().map(WindowKeys::window).toList());
    }
}
