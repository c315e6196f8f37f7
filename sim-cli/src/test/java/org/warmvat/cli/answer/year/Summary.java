package org.warmvat.cli.answer.year;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.question.year.YearResult;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.WeatherYear;
import org.warmvat.weather.file.WeatherFiles;

/** A {@code summary.json} as a reader outside the program sees it. */
final class Summary {

    private static final List<InputFile> INPUTS = List.of(
            InputFile.of("design", "tank.yaml", new byte[] {'a', 'b', 'c'}),
            InputFile.of("weather", "year.csv", new byte[0]));
    private static final Map<YearResult, Document> TOLD = Collections.synchronizedMap(new IdentityHashMap<>());
    static final Weather WEATHER = demonstration();

    private final JsonNode root;

    private Summary(JsonNode root) {
        this.root = root;
    }

    static Summary of(YearResult run) {
        return new Summary(new ObjectMapper().valueToTree(SummaryWriter.tree(document(run))));
    }

    private static Weather demonstration() {
        try {
            return WeatherFiles.read("demonstration", WeatherFiles.demonstrationBytes());
        } catch (WeatherRefused impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The whole answer to a run, worked out and drawn once. */
    static Document document(YearResult run) {
        return TOLD.computeIfAbsent(run, Summary::told);
    }

    private static Document told(YearResult run) {
        Subject asked = new Subject(
                "year",
                Optional.of(run.design()),
                List.of(new WeatherYear("", WEATHER)),
                run.engine(),
                new Subject.InputReading(INPUTS, List.of(), List.of("key not given: 1"), List.of()));
        return YearAnswer.of(run, YearAnswer.Beside.NOTHING, asked);
    }

    JsonNode root() {
        return root;
    }

    /** The node at a path such as {@code year/electricity_kwh/mixer}. */
    JsonNode at(String path) {
        JsonNode node = root.at("/" + path);
        if (node.isMissingNode()) {
            throw new AssertionError("summary.json has no " + path);
        }
        return node;
    }

    double number(String path) {
        JsonNode node = at(path);
        if (!node.isNumber()) {
            throw new AssertionError(path + " is " + node + ", expected a number");
        }
        return node.doubleValue();
    }
}
