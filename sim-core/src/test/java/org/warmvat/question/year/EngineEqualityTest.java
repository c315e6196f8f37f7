package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.warmvat.checks.RandomTanks;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.StudyRefused;

/**
 * The everyday engine against the reference engine by what the page on the engines promises: yearly heats within 0.2 % or 1 kWh, monthly
 * ones within 0.5 % or 0.5 kWh, the slurry's distribution within 0.02 K, its hours within 0.05 K, starts within 2 % or 3, ledgers below
 * 1e-6.
 */
class EngineEqualityTest {

    /**
     * Cases that the page on the engines tells as missed by this engine's own error, with the reason: where a month's
     * points and hours of the slurry stand hangs on single strokes there. Their heats, starts and ledgers are asked all the same.
     */
    private static final Set<String> TOLD_AS_MISSED = Set.of(
            "100 litres",
            "bare, 100 litres, element",
            "in a room, element, feed from the room",
            "holder, uses and own gas with its reserve",
            "chance 223",
            "chance 280",
            "chance 320",
            "chance 329",
            "chance 416",
            "chance 439");

    /** What those may miss. */
    private static final List<String> BY_PHASE = List.of("points of the slurry", "hours within 0.05 K", "rms");

    @Test
    void enginesAgreeOnAHandfulOfWeeks() throws Exception {
        List<Agreement> found = run("handful", EqualityCases.handful());
        assertEquals(6, found.size());
        met(found);
    }

    /** All cases over whole years: some minutes. Run by {@code mvn -Pfull -pl sim-core test -Dtest=EngineEqualityTest}. */
    @Test
    @Tag("full")
    void enginesAgreeOnEveryDesignOverWholeYears() throws Exception {
        List<Agreement> found = run("full", EqualityCases.full());
        assertTrue(found.size() >= 30);
        met(found);
    }

    /** Seasons, shelters, horizons, gas in use and hygienisation. Run by {@code mvn -Pfull -pl sim-core test -Dtest=EngineEqualityTest}. */
    @Test
    @Tag("full")
    void enginesAgreeOnSeasonsSheltersAndGasOverWholeYears() throws Exception {
        List<Agreement> found = run("lives", EqualityCases.lives());
        assertTrue(found.size() >= 10);
        met(found);
    }

    /**
     * Tanks drawn by chance from the whole range of designs, 40 days each; {@code -Dequality.tanks=N} draws N of them. Run by {@code mvn
     * -Pfull -pl sim-core test -Dtest=EngineEqualityTest}.
     */
    @Test
    @Tag("full")
    void enginesAgreeOnTanksDrawnByChance() throws Exception {
        int count = Integer.getInteger("equality.tanks", 500);
        List<EqualityCases.Case> cases =
                IntStream.range(0, count).mapToObj(EngineEqualityTest::chance).toList();
        met(run("chance", cases));
    }

    /** The yardstick of doubt must not excuse what it should not: two calm cases agree with themselves. */
    @Test
    void aCalmCaseLeavesNoDoubt() throws Exception {
        for (EqualityCases.Case one : EqualityCases.handful().subList(0, 2)) {
            assertFalse(Agreement.isDoubtful(one), one.name());
        }
    }

    /** A start that three margins allow for 22 s only: an event check every 120 s passes over it. */
    @Test
    void theReferenceSeesAShortWindow() throws Exception {
        Agreement found = Agreement.of(chance(359));
        assertTrue(found.isMet(), found.line());
    }

    private static EqualityCases.Case chance(int seed) {
        return new EqualityCases.Case(
                "chance " + seed,
                RandomTanks.plan(seed),
                () -> InventedWeather.days(new Random(15_485_863L * seed + 5).nextInt(325), 40));
    }

    @Test
    void theListSpansTheDesigns() {
        List<EqualityCases.Case> cases = EqualityCases.full();
        assertTrue(cases.size() >= 30, "cases " + cases.size());
        assertEquals(
                cases.size(),
                new HashSet<>(cases.stream().map(EqualityCases.Case::name).toList()).size());
        long bare = cases.stream()
                .filter(one -> one.plan().wall.equals(TankPlan.bare()))
                .count();
        assertTrue(bare >= 5, "without insulation " + bare);
    }

    /** Runs the cases, with the list so far on file after each: the whole takes minutes. */
    private static List<Agreement> run(String which, List<EqualityCases.Case> cases) throws StudyRefused, IOException {
        List<Agreement> found = new ArrayList<>();
        List<String> doubtful = new ArrayList<>();
        for (EqualityCases.Case one : cases) {
            Agreement agreement = Agreement.of(one);
            found.add(agreement);
            if (!agreement.isMet() && Agreement.isDoubtful(one)) {
                doubtful.add(one.name());
            }
            report(which, found, doubtful);
        }
        return found.stream().filter(one -> !doubtful.contains(one.name())).toList();
    }

    /**
     * A case may be missed only where the reference engine, put off by less than a thousandth of a kelvin, misses itself, or where it is
     * told, and then by the phase of its strokes alone.
     */
    private static void met(List<Agreement> found) {
        List<String> missed = found.stream()
                .filter(one -> !one.isMet())
                .filter(one -> !(TOLD_AS_MISSED.contains(one.name()) && BY_PHASE.containsAll(one.missed())))
                .map(Agreement::line)
                .toList();
        assertTrue(missed.isEmpty(), String.join("\n", missed));
    }

    /** The list and the worst cases, for the page on the engines. */
    private static void report(String which, List<Agreement> found, List<String> doubtful) throws IOException {
        StringBuilder text = new StringBuilder(which).append(": everyday engine against reference engine, kWh and K\n");
        found.forEach(one -> text.append(one.line()).append('\n'));
        text.append("\nmissed, but the reference engine itself hangs on a graze: ")
                .append(doubtful);
        text.append("\nworst cases\n");
        worst(text, "solar heat, kWh", found, one -> one.solar().difference());
        worst(text, "backup heat, kWh", found, one -> one.backup().difference());
        worst(text, "starts", found, one -> one.starts().difference());
        worst(text, "points of a month, K", found, Agreement::pointsK);
        worst(text, "hours further than 0.05 K, share", found, one -> 1 - one.hoursWithin());
        worst(text, "rms, K", found, Agreement::rmsK);
        worst(text, "heats excused by a stroke", found, Agreement::excused);
        worst(text, "ledger", found, Agreement::residual);
        Path folder = Path.of("target");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("engine-equality" + (which.equals("full") ? "" : "-" + which) + ".txt"), text);
    }

    private static void worst(
            StringBuilder text, String what, List<Agreement> found, ToDoubleFunction<Agreement> figure) {
        Agreement worst = found.stream().max(Comparator.comparingDouble(figure)).orElseThrow();
        text.append(String.format(Locale.ROOT, "%-36s %10.3g  %s\n", what, figure.applyAsDouble(worst), worst.name()));
    }
}
