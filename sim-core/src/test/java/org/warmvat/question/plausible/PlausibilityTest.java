package org.warmvat.question.plausible;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.season.SeasonCalendar;
import org.warmvat.design.season.Spell;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.Weather;

/** Slips of ten, of units and of missing parts are named; a sensible tank is left in peace. */
class PlausibilityTest {

    private static final Weather WINTER = InventedWeather.days(1, 10);

    private static List<String> keys(Design design, Optional<Weather> weather) {
        return Plausibility.of(design, weather).stream().map(Remark::key).toList();
    }

    @Test
    void aSensibleTankLacksOnlyWhatItLacks() {
        assertEquals(List.of("no_legs", "no_pipes"), keys(Design.usual(), Optional.of(WINTER)));
    }

    @ParameterizedTest
    @CsvSource({
        "feed.feedstocks[0].kg_per_day, 100, loading",
        "feed.feedstocks[0].kg_per_day, 10000, loading",
        "feed.feedstocks[0].kg_per_day, 10000, retention",
        "feed.water.kg_per_day, 300, retention",
        "envelope.insulation_mm, 0.15, insulation",
        "envelope.insulation_mm, 0, insulation",
        "envelope.lid_insulation_mm, 10, insulation",
        "tank.inner_diameter_m, 9, litres",
        "tank.inner_diameter_m, 0.2, litres",
        "control.setpoint_c, 60, setpoint_window",
        "control.setpoint_c, 45, setpoint_window",
        "control.setpoint_c, 9, setpoint_window",
        "solar.area_m2, 24, collector",
        "backup.rated_w, 20, heater",
        "backup.rated_w, 90000, heater",
        "backup.coil.area_m2, 0.01, backup_coil",
        "backup.flow_limit_c, 37, backup_coil",
        "envelope.insulation_mm, 1, heater"
    })
    void aSlipIsNamed(String path, double value, String key) {
        List<String> found = keys(Design.usual().with(path, value), Optional.of(WINTER));
        assertTrue(found.contains(key), found.toString());
    }

    /** A ramp from rest passes through 9 °C on its first day: that is no set-point of the design's; a fed spell held there is one. */
    @Test
    void aRampIsNoSetpointAtTheEndOfDigestion() {
        TankPlan plan = new TankPlan();
        plan.calendar = rest(0, 8);
        assertFalse(keys(plan.build(), Optional.of(WINTER)).contains("setpoint_window"));
        plan.calendar = rest(0.2, 9);
        assertTrue(keys(plan.build(), Optional.of(WINTER)).contains("setpoint_window"));
    }

    /** Two spells share the last days of the one and the first of the other, across the year's end too; neighbours share none. */
    @Test
    void spellsThatShareDaysAreNamedWithTheirDays() {
        String usual = "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}, envelope: {insulation_mm: 100}, "
                + "control: {setpoint_c: 36}, feed: {feedstocks: [{kg_per_day: 10}]}, calendar: [%s]}";
        String rest = "{name: rest, from: 11-16, to: 03-10, feed_factor: 0}";
        String apart = usual.formatted(rest + ", {name: waking, from: 03-11, to: 04-01}");
        assertFalse(keys(design(apart), Optional.of(WINTER)).contains("calendar_overlap"));
        String shared = usual.formatted(rest + ", {name: visit, from: 12-30, to: 01-02, feed_factor: 1}");
        assertEquals(
                List.of("The spells rest and visit share 4 days of the year: what visit states wins on them."),
                Plausibility.of(design(shared), Optional.of(WINTER)).stream()
                        .filter(remark -> remark.key().equals("calendar_overlap"))
                        .map(Remark::sentence)
                        .toList());
    }

    private static Design design(String keys) {
        return Design.of(Reader.tree(keys), Findings.strict());
    }

    /** 0.4 m3 hold 2.2 kWh, and a day's feed gives 6.7 kWh at most: a cooker of 0.5 kW day and night wants 12, a lamp for six hours 0.3. */
    @Test
    void aUseThatNoHolderCanServeIsNamed() {
        TankPlan plan = LifeDesigns.all().get("small holder, a use day and night");
        assertTrue(keys(plan.build(), Optional.of(WINTER)).contains("use_power"));
        plan.gas = LifeDesigns.all().get("large holder that overflows").gas;
        assertFalse(keys(plan.build(), Optional.of(WINTER)).contains("use_power"));
    }

    private static SeasonCalendar rest(double feedFactor, double setpointC) {
        return new SeasonCalendar(
                List.of(spell("--11-16", "--03-10", 0, setpointC, feedFactor), spell("--03-11", "--04-14", 28, 36, 1)),
                10);
    }

    private static Spell spell(String from, String to, int rampDays, double setpointC, double feedFactor) {
        return new Spell(
                Optional.of(from),
                MonthDay.parse(from),
                MonthDay.parse(to),
                rampDays,
                new Spell.HeldAt(OptionalDouble.of(setpointC), OptionalDouble.empty(), Optional.empty()),
                new Spell.Fed(OptionalDouble.of(feedFactor), Map.of()),
                OptionalDouble.empty(),
                new Spell.Runs(Optional.empty(), Optional.empty(), Optional.empty()));
    }

    @Test
    void theGravestComeFirstAndSayWhatIsUsual() {
        Design slips =
                Design.usual().with(Map.of("feed.feedstocks[0].kg_per_day", 100.0, "tank.inner_diameter_m", 1.0));
        Remark first = Plausibility.of(slips, Optional.empty()).get(0);
        assertEquals(Remark.Gravity.NOT_CREDIBLE, first.gravity());
        assertEquals(
                "The organic loading rate of 21.4 kg of volatile solids per m3 and day is not credible for such a tank (above 6): is the daily feed in kg?",
                first.sentence());
    }

    @Test
    void missingPartsAreNamed() {
        Design bare = Design.usual().without(BackupCircuit.class).without(Gas.class);
        assertEquals(List.of("no_heater", "no_gas", "no_legs", "no_pipes"), keys(bare, Optional.empty()));
    }

    @Test
    void whoKnowsBetterMovesTheBounds() {
        Design thin = Design.usual().with("envelope.insulation_mm", 15);
        assertTrue(keys(thin, Optional.empty()).contains("insulation"));
        assertTrue(!keys(thin.with("plausible.insulation_mm", 10), Optional.empty())
                .contains("insulation"));
    }

    @Test
    void nitrogenAndFatBringTheirWord() {
        Design hens = Design.of(
                Map.of(
                        "tank", Map.of("inner_diameter_m", 1, "liquid_depth_m", 1),
                        "envelope", Map.of("insulation_mm", 100),
                        "control", Map.of("setpoint_c", 36),
                        "feed",
                                Map.of(
                                        "feedstocks",
                                        List.of(Map.of("material", "poultry_droppings", "kg_per_day", 3)))),
                Findings.strict());
        assertTrue(
                Plausibility.of(hens, Optional.empty()).stream()
                        .anyMatch(remark -> remark.sentence().startsWith("Poultry droppings is rich in nitrogen")),
                Plausibility.of(hens, Optional.empty()).toString());
    }
}
