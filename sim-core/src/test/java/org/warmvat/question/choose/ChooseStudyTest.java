package org.warmvat.question.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Figures;
import org.warmvat.question.Kept;
import org.warmvat.question.Parallel;
import org.warmvat.question.choose.ChooseStudy.Way;
import org.warmvat.sample.InventedWeather;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Real tanks of some hundred combinations in two pieces of winter and spring, in full. */
class ChooseStudyTest {

    private static final Design DRAWN = Design.usual();
    private static final List<Weather> WEATHER = List.of(InventedWeather.days(5, 8), InventedWeather.days(80, 8));
    private static final Limits NO_LIMITS = new Limits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    private static final Way EVERY = new Way(1_000_000, false);
    private static final Way QUICK = new Way(0, true);

    private static Choice choice(String key, Price price, boolean easing, double... values) {
        List<Choice.Option> options = new ArrayList<>();
        for (double value : values) {
            options.add(new Choice.Option(value, Map.of(key, value), price, true));
        }
        return new Choice(key, options, easing);
    }

    private static Design built(Map<String, Object> set) {
        Map<String, Double> numbers = new HashMap<>();
        set.forEach((key, value) -> numbers.put(key, (Double) value));
        return DRAWN.with(numbers);
    }

    /** Insulation, collector, heater and coil; prices by a number. */
    private static Catalogue catalogue(int prices, Limits limits) {
        return new Catalogue(
                DRAWN,
                List.of(
                        choice("envelope.insulation_mm", new Price(0, 0, 0.2 + 0.4 * prices), true, 40, 80, 140, 220),
                        choice("solar.area_m2", new Price(0, 500.0 / (1 + prices), 0), false, 0, 1, 2, 3.5),
                        choice("backup.rated_w", new Price(20 * prices, 0, 0), true, 0, 60, 150, 250, 500),
                        choice("solar.coil.area_m2", new Price(0, 40.0 * prices, 0), false, 0.3, 1, 2)),
                new Terms(15, 0.03, 100, 5),
                limits,
                ChooseStudyTest::built);
    }

