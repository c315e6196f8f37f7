package org.warmvat.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.weather.WeatherRefused;

/** What is done with a design and a weather file that the page is at work on. */
final class Work {

    private static final int MOST_CHANGES = 100;

    private final Weathers weathers;
    private final Lanes lanes = new Lanes();

    Work(Weathers weathers) {
        this.weathers = weathers;
    }

    /** Name of a design's text for messages and results. */
    static String name(String text) {
        return DesignDocument.isJson("", text) ? "design.json" : "design.yaml";
    }

    /**
     * Runs the year of a design, with some of its values exchanged; an empty answer where a newer design came before it was done.
     *
     * @param asked {@code page}, {@code number}, {@code text}, {@code set}: a list of paths and values, {@code weather}
     */
    Reply year(JsonNode asked) throws Exception {
        String text = asked.path("text").asText();
        String name = name(text);
        try {
            for (JsonNode change : changes(asked)) {
                JsonNode value = change.path("value");
                text = DesignText.with(
                        name, text, change.path("path").asText(), value.isMissingNode() ? "" : value.toString());
            }
        } catch (InputRefused refused) {
            return Reply.refused(422, refused.faults());
        }
        String changed = text;
        try {
            Weathers.Kept weather = weather(asked);
            return Reply.of(
                    Reply.BINARY,
                    lanes.newest(
                            asked.path("page").asText(),
                            asked.path("number").asLong(),
                            () -> LiveYear.of(name, changed, weather)));
        } catch (CancellationException | InterruptedException overtaken) {
            return Reply.empty(204);
        } catch (Exception failure) {
            if (!Sentences.isRefusal(failure)) {
                throw failure;
            }
            return new Reply(
                    422, Reply.JSON, Reply.empty(422).policy(), Reply.jsonBytes(faulty(name, changed, failure)));
        }
    }

    private static Iterable<JsonNode> changes(JsonNode asked) {
        JsonNode set = asked.path("set");
        if (set.size() > MOST_CHANGES) {
            throw new InputRefused(List.of(set.size() + " changes at once, expected up to " + MOST_CHANGES));
        }
        return set;
    }

    /** A design that cannot be run is still shown, as far as it can be read. */
    private static Map<String, Object> faulty(String name, String text, Exception failure) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("sentences", Sentences.of(failure));
        told.put("text", text);
        try {
            told.put("tree", new RawValue(DesignText.tree(name, text)));
        } catch (InputRefused unreadable) {
            told.put("tree", null);
        }
        return told;
    }

    /** The weather that a request names. */
    Weathers.Kept weather(JsonNode asked) throws WeatherRefused, Questions.NotAnswered {
        return weathers.of(asked.path("weather").asText())
                .orElseThrow(() -> new Questions.NotAnswered(
                        List.of("This weather file is no longer at hand: give it to the page again.")));
    }
}
