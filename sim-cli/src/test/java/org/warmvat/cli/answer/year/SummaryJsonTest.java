package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.answer.Program;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.Warning;
import org.warmvat.question.year.YearResult;

class SummaryJsonTest {

    private static final Map<String, List<String>> PROMISED = Map.of(
            "envelope_loss_kwh", List.of("wall", "dry_wall", "lid", "floor"),
            "stored_kwh", List.of("slurry", "envelope", "collector", "backup_circuit"),
            "electricity_kwh",
                    List.of("mixer", "auger", "shredder", "solar_pump", "backup_pump", "air_pump", "electronics"),
            "slurry_c", List.of("least", "mean", "most"),
            "ledger", List.of("residual_fraction"));
    private static final List<String> ALONE = List.of(
            "hours",
            "solar_heat_kwh",
            "backup_heat_kwh",
            "solar_share",
            "backup_bought_kwh",
            "fittings_loss_kwh",
            "feed_heat_kwh",
            "gas_loss_kwh",
            "shaft_heat_kwh",
            "reaction_heat_kwh",
            "collector_absorbed_kwh",
            "collector_loss_kwh",
            "backup_power_kwh",
            "backup_circuit_loss_kwh",
            "methane_nm3",
            "gas_energy_kwh",
            "net_energy_kwh",
            "net_energy_weighted_kwh",
            "hours_below_floor",
            "stagnation_hours");

    @Test
    void yearAndEveryMonthHaveThePromisedKeys() {
        Summary summary = Summary.of(SyntheticRun.usual());
        assertPromised(summary.at("year"));
        assertEquals(12, summary.at("months").size());
        for (JsonNode month : summary.at("months")) {
            assertPromised(month);
            TreeSet<String> yearKeys = new TreeSet<>();
            summary.at("year").fieldNames().forEachRemaining(yearKeys::add);
            TreeSet<String> monthKeys = new TreeSet<>();
            month.fieldNames().forEachRemaining(monthKeys::add);
            assertTrue(monthKeys.remove("month"));
            assertEquals(yearKeys, monthKeys);
        }
        assertEquals("2025-01", summary.at("months/0/month").asText());
        assertEquals("2025-12", summary.at("months/11/month").asText());
    }

    private static void assertPromised(JsonNode period) {
        ALONE.forEach(key -> assertTrue(period.path(key).isNumber(), key + " is " + period.path(key)));
        PROMISED.forEach((group, parts) ->
                parts.forEach(part -> assertTrue(period.path(group).path(part).isNumber(), group + "." + part)));
    }

