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
    private static final int MOST_KNOWN = 8;

    private final Weathers weathers;
    private final Lanes lanes = new Lanes();
    private final Map<String, DesignText> known = new LinkedHashMap<>(16, 0.75F, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, DesignText> eldest) {
            return size() > MOST_KNOWN;
        }
    };

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
     * @param asked {@code page}, {@code number}, {@code text}, {@code set}: a list of paths and values, {@code weather},
     *     {@code hour}: index of an hour whose flows are asked, if any
     */
    Reply year(JsonNode asked) throws Exception {
        String text = asked.path("text").asText();
        DesignText design;
        try {
            design = known(text);
        } catch (InputRefused unreadable) {
            return faulty(text, null, faults(text, unreadable));
        }
        try {
            for (JsonNode change : changes(asked)) {
                JsonNode value = change.path("value");
                design = design.with(change.path("path").asText(), value.isMissingNode() ? "" : value.toString());
            }
        } catch (InputRefused refused) {
            return Reply.refused(422, refused.faults());
        }
        return year(remembered(design), asked);
    }

    private Reply year(DesignText design, JsonNode asked) throws Exception {
        try {
            Weathers.Kept weather = weather(asked);
            return Reply.of(
                    Reply.BINARY,
                    lanes.newest(
                            asked.path("page").asText(),
                            asked.path("number").asLong(),
                            () -> LiveYear.of(
                                    design, weather, asked.path("hour").asInt(-1))));
        } catch (CancellationException | InterruptedException overtaken) {
            return Reply.empty(204);
        } catch (Exception failure) {
            if (Sentences.refusal(failure).isEmpty()) {
                throw failure;
            }
            return faulty(design.text(), new RawValue(design.tree()), Sentences.of(failure));
        }
    }

    /** What a page is at work on came from here a moment ago and need not be read again. */
    private DesignText known(String text) {
        synchronized (known) {
            DesignText one = known.get(text);
            if (one != null) {
                return one;
            }
        }
        return remembered(DesignText.of(name(text), text));
    }

    private DesignText remembered(DesignText design) {
        synchronized (known) {
            known.put(design.text(), design);
        }
        return design;
    }

    private static Iterable<JsonNode> changes(JsonNode asked) {
        JsonNode set = asked.path("set");
        if (set.size() > MOST_CHANGES) {
            throw new InputRefused(set.size() + " changes at once, expected up to " + MOST_CHANGES);
        }
        return set;
    }

    /** All faults of a text that could not be read as a whole. */
    private static List<String> faults(String text, InputRefused unreadable) {
        try {
            DesignDocument.parse(name(text), text);
            return unreadable.faults();
        } catch (InputRefused all) {
            return all.faults();
        }
    }

    /** A design that cannot be run is still shown, as far as it can be read. */
    private static Reply faulty(String text, Object tree, List<String> sentences) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("sentences", sentences);
        told.put("text", text);
        told.put("tree", tree);
        return new Reply(422, Reply.JSON, Reply.empty(422).policy(), Reply.jsonBytes(told));
    }

    /** The weather that a request names. */
    Weathers.Kept weather(JsonNode asked) throws WeatherRefused, Questions.NotAnswered {
        return weathers.of(asked.path("weather").asText())
                .orElseThrow(() -> new Questions.NotAnswered(
                        List.of("This weather file is no longer at hand: give it to the page again.")));
    }
}
