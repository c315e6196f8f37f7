package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.cli.answer.Page;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;

/** Reads the sentences of the report as a reader would, and holds every number in them against {@code summary.json}. */
class SentencesAgainstSummaryTest {

    private static final String NUMBER = "(-?\\d+(?:\\.\\d+)?)";
    private static final String DAY = "(\\d+ [A-Z][a-z]+)";

    private static final List<Arguments> RUNS = List.of(
            Arguments.of("usual", SyntheticRun.usual()),
            Arguments.of("short at times", SyntheticRun.shortAtTimes()),
            Arguments.of("never warm", SyntheticRun.neverWarm()),
            Arguments.of("without sun", SyntheticRun.withoutSun()),
            Arguments.of("without backup", SyntheticRun.withoutBackup()),
            Arguments.of("negative", SyntheticRun.negative()),
            Arguments.of("without gas", SyntheticRun.withoutGas()),
            Arguments.of("part year", part()),
            Arguments.of("southern leap year", southernLeapYear()));

    static Stream<Arguments> runs() {
        return RUNS.stream();
    }

    private static YearResult part() {
        return SyntheticRun.of(
                new SyntheticRun.Case("Part", SyntheticRun.at(2025, 3), 90 * 24, 53, true, Optional.of("own_gas")));
    }

