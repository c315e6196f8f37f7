package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.warmvat.cli.plot.Picture;

/** Turns what a study found into the files of its results folder. The same findings give the same bytes. */
public final class StudyReport {

    private static final String PAGE = "report.html";
    private static final String SUMMARY = "summary.json";

    private StudyReport() {}

    /** Names of all files that the results folder of a study may hold, given those of its own tables and pictures. */
    public static Set<String> fileNames(Collection<String> tables, Collection<String> pictures) {
        Set<String> names = new HashSet<>(tables);
        names.add(PAGE);
        names.add(SUMMARY);
        for (String picture : pictures) {
            names.add(picture + ".png");
            names.add(picture + ".svg");
        }
        return names;
    }

    /**
     * The files by name.
     *
     * @param results what was found
     * @param pictures its pictures, none where they could not be drawn
     * @param origin what it was made from
     */
    public static Map<String, byte[]> files(StudyResults results, List<Picture> pictures, Origin origin) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(PAGE, StudyPage.of(results, pictures, origin).html().getBytes(StandardCharsets.UTF_8));
        files.put(SUMMARY, summary(results, origin));
        files.putAll(results.csv());
        for (Picture picture : pictures) {
            files.put(picture.name() + ".png", picture.png());
            files.put(picture.name() + ".svg", picture.svg());
        }
        return files;
    }

    /** {@code summary.json} by itself. */
    public static byte[] summary(StudyResults results, Origin origin) {
        return Json.bytes(json -> {
            json.writeStartObject();
            origin(json, origin);
            json.writeStringField("command", results.command());
            json.writeStringField("title", results.title());
            Json.value(json, "answer", sentences(results.answer()));
            for (Map.Entry<String, Object> figure : results.figures().entrySet()) {
                Json.value(json, figure.getKey(), figure.getValue());
            }
            Json.value(json, "warnings", results.warnings());
            Json.value(json, "assumed", results.assumed());
            Json.value(json, "cautions", Cautions.ALL);
            json.writeEndObject();
        });
    }

    private static List<String> sentences(List<Paragraph> answer) {
        return answer.stream()
                .flatMap(paragraph -> paragraph.sentences().stream())
                .toList();
    }

    private static void origin(JsonGenerator json, Origin origin) throws IOException {
        json.writeObjectFieldStart("program");
        json.writeStringField("name", "warmvat");
        json.writeStringField("version", origin.version());
        json.writeEndObject();
        json.writeArrayFieldStart("inputs");
        for (InputFile input : origin.inputs()) {
            json.writeStartObject();
            json.writeStringField("role", input.role());
            json.writeStringField("file", input.file());
            json.writeStringField("sha256", input.sha256());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
