package org.warmvat.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;

/** The questions that were asked: one is worked on at a time, the answers of the last few are kept. */
final class Inquiries {

    private static final int MOST_KEPT = 8;

    private final Questions questions;
    private final Map<Integer, Inquiry> all = new LinkedHashMap<>();
    private int count;

    Inquiries(Questions questions) {
        this.questions = questions;
    }

    /**
     * Begins to answer.
     *
     * @param asked name of the question, its options, the texts of designs, and further files in Base64
     * @throws Questions.NotAnswered when another question is not answered yet, or there is no such
     */
    synchronized Inquiry ask(JsonNode asked, Weathers.Kept weather) throws Questions.NotAnswered {
        if (all.values().stream().anyMatch(other -> !other.hasEnded())) {
            throw new Questions.NotAnswered(List.of("Another question is being answered: wait for it, or stop it."));
        }
        Questions.Question question = questions.all().stream()
                .filter(known -> known.name().equals(asked.path("question").asText()))
                .findFirst()
                .orElseThrow(() -> new Questions.NotAnswered(List.of("There is no such question.")));
        Map<String, String> options = new LinkedHashMap<>();
        question.fields().forEach(field -> {
            JsonNode value = asked.path("options").path(field.name());
            if (value.isTextual()) {
                options.put(field.name(), value.textValue());
            }
        });
        int number = ++count;
        Inquiry inquiry = new Inquiry(number, own -> answer(question, options, asked, weather, own));
        all.put(number, inquiry);
        List<Integer> old = new ArrayList<>(all.keySet());
        old.stream().limit(Math.max(0, old.size() - MOST_KEPT)).forEach(all::remove);
        return inquiry.begun();
    }

    synchronized Optional<Inquiry> of(int number) {
        return Optional.ofNullable(all.get(number));
    }

    synchronized void stopAll() {
        all.values().forEach(Inquiry::stop);
    }

    /** Lays the files out in a folder of the server's own, under names of its own, and takes them away afterwards. */
    private Document answer(
            Questions.Question question,
            Map<String, String> options,
            JsonNode asked,
            Weathers.Kept weather,
            Inquiry inquiry)
            throws Exception {
        Path folder = Files.createTempDirectory("warmvat-page");
        try {
            return questions.answer(
                    question.name(), options, laidOut(folder, question, asked, weather), inquiry::reached);
        } catch (Questions.NotAnswered notAnswered) {
            String lead = folder + java.io.File.separator;
            throw new Questions.NotAnswered(notAnswered.sentences().stream()
                    .map(sentence -> sentence.replace(lead, ""))
                    .toList());
        } finally {
            remove(folder);
        }
    }

    private static Questions.Given laidOut(
            Path folder, Questions.Question question, JsonNode asked, Weathers.Kept weather) throws IOException {
        String text = asked.path("text").asText();
        Path design = Files.writeString(folder.resolve(Work.name(text)), text);
        Optional<Path> pinned = Optional.empty();
        if (question.pinned() && asked.path("pinned").isTextual()) {
            String other = asked.path("pinned").textValue();
            pinned = Optional.of(Files.writeString(folder.resolve("pinned-" + Work.name(other)), other));
        }
        return new Questions.Given(
                design, pinned, laidOut(folder, weather), laidOut(folder, question.files(), asked.path("files")));
    }

    private static Map<String, Path> laidOut(Path folder, List<Questions.Slot> slots, JsonNode asked)
            throws IOException {
        Map<String, Path> files = new LinkedHashMap<>();
        for (Questions.Slot slot : slots) {
            JsonNode content = asked.path(slot.name());
            if (content.isTextual()) {
                String name = slot.name().replaceAll("[^A-Za-z]", "").toLowerCase(Locale.ROOT) + ".txt";
                files.put(slot.name(), Files.write(folder.resolve(name), content.binaryValue()));
            }
        }
        return files;
    }

    private static Questions.WeatherGiven laidOut(Path folder, Weathers.Kept weather) throws IOException {
        Weathers.Source source = weather.source();
        Optional<Path> layout = Optional.empty();
        if (source.layout().isPresent()) {
            layout = Optional.of(
                    Files.write(folder.resolve("layout.yaml"), source.layout().get()));
        }
        Path file = Files.write(folder.resolve("weather.csv"), source.bytes());
        return new Questions.WeatherGiven(file, layout, source.fillHolesH());
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** The starter design for a size, in the weather at work. */
    String starter(String litres, String setpointC, Weathers.Kept weather) throws Exception {
        Path folder = Files.createTempDirectory("warmvat-page");
        try {
            return questions.starter(litres, setpointC, laidOut(folder, weather));
        } finally {
            remove(folder);
        }
    }
}