    private static Limits warm(double hours) {
        return new Limits(
                OptionalDouble.of(hours),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static ChooseResult run(Catalogue catalogue, Aim by, Way way, int threads, Kept kept) throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT, kept)) {
            return ChooseStudy.run(catalogue, by, WEATHER, new ExponentialEngine(), way, parallel);
        }
    }

    private static ChooseResult run(Catalogue catalogue, Aim by, Way way) throws StudyRefused {
        return run(catalogue, by, way, 2, MEMORY);
    }

    /** The runs are the same whatever they cost: each is done once for the whole class. */
    private static final Kept MEMORY = new Memory();

    private static final class Memory implements Kept {
        private final Map<Long, Figures> all = new java.util.concurrent.ConcurrentHashMap<>();

        @Override
        public Optional<Figures> of(long run) {
            return Optional.ofNullable(all.get(run));
        }

        @Override
        public void keep(long run, Figures figures) {
            all.put(run, figures);
        }
    }

    @Test
    void theQuickSearchFindsTheBestOfAll() throws StudyRefused {
        for (int prices = 0; prices < 5; prices++) {
            for (Aim by : Aim.values()) {
                Catalogue catalogue = catalogue(prices, warm(2));
                ChooseResult all = run(catalogue, by, EVERY);
                ChooseResult quick = run(catalogue, by, QUICK);
                assertEquals(all.best().point(), quick.best().point(), by + " at prices " + prices);
                assertTrue(all.effort().exhaustive());
                assertFalse(quick.effort().exhaustive());
                assertEquals(0, all.effort().skipped());
                assertTrue(
                        quick.effort().designs() < all.effort().designs(),
                        quick.effort().toString());
            }
        }
    }

    @Test
    void skippingLosesNeitherTheBestNorTheNext() throws StudyRefused {
        for (int prices = 0; prices < 5; prices++) {
            Catalogue catalogue = catalogue(prices, warm(0));
            ChooseResult all = run(catalogue, Aim.COST, EVERY);
            ChooseResult skipping = run(catalogue, Aim.COST, new Way(1_000_000, true));
            assertEquals(all.named(), skipping.named());
            assertEquals(all.front(), skipping.front());
            assertTrue(skipping.effort().skipped() > 0, skipping.effort().toString());
        }
    }

    /** Whatever is named keeps to all limits; without them something would be named that does not. */
    @Test
    void limitsAreHonoured() throws StudyRefused {
        double[] net = run(catalogue(1, NO_LIMITS), Aim.COST, EVERY).front().all().stream()
                .mapToDouble(one -> one.yearly().net().worstKWh())
                .sorted()
                .toArray();
        double middle = net[net.length / 2];
        Limits all = new Limits(
                OptionalDouble.of(0),
                OptionalDouble.of(6),
                OptionalDouble.of(middle),
                OptionalDouble.of(middle),
                OptionalDouble.of(1500));
        ChooseResult bound = run(catalogue(1, all), Aim.COST, EVERY, 2, Kept.NOTHING);
        assertTrue(bound.best().allowed());
        for (Candidate one : bound.front().all()) {
            assertEquals(0, one.yearly().hoursBelowMinimum());
            assertTrue(one.yearly().warmUpDays().orElseThrow() <= 6);
            assertTrue(one.yearly().net().worstKWh() >= middle);
            assertTrue(one.yearly().net().worstMonthKWh() >= middle);
            assertTrue(one.cost().outlay() <= 1500);
        }
        Set<String> barredBy = bound.effort().barredBy().keySet();
        assertEquals(
                Set.of(
                        "hours_below_floor",
                        "warm_up_days",
                        "net_energy_kwh_least",
                        "net_energy_kwh_least_month",
                        "budget"),
                barredBy);
        assertTrue(run(catalogue(1, NO_LIMITS), Aim.COST, EVERY).best().yearly().hoursBelowMinimum() > 0);
    }

    @Test
    void whereNoneKeepsToTheLimitsTheNearestIsNamedWithWhatBarsIt() throws StudyRefused {
        Limits nothing = new Limits(
                OptionalDouble.of(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0));
        ChooseResult result = run(catalogue(1, nothing), Aim.COST, new Way(1_000_000, true));
        assertFalse(result.best().allowed());
        assertEquals(
                "budget",
                result.best().broken().get(result.best().broken().size() - 1).key());
        double least =
                run(catalogue(1, nothing), Aim.COST, EVERY).best().judgement().violation();
        assertEquals(least, result.best().judgement().violation(), 0, "skipping hides none that is nearer");
        assertTrue(result.front().designs().isEmpty());
        assertEquals(7, result.named().size());
    }

    /** A circuit that is left out makes its coil mean nothing: such combinations are one design, bought and run once. */
    @Test
    void nothingOfACircuitIsBoughtWhereItIsLeftOut() throws StudyRefused {
        Catalogue catalogue = catalogue(1, NO_LIMITS);
        ChooseResult all = run(catalogue, Aim.COST, EVERY);
        // 4 thicknesses and 5 heaters: 3 collectors with 3 coils, or none
        assertEquals(4 * 5 * (3 * 3 + 1), all.effort().designs());
        List<Integer> without = List.of(1, 0, 2, 2);
        assertEquals(List.of(1, 0, 2, 0), catalogue.plain(without));
        Design design = catalogue.design(without);
        assertTrue(design.solar().isEmpty());
        assertEquals(
                Set.of("envelope.insulation_mm", "solar.area_m2", "backup.rated_w"),
                catalogue.chosen(without).keySet());
        double areaM2 = Price.innerAreaM2(DRAWN.tank(), "");
        assertEquals(100 + 80 * 0.6 * areaM2 + 20, catalogue.outlay(without, design), 1e-9);
        assertTrue(catalogue.design(List.of(1, 1, 0, 0)).backup().isEmpty());
    }

    @Test
    void equalsAreTold() throws StudyRefused {
        Design small = DRAWN;
        Catalogue twice = new Catalogue(
                small,
                List.of(new Choice(
                        "make",
                        List.of(
                                new Choice.Option("red", Map.of("solar.area_m2", 2.0), new Price(500, 0, 0), false),
                                new Choice.Option("green", Map.of("solar.area_m2", 2.0), new Price(500, 0, 0), false),
                                new Choice.Option("blue", Map.of("solar.area_m2", 2.0), new Price(501, 0, 0), false)),
                        false)),
                new Terms(10, 0, 0, 0),
                NO_LIMITS,
                ChooseStudyTest::built);
        ChooseResult result = run(twice, Aim.COST, Way.USUAL, 1, Kept.NOTHING);
        assertEquals(Map.of("make", "red"), result.best().chosen());
        assertEquals(
                List.of(Map.of("make", "green")),
                result.ties().stream().map(Candidate::chosen).toList());
        assertEquals(0.1, result.mattersMost().change(), 1e-9);
        assertEquals("blue", result.mattersMost().worst());
    }

    /** Energies, gas and yearly cost against the account of the runs themselves. */
    @Test
    void theYearlyCostIsThatOfItsParts() throws StudyRefused {
        ChooseResult result = run(catalogue(2, warm(2)), Aim.COST, EVERY);
        Candidate best = result.best();
        Terms terms = new Terms(15, 0.03, 100, 5);
        assertEquals(
                terms.annuityPerYear() * best.cost().outlay()
                        + best.yearly().money().energy()
                        + 5
                        - best.yearly().money().gasWorth(),
                best.cost().perYear(),
                1e-9);
        Set<List<Integer>> front =
                result.front().designs().stream().map(Candidate::point).collect(Collectors.toSet());
        for (Candidate one : result.front().all()) {
            boolean beaten = result.front().all().stream()
                    .anyMatch(other -> other.aim(Aim.COST) <= one.aim(Aim.COST)
                            && other.aim(Aim.NET) <= one.aim(Aim.NET)
                            && (other.aim(Aim.COST) < one.aim(Aim.COST) || other.aim(Aim.NET) < one.aim(Aim.NET)));
            assertEquals(!beaten, front.contains(one.point()), one.toString());
        }
    }

    /** The same bits on any number of threads, anew or from kept runs; parts done elsewhere spare the whole all runs. */
    @Test
    void partsThreadsAndKeptRunsChangeNothing() throws StudyRefused {
        Catalogue catalogue = catalogue(3, warm(2));
        ChooseResult one = run(catalogue, Aim.COST, Way.USUAL, 1, Kept.NOTHING);
        assertEquals(one, run(catalogue, Aim.COST, Way.USUAL, 3, Kept.NOTHING));
        Memory parts = new Memory();
        for (int part = 1; part <= 3; part++) {
            try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT, parts)) {
                ChooseStudy.runPart(catalogue, Aim.COST, WEATHER, new ExponentialEngine(), parallel, part, 3);
            }
        }
        int before = parts.all.size();
        assertEquals(one, run(catalogue, Aim.COST, Way.USUAL, 2, parts));
        assertEquals(before + WEATHER.size(), parts.all.size(), "only the design as drawn was left to run");
    }

    @Test
    void weatherShorterThanTheWarmUpIsRefused() {
        Limits slow = new Limits(
                OptionalDouble.empty(),
                OptionalDouble.of(20),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertEquals(
                "weather file 1 of 2: weather: covers 192 hours, expected at least the 20 days of the warm-up",
                assertThrows(StudyRefused.class, () -> run(catalogue(1, slow), Aim.COST, EVERY))
                        .faults()
                        .get(0));
    }
}