    @Test
    void programAndInputsAreNamedWithTheirHashes() {
        Summary summary = Summary.of(SyntheticRun.usual());
        assertEquals("warmvat", summary.at("program/name").asText());
        assertEquals(Program.version(), summary.at("program/version").asText());
        assertEquals("design", summary.at("inputs/0/role").asText());
        assertEquals("tank.yaml", summary.at("inputs/0/file").asText());
        // FIPS 180-4 example "abc", and the well known hash of nothing
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                summary.at("inputs/0/sha256").asText());
        assertEquals(
                "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
                summary.at("inputs/1/sha256").asText());
    }

    @Test
    void aReaderClosesTheThreeBalancesFromTheFileAlone() {
        for (YearResult run : List.of(SyntheticRun.usual(), SyntheticRun.withoutSun(), SyntheticRun.neverWarm())) {
            Summary summary = Summary.of(run);
            assertCloses(summary.at("year"));
            summary.at("months").forEach(SummaryJsonTest::assertCloses);
        }
    }

    private static void assertCloses(JsonNode period) {
        double lost = value(period, "fittings_loss_kwh");
        for (JsonNode part : period.path("envelope_loss_kwh")) {
            lost += part.doubleValue();
        }
        double slurry = value(period, "solar_heat_kwh")
                + value(period, "backup_heat_kwh")
                + value(period, "shaft_heat_kwh")
                + value(period, "reaction_heat_kwh")
                - lost
                - value(period, "feed_heat_kwh")
                - value(period, "gas_loss_kwh")
                - period.at("/stored_kwh/slurry").doubleValue()
                - period.at("/stored_kwh/envelope").doubleValue();
        double collector = value(period, "collector_absorbed_kwh")
                - value(period, "collector_loss_kwh")
                - value(period, "solar_heat_kwh")
                - period.at("/stored_kwh/collector").doubleValue();
        double backup = value(period, "backup_power_kwh")
                - value(period, "backup_circuit_loss_kwh")
                - value(period, "backup_heat_kwh")
                - period.at("/stored_kwh/backup_circuit").doubleValue();
        double passed = period.at("/ledger/passed_through_kwh").doubleValue();
        assertEquals(period.at("/ledger/slurry_residual_kwh").doubleValue(), slurry, 1e-12 * passed);
        assertEquals(period.at("/ledger/collector_residual_kwh").doubleValue(), collector, 1e-12 * passed);
        assertEquals(period.at("/ledger/backup_residual_kwh").doubleValue(), backup, 1e-12 * passed);
        double worst = Math.max(Math.abs(slurry), Math.max(Math.abs(collector), Math.abs(backup)));
        assertTrue(worst < 1e-4 * passed, period.path("month") + " " + worst);
    }

    private static double value(JsonNode period, String key) {
        return period.path(key).doubleValue();
    }

    @Test
    void aShareOfNothingIsNullAndAShareOfBackupAloneIsNil() {
        YearResult bare = SyntheticRun.of(
                new SyntheticRun.Case("Bare", SyntheticRun.at(2025, 1), 240, 53, false, Optional.empty()));
        assertTrue(Summary.of(bare).at("year/solar_share").isNull());
        assertTrue(Summary.of(bare).at("backup_source").isNull());
        assertTrue(Summary.of(bare).at("starts/solar_pump").isNull());
        assertEquals(0, Summary.of(SyntheticRun.withoutSun()).number("year/solar_share"), 0);
    }

    @Test
    void aRunShorterThanAWeekHasNoWorstWeek() {
        YearResult brief = SyntheticRun.of(
                new SyntheticRun.Case("Brief", SyntheticRun.at(2025, 1), 72, 53, true, Optional.empty()));
        assertTrue(Summary.of(brief).at("worst_week").isNull());
        String answer = Summary.of(brief).at("answer").toString();
        assertTrue(answer.contains("The weather file is shorter than a week."), answer);
    }

    @Test
    void anEndlessWorstIsNullBecauseJsonHasNoInfinity() {
        YearResult run = SyntheticRun.usual();
        YearResult odd = new YearResult(
                run.design(),
                run.site(),
                run.engine(),
                run.runInDays(),
                run.whole(),
                run.months(),
                run.days(),
                run.hourly(),
                List.of(new Warning("air", "Air.", 1, Double.POSITIVE_INFINITY)),
                run.gas());
        assertTrue(Summary.of(odd).at("warning_figures/0/worst").isNull());
        assertTrue(Summary.of(odd).at("warnings/0/worst").isNull());
    }

    @Test
    void numbersKeepAllTheirDigits() {
        YearResult run = SyntheticRun.usual();
        assertEquals(run.whole().of(BackupPart.HEAT), Summary.of(run).number("year/backup_heat_kwh"), 0, "bit for bit");
    }

    @Test
    void warningsAndAssumptionsStandInFull() {
        YearResult run = SyntheticRun.usual();
        Summary summary = Summary.of(run);
        assertEquals(
                run.warnings().get(0).sentence(),
                summary.at("warnings/0/sentence").asText());
        assertEquals(run.warnings().get(0).count(), summary.number("warning_figures/0/count"), 0);
        String assumed = summary.at("assumed").toString();
        assertTrue(assumed.contains("Before the first hour the tank was run in"), assumed);
        assertTrue(assumed.contains("key not given: 1"), assumed);
        assertTrue(summary.at("cautions").toString().contains("Never enter a tank"));
    }

    @Test
    void theSameRunGivesTheSameBytes() {
        byte[] once = SummaryWriter.bytes(Summary.document(SyntheticRun.usual()));
        byte[] again = SummaryWriter.bytes(Summary.document(SyntheticRun.of(new SyntheticRun.Case(
                "Invented tank", SyntheticRun.at(2025, 1), 8760, 53, true, Optional.of("electric")))));
        assertArrayEquals(once, again);
        assertTrue(new String(once, StandardCharsets.UTF_8).endsWith("}\n"));
    }
}
