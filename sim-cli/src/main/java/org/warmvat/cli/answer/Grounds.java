package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.question.plausible.Remark;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Notices;
import org.warmvat.tank.SiteConventions;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.doubt.SunCheck;

/**
 * What an answer stands on. This is the only place where assumptions, doubts, warnings and cautions are gathered, for all commands
 * alike.
 *
 * @param version version of the program
 * @param inputs input files with their hashes
 * @param invented one sentence for each input that is the built-in demonstration
 * @param warnings what the user must know: of the runs, of the design, of the weather
 * @param assumed every assumption that was made
 * @param weighty the defaults on which the answer hangs most, with what it becomes when they are lower or higher
 * @param defaults every default of the design file that was used
 * @param cautions what biogas, heat and machines can do
 */
public record Grounds(
        String version,
        List<InputFile> inputs,
        List<String> invented,
        List<Warning> warnings,
        List<String> assumed,
        List<String> weighty,
        List<String> defaults,
        List<String> cautions) {

    private static final String ADJUST = "adjust.";

    /** Warnings that belong beside any verdict, the gravest first. */
    private static final List<String> GRAVE = List.of(
            "not_plausible",
            KeyFigures.BOILING,
            KeyFigures.FREEZING,
            "air_share",
            "cold_pipe_end",
            "loop_frozen",
            "too_hot_to_digest",
            "own_gas_short",
            "weather");

    private static final int MOST_BUT = 4;

    /** The same with other warnings and assumptions. */
    Grounds with(List<Warning> others, Collection<String> otherwise) {
        return new Grounds(
                version, inputs, invented, List.copyOf(others), List.copyOf(otherwise), weighty, defaults, cautions);
    }

    static Grounds of(Subject asked, List<Warning> ofRuns, List<String> more, List<String> weighty) {
        List<Warning> warnings = new ArrayList<>(ofRuns);
        List<String> assumed = new ArrayList<>(asked.reading().invented());
        asked.reading().cautions().forEach(sentence -> warnings.add(new Warning("design", sentence, 1, 0)));
        asked.given().ifPresent(design -> remarks(design, asked.weathers(), warnings));
        asked.given().ifPresent(design -> ofDesign(design, asked.weathers(), assumed));
        for (Weather weather : asked.weathers()) {
            assumed.addAll(taken(asked, weather).assumptions());
            assumed.add(SunCheck.sentence(weather));
            Doubts.of(weather).stream()
                    .map(Doubt::sentence)
                    .forEach(sentence -> warnings.add(new Warning("weather", sentence, 1, 0)));
        }
        assumed.addAll(more);
        return new Grounds(
                Program.version(),
                asked.reading().files(),
                asked.reading().invented(),
                warnings.stream().distinct().toList(),
                assumed.stream().distinct().toList(),
                List.copyOf(weighty),
                asked.reading().assumed(),
                Cautions.of(asked.given()));
    }

    /**
     * The grounds of an answer about several designs or weather files: what holds for all of them stands plain, anything else behind the
     * names of those for which it holds.
     *
     * @param asked whose files they are
     * @param each the grounds of each, by its name
     * @param more what else was assumed
     */
    static Grounds together(Subject asked, Map<String, Grounds> each, List<String> more) {
        List<String> invented = asked.reading().invented();
        return new Grounds(
                Program.version(),
                asked.reading().files(),
                invented,
                warnings(each),
                distinct(Stream.of(invented, named(each, Grounds::assumed), more)),
                List.of(),
                named(each, Grounds::defaults),
                distinct(each.values().stream().map(Grounds::cautions)));
    }

    private static List<String> distinct(Stream<List<String>> sentences) {
        return sentences.flatMap(List::stream).distinct().toList();
    }

    private static List<Warning> warnings(Map<String, Grounds> each) {
        Map<Warning, List<String>> whose = new LinkedHashMap<>();
        each.forEach((name, grounds) -> grounds.warnings()
                .forEach(warning -> whose.computeIfAbsent(warning, unused -> new ArrayList<>())
                        .add(name)));
        return whose.entrySet().stream()
                .map(entry -> saying(
                        entry.getKey(),
                        of(entry.getValue(), each.size(), entry.getKey().sentence())))
                .toList();
    }

    /** A warning in other words. */
    public static Warning saying(Warning warning, String sentence) {
        return new Warning(warning.key(), sentence, warning.count(), warning.worst());
    }

    /** The gravest sentences of each, in the order of the names. */
    static List<String> gravest(Map<String, Grounds> each) {
        return named(each, Grounds::gravest);
    }

    private static List<String> named(Map<String, Grounds> each, Function<Grounds, List<String>> told) {
        Map<String, List<String>> whose = new LinkedHashMap<>();
        each.forEach((name, grounds) -> told.apply(grounds).stream()
                .distinct()
                .forEach(sentence -> whose.computeIfAbsent(sentence, unused -> new ArrayList<>())
                        .add(name)));
        return whose.entrySet().stream()
                .map(entry -> of(entry.getValue(), each.size(), entry.getKey()))
                .toList();
    }

    private static String of(List<String> names, int all, String sentence) {
        return names.size() == all ? sentence : Words.list(names) + ": " + sentence;
    }

    /** What in the design is unlikely; of several weather files by the first. */
    private static void remarks(Design design, List<Weather> weathers, List<Warning> warnings) {
        for (Remark remark : Plausibility.of(design, weathers.stream().findFirst())) {
            String key = remark.gravity() == Remark.Gravity.NOTE ? "remark" : "not_plausible";
            warnings.add(new Warning(key, remark.sentence(), 1, 0));
        }
    }

    /** The weather as the design wants it taken. */
    private static Weather taken(Subject asked, Weather weather) {
        return asked.given()
                .map(design -> SiteConventions.applied(design, weather))
                .orElse(weather);
    }

    private static void ofDesign(Design design, List<Weather> weathers, List<String> assumed) {
        if (design.contents().totalSolidsFraction().isEmpty()) {
            assumed.add(String.format(
                    Locale.ROOT,
                    "The contents were taken to hold %.1f %% of total solids: those of the feed less the volatile solids"
                            + " digested at steady state.",
                    100 * design.totalSolidsFraction()));
        }
        String factors = factors(design);
        if (!factors.isEmpty()) {
            assumed.add("Factors of adjust multiply what is drawn: " + factors + ".");
        }
        weathers.forEach(weather -> assumed.addAll(Notices.of(design, weather)));
    }

    private static String factors(Design design) {
        return design.numbers().entrySet().stream()
                .filter(number -> number.getKey().startsWith(ADJUST) && number.getValue() != 1)
                .map(number -> number.getKey().substring(ADJUST.length()) + " " + Numerals.three(number.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** The sentences of the gravest warnings. */
    List<String> gravest() {
        return GRAVE.stream()
                .flatMap(kind ->
                        warnings.stream().filter(warning -> warning.key().equals(kind)))
                .map(Warning::sentence)
                .limit(MOST_BUT)
                .toList();
    }
}
