package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Nearest;
import org.warmvat.design.keys.Shown;
import org.warmvat.weather.layout.Layout;

/** A block of a layout file: takes keys by type and adds a fault, with what is expected, where one is not as it should be. */
final class LayoutBlock {

    private final String path;
    private final ObjectNode node;
    private final Faults faults;

    LayoutBlock(String path, ObjectNode node, Faults faults) {
        this.path = path;
        this.node = node;
        this.faults = faults;
    }

    void fault(String key, String text) {
        faults.add(KeyPath.key(path, key), text);
    }

    void missing(String key, String expected) {
        fault(key, "is missing, expected " + expected);
    }

    /** Refuses all other keys. */
    void allow(String... keys) {
        List<String> known = Arrays.asList(keys);
        node.fieldNames().forEachRemaining(key -> {
            if (!known.contains(key)) {
                String hint = Nearest.of(key, known)
                        .map(near -> "did you mean " + KeyPath.key(path, near) + "?")
                        .orElse("known here: " + String.join(", ", known));
                fault(key, "is not a known key, " + hint);
            }
        });
    }

    Optional<JsonNode> child(String key) {
        return Optional.ofNullable(node.get(key));
    }

    LayoutBlock block(String key, boolean needed) {
        Optional<JsonNode> child = child(key);
        if (child.isEmpty() && needed) {
            missing(key, "a block");
        } else if (child.isPresent() && !child.get().isObject()) {
            fault(key, "expected a block of keys");
        }
        ObjectNode block = child.filter(JsonNode::isObject)
                .map(ObjectNode.class::cast)
                .orElseGet(JsonNodeFactory.instance::objectNode);
        return new LayoutBlock(KeyPath.key(path, key), block, faults);
    }

    int whole(String key, int least, int most, int usual) {
        Optional<JsonNode> child = child(key);
        if (child.isEmpty()) {
            return usual;
        }
        int value = child.get().isIntegralNumber() ? child.get().asInt() : -1;
        if (value < least || value > most) {
            fault(key, child.get().asText() + ", expected a whole number, " + least + " to " + most);
            return usual;
        }
        return value;
    }

    double number(String key, double usual) {
        Optional<JsonNode> child = child(key);
        if (child.isPresent() && !child.get().isNumber()) {
            fault(key, Shown.quoted(child.get().asText()) + ", expected a number");
        }
        return child.filter(JsonNode::isNumber).map(JsonNode::asDouble).orElse(usual);
    }

    boolean flag(String key, boolean usual) {
        Optional<JsonNode> child = child(key);
        if (child.isPresent() && !child.get().isBoolean()) {
            fault(key, Shown.quoted(child.get().asText()) + ", expected true or false");
        }
        return child.filter(JsonNode::isBoolean).map(JsonNode::asBoolean).orElse(usual);
    }

    String text(String key, String usual) {
        return child(key).map(JsonNode::asText).orElse(usual);
    }

    <T> T needed(String key, Map<String, T> words, T instead) {
        if (child(key).isEmpty()) {
            missing(key, words(words));
            return instead;
        }
        return choice(key, words, instead);
    }

    <T> T choice(String key, Map<String, T> words, T usual) {
        Optional<JsonNode> child = child(key);
        if (child.isEmpty()) {
            return usual;
        }
        T value = words.get(child.get().asText().toLowerCase(Locale.ROOT));
        if (value == null) {
            fault(key, Shown.quoted(child.get().asText()) + ", expected " + words(words));
            return usual;
        }
        return value;
    }

    private static String words(Map<String, ?> words) {
        Set<String> visible = new LinkedHashSet<>(words.keySet());
        visible.removeIf(word -> word.isBlank());
        List<String> sorted = new ArrayList<>(visible);
        sorted.sort(null);
        return "one of " + String.join(" ", sorted);
    }

    /** A column by its number, counted from 1, or by its heading. */
    Layout.Place place(String key) {
        Optional<JsonNode> child = child(key);
        if (child.isEmpty()) {
            missing(key, "a column by number or heading");
            return new Layout.ByNumber(1);
        }
        return place(key, child.get());
    }

    private Layout.Place place(String key, JsonNode found) {
        if (found.isTextual() && !found.asText().isBlank()) {
            return new Layout.ByHeading(found.asText().strip());
        }
        if (found.isIntegralNumber() && found.asInt() >= 1 && found.asInt() <= 10_000) {
            return new Layout.ByNumber(found.asInt());
        }
        fault(key, found.asText() + ", expected a column by number, counted from 1, or by heading");
        return new Layout.ByNumber(1);
    }

    /** One column or a list of columns. */
    List<Layout.Place> places(String key) {
        Optional<JsonNode> child = child(key);
        if (child.isEmpty() || !child.get().isArray()) {
            return List.of(place(key));
        }
        List<Layout.Place> places = new ArrayList<>();
        child.get().forEach(entry -> places.add(place(key, entry)));
        if (places.isEmpty()) {
            fault(key, "is a list without entries, expected a column by number or heading");
        }
        return places;
    }

    /** A datum typed in, or a cell of a lead-in line as {@code {line: 1, cell: 5}}. */
    Layout.Source source(String key, boolean number) {
        Optional<JsonNode> child = child(key);
        String expected = (number ? "a number" : "text") + " or {line: ..., cell: ...}";
        if (child.isEmpty()) {
            if (number) {
                missing(key, expected);
            }
            return Layout.Source.of("unnamed site");
        }
        if (child.get().isObject()) {
            LayoutBlock cell = block(key, true);
            cell.allow("line", "cell");
            return Layout.Source.at(cell.position("line"), cell.position("cell"));
        }
        if (number ? !child.get().isNumber() : !child.get().isValueNode()) {
            fault(key, Shown.quoted(child.get().asText()) + ", expected " + expected);
        }
        return Layout.Source.of(child.get().asText());
    }

    private int position(String key) {
        if (child(key).isEmpty()) {
            missing(key, "a whole number, 1 to 10000");
        }
        return whole(key, 1, 10_000, 1);
    }
}
