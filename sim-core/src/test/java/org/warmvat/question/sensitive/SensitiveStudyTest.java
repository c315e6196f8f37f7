package org.warmvat.question.sensitive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.ListedMaterials;
import org.warmvat.design.gas.Gas;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.sample.InventedWeather;
import org.warmvat.tank.Runner;

/** Numbers that nobody knows well, moved by a fifth or 2 K. */
class SensitiveStudyTest {

    private static final Parallel THREADS = new Parallel(2, Parallel.Progress.SILENT);
    private static final Runner RUNNER = new Runner(InventedWeather.days(20, 12), new ExponentialEngine());
    private static final Design DESIGN = Design.usual();

    @AfterAll
    static void close() {
        THREADS.close();
    }

    private static Set<String> all() {
        Set<String> keys = new HashSet<>();
        Doubtful.DOZEN.forEach(number -> keys.add(number.key().replace("[]", "[0]")));
        return keys;
    }

    private static SensitiveResult run(Design design, Set<String> unstated) {
        return SensitiveStudy.run(design, unstated, RUNNER, THREADS);
    }

    private static SensitiveResult.Entry entry(SensitiveResult result, String name) {
        return result.entries().stream()
                .filter(one -> one.number().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The shredder takes 10 Wh for each of the ten kilograms of a day: a fifth more or less is 20 Wh a day, by hand. */
    @Test
    void aFifthOfTheShreddersEnergyIsWhatTheYearLosesOrGains() {
        SensitiveResult result = run(DESIGN, all());
        SensitiveResult.Entry shredder = entry(result, "energy of the shredder");
        double perDayKWh = 0.2 * 10 * 10 / 1000;
        double net = result.base().netKWh().orElseThrow();
        assertEquals(net + 12 * perDayKWh, shredder.low().figures().netKWh().orElseThrow(), 1e-9);
        assertEquals(net - 12 * perDayKWh, shredder.high().figures().netKWh().orElseThrow(), 1e-9);
        assertEquals(8, shredder.low().values().get("feed.shredder_wh_per_kg"));
        assertEquals(12, shredder.high().values().get("feed.shredder_wh_per_kg"));
    }

    @Test
    void theNumberOnWhichTheAnswerHangsMostComesFirst() {
        List<SensitiveResult.Entry> entries = run(DESIGN, all()).entries();
        assertEquals(12, entries.size());
        for (int i = 1; i < entries.size(); i++) {
            assertTrue(entries.get(i - 1).swing() >= entries.get(i).swing());
        }
    }

    @Test
    void temperaturesMoveByTwoKelvin() {
        SensitiveResult.Entry best = entry(run(DESIGN, all()), "optimum temperature of digestion");
        assertEquals(36, best.low().values().get("gas.temperatures_c.best"));
        assertEquals(40, best.high().values().get("gas.temperatures_c.best"));
        assertFalse(best.high().held());
    }

    /** An eta0 of 0.9 would be 1.08: it stays at 1, and so it is said. */
    @Test
    void aNumberStaysAtTheEndOfItsRange() {
        SensitiveResult.Entry eta0 =
                entry(run(DESIGN.with("solar.eta0", 0.9), all()), "collector's optical efficiency");
        assertTrue(eta0.high().held());
        assertEquals(1, eta0.high().values().get("solar.eta0"));
        assertFalse(eta0.low().held());
    }

    /** An optimum of 45 cannot be 47 where digestion ends at 46; it goes as far as it may. */
    @Test
    void aNumberGoesNoFurtherThanTheRestOfTheDesignAllows() {
        SensitiveResult.Entry best =
                entry(run(DESIGN.with("gas.temperatures_c.best", 45), all()), "optimum temperature of digestion");
        assertTrue(best.high().held());
        assertEquals(45.5, best.high().values().get("gas.temperatures_c.best"), 0.5);
    }

    @Test
    void whatTheDesignStatesIsLeftAlone() {
        Set<String> unstated = Set.of("feed.shredder_wh_per_kg");
        assertEquals(Set.of("energy of the shredder", "conductivity of the insulation"), names(run(DESIGN, unstated)));
        Design own = ListedMaterials.of(DESIGN).with("materials.pir_foam.conductivity_w_mk", 0.03);
        assertEquals(Set.of("energy of the shredder"), names(run(own, unstated)));
    }

    private static Set<String> names(SensitiveResult result) {
        return result.entries().stream().map(one -> one.number().name()).collect(Collectors.toSet());
    }

    @Test
    void withoutGasWhatIsTakenDecides() {
        SensitiveResult result = run(DESIGN.without(Gas.class), all());
        assertTrue(result.base().netKWh().isEmpty());
        assertTrue(result.entries().stream().noneMatch(one -> one.number().key().startsWith("gas.")));
    }
}