    private static YearResult southernLeapYear() {
        return SyntheticRun.of(
                new SyntheticRun.Case("South", SyntheticRun.at(2024, 1), 8784, -38, true, Optional.of("electric")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void theReportOpensWithTheSentencesOfTheSummary(String name, YearResult run) {
        String html = new String(Page.bytes(Summary.document(run)), StandardCharsets.UTF_8)
                .replace('\u00a0', ' ')
                .replace("&#39;", "'");
        int pictures = html.indexOf("<h2 id=\"warnings\">");
        int at = 0;
        for (JsonNode sentence : Summary.of(run).at("answer")) {
            at = html.indexOf(sentence.asText(), at);
            assertTrue(at > 0 && at < pictures, name + ": " + sentence.asText());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void theVerdictOnWarmthIsTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        double below = facts.summary.number("year/hours_below_floor");
        double hours = facts.summary.number("year/hours");
        if (below == 0) {
            facts.hold("The tank was warm .*: the slurry was never below its minimum of N °C\\. .*", "floor_c");
        } else if (below > hours - 1e-3) {
            facts.hold(
                    "The tank was never warm: the slurry was below its minimum of N °C in all N hours\\. .*",
                    "floor_c",
                    "year/hours");
        } else {
            List<String> numbers = facts.find(
                    "The tank was not warm .*: the slurry was below its minimum of N °C for N of N hours \\((?:more than )?N %\\)\\. .*");
            facts.close(numbers.get(0), "floor_c", 1);
            facts.close(numbers.get(1), "year/hours_below_floor", 1);
            facts.close(numbers.get(2), "year/hours", 1);
            assertEquals(100 * below / hours, Double.parseDouble(numbers.get(3)), 0.5);
        }
        facts.hold(
                "The slurry averaged N °C; it was coldest on .* with N °C and warmest on .* with N °C\\.",
                "year/slurry_c/mean",
                "year/slurry_c/least",
                "year/slurry_c/most");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void coldestAndWarmestDayAreTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        List<String> days =
                facts.find("The slurry averaged .*; it was coldest on D with .* and warmest on D with .*\\.");
        assertEquals(words(facts.summary.at("coldest_day").asText()), days.get(0));
        assertEquals(words(facts.summary.at("warmest_day").asText()), days.get(1));
        double least = run.days().stream()
                .filter(day ->
                        day.label().equals(facts.summary.at("coldest_day").asText()))
                .findFirst()
                .orElseThrow()
                .of(KeyFigures.LEAST_C);
        assertEquals(facts.summary.number("year/slurry_c/least"), least, 0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void sunAndBackupAreTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        boolean sun = facts.summary.at("solar_circuit").asBoolean();
        boolean backup = !facts.summary.at("backup_source").isNull();
        if (sun && backup) {
            List<String> numbers = facts.find("Over .* the sun gave N kWh of heat and the backup heater N kWh;"
                    + " the solar fraction was N %\\.");
            facts.close(numbers.get(0), "year/solar_heat_kwh", 1);
            facts.close(numbers.get(1), "year/backup_heat_kwh", 1);
            facts.close(numbers.get(2), "year/solar_share", 100);
        } else if (sun) {
            facts.hold("Over .* the sun gave N kWh of heat; there is no backup heater\\.", "year/solar_heat_kwh");
        } else {
            facts.hold(
                    "Over .* the backup heater gave N kWh of heat; there is no solar circuit\\.",
                    "year/backup_heat_kwh");
        }
        Map<String, String> sources = Map.of(
                "electric", "drew N kWh of electricity",
                "fuel", "burned N kWh of bought fuel",
                "own_gas", "burned N kWh of the tank's own gas");
        if (backup) {
            String did = sources.get(facts.summary.at("backup_source").asText());
            facts.hold("For its heat the backup heater " + did + "\\.", "year/backup_bought_kwh");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void seasonsAreTrueAndMakeUpTheYear(String name, YearResult run) {
        Facts facts = new Facts(run);
        boolean sun = facts.summary.at("solar_circuit").asBoolean();
        boolean backup = !facts.summary.at("backup_source").isNull();
        double solarKWh = 0;
        double backupKWh = 0;
        int count = facts.summary.at("seasons").size();
        for (int i = 0; i < count; i++) {
            String at = "seasons/" + i;
            String season = facts.summary.at(at + "/season").asText();
            String when = Character.isDigit(season.charAt(0))
                    ? words(season + "-01").substring(2) + " \\d{4}"
                    : season + " \\(.*\\)";
            if (sun && backup) {
                facts.hold(
                        "In " + when + " the sun gave N kWh and the backup heater N kWh\\.",
                        at + "/solar_heat_kwh",
                        at + "/backup_heat_kwh");
            } else if (sun) {
                facts.hold("In " + when + " the sun gave N kWh\\.", at + "/solar_heat_kwh");
            } else {
                facts.hold("In " + when + " the backup heater gave N kWh\\.", at + "/backup_heat_kwh");
            }
            solarKWh += facts.summary.number(at + "/solar_heat_kwh");
            backupKWh += facts.summary.number(at + "/backup_heat_kwh");
        }
        // sums of some thousand terms, in another order
        assertEquals(facts.summary.number("year/solar_heat_kwh"), solarKWh, 1e-8);
        assertEquals(facts.summary.number("year/backup_heat_kwh"), backupKWh, 1e-8);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void electricityIsTrueAndAddsUp(String name, YearResult run) {
        Facts facts = new Facts(run);
        List<String> numbers = facts.find(
                "The mixer took N kWh of electricity, the feed auger N kWh and the rest N kWh.*: N kWh together\\.");
        facts.close(numbers.get(0), "year/electricity_kwh/mixer", 1);
        facts.close(numbers.get(1), "year/electricity_kwh/auger", 1);
        facts.close(numbers.get(3), "year/electricity_total_kwh", 1);
        double rest = 0;
        for (String part : List.of("shredder", "solar_pump", "backup_pump", "air_pump", "electronics")) {
            double kWh = facts.summary.number("year/electricity_kwh/" + part);
            rest += kWh;
            String called = part.equals("electronics") ? "controls" : part.replace('_', ' ');
            if (kWh > 0) {
                facts.hold("The mixer took .*\\b" + called + " N kWh.*", "year/electricity_kwh/" + part);
            } else {
                assertTrue(facts.none("The mixer took .*" + called + ".*"), called);
            }
        }
        facts.close(numbers.get(2), rest);
        double mixer = facts.summary.number("year/electricity_kwh/mixer");
        double auger = facts.summary.number("year/electricity_kwh/auger");
        assertEquals(facts.summary.number("year/electricity_total_kwh"), mixer + auger + rest, 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void whereTheHeatWentIsTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        List<String> numbers =
                facts.find("Heat went out through envelope and fittings \\(N kWh\\) and into warming the feed"
                        + " \\(N kWh\\).*; the mixer's shaft gave back N kWh as heat\\.");
        double lost = facts.summary.number("year/fittings_loss_kwh");
        for (JsonNode part : facts.summary.at("year/envelope_loss_kwh")) {
            lost += part.doubleValue();
        }
        facts.close(numbers.get(0), lost);
        facts.close(numbers.get(1), "year/feed_heat_kwh", 1);
        facts.close(numbers.get(2), "year/shaft_heat_kwh", 1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void netEnergyAndItsSignAreTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        double net = facts.summary.number("year/net_energy_kwh");
        if (!facts.summary.at("gas_computed").asBoolean()) {
            assertTrue(facts.all().contains("so that its net energy cannot be judged."), facts.all());
            facts.hold(
                    "It takes (?:.* and )?N kWh of electricity; no gas is computed for this design\\.",
                    "year/electricity_total_kwh");
            return;
        }
        String sign = net > 0 ? "positive" : "negative";
        String verdict = net > 0
                ? "It returns more energy than it takes, with low, middle and high gas."
                : "It takes more energy than it returns, with low, middle and high gas.";
        assertTrue(facts.all().contains(verdict), facts.all());
        facts.hold(
                "It is " + sign + " with low, middle and high gas: about N, N and N kWh\\.",
                "year/net_energy_low_gas_kwh",
                "year/net_energy_kwh",
                "year/net_energy_high_gas_kwh");
        facts.hold(
                "The gas, about N Nm³ of methane, holds about N kWh; (?:.* and|less) N kWh of electricity, the net energy is "
                        + sign + " at about N kWh\\.",
                "year/methane_nm3",
                "year/gas_energy_kwh",
                "year/electricity_total_kwh",
                "year/net_energy_kwh");
        if (!facts.summary.at("backup_source").isNull()) {
            facts.hold(".*less N kWh for the backup heater and .*", "year/backup_bought_kwh");
        }
        String weightedSign = facts.summary.number("year/net_energy_weighted_kwh") > 0 ? "positive" : "negative";
        facts.hold(
                "With all electricity weighted by a primary-energy factor of N the net energy is " + weightedSign
                        + " at about N kWh\\.",
                "primary_energy_factor",
                "year/net_energy_weighted_kwh");
        assertEquals(
                facts.summary.number("year/gas_energy_kwh")
                        - facts.summary.number("year/backup_bought_kwh")
                        - facts.summary.number("year/electricity_total_kwh"),
                net,
                1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("runs")
    void theWorstWeekIsTrue(String name, YearResult run) {
        Facts facts = new Facts(run);
        List<String> days = facts.find("The seven days in a row with .* were D to D\\.");
        LocalDate first =
                LocalDate.parse(facts.summary.at("worst_week/first_day").asText());
        assertEquals(words(first.toString()), days.get(0));
        assertEquals(words(first.plusDays(6).toString()), days.get(1));
        assertEquals(
                first.plusDays(6).toString(),
                facts.summary.at("worst_week/last_day").asText());
        assertTrue(facts.all()
                .contains(" with " + facts.summary.at("worst_week/chosen_by").asText() + " were "));
        facts.hold(
                "In them .*the slurry averaged N °C with a lowest of N °C and was below its minimum for N hours\\.",
                "worst_week/slurry_c/mean",
                "worst_week/slurry_c/least",
                "worst_week/hours_below_floor");
        if (facts.summary.at("solar_circuit").asBoolean()) {
            facts.hold("In them .*the sun gave N kWh.*", "worst_week/solar_heat_kwh");
        }
        if (!facts.summary.at("backup_source").isNull()) {
            facts.hold("In them .*the backup heater gave N kWh.*", "worst_week/backup_heat_kwh");
        }
    }

    private static String words(String date) {
        LocalDate day = LocalDate.parse(date);
        String month = day.getMonth().name();
        return day.getDayOfMonth() + " " + month.charAt(0) + month.substring(1).toLowerCase(Locale.ROOT);
    }

    /** Sentences and summary of a run side by side. */
    private static final class Facts {
        private final Summary summary;
        private final List<String> sentences = new ArrayList<>();

        Facts(YearResult run) {
            summary = Summary.of(run);
            summary.at("answer").forEach(sentence -> sentences.add(sentence.asText()));
        }

        String all() {
            return String.join("\n", sentences);
        }

        boolean none(String pattern) {
            return sentences.stream().noneMatch(sentence -> sentence.matches(pattern));
        }

        /** Finds the one sentence of a pattern in which N stands for a number and D for a day; gives those. */
        List<String> find(String pattern) {
            Pattern compiled = Pattern.compile(pattern.replaceAll("\\bN\\b(?!m³)", Matcher.quoteReplacement(NUMBER))
                    .replaceAll("\\bD\\b", Matcher.quoteReplacement(DAY)));
            List<Matcher> matches = sentences.stream()
                    .map(compiled::matcher)
                    .filter(Matcher::matches)
                    .toList();
            assertEquals(1, matches.size(), pattern + " in\n" + all());
            List<String> found = new ArrayList<>();
            for (int group = 1; group <= matches.get(0).groupCount(); group++) {
                found.add(matches.get(0).group(group));
            }
            return found;
        }

        /** Finds a sentence and holds its numbers, in order, against the summary. */
        void hold(String pattern, String... paths) {
            List<String> numbers = find(pattern);
            assertEquals(paths.length, numbers.size(), pattern);
            for (int i = 0; i < paths.length; i++) {
                close(numbers.get(i), paths[i], 1);
            }
        }

        void close(String printed, String path, double scale) {
            close(printed, scale * summary.number(path));
        }

        /** A printed number has three digits, or all those of its whole part: it is within half of its last, and a hair. */
        void close(String printed, double value) {
            int point = printed.indexOf('.');
            String digits = printed.replace("-", "").replace(".", "").replaceFirst("^0+", "");
            int places = point < 0 ? Math.min(0, 3 - digits.length()) : printed.length() - point - 1;
            assertEquals(value, Double.parseDouble(printed), 0.5000001 * Math.pow(10, -places), printed);
        }
    }
}
