package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.warmvat.design.keys.Shown;

/** Says in words what the schema allows in a place. */
final class Expectation {

    private Expectation() {}

    /** What is allowed, as in {@code a number, 0 to 1000 m2}. */
    static String of(FileSchema file, JsonNode schema) {
        JsonNode at = file.resolved(schema);
        if (at.has("anyOf")) {
            return each(at.path("anyOf"), branch -> of(file, branch), " or ");
        }
        if (at.has("enum")) {
            return "one of " + each(at.path("enum"), JsonNode::asText, ", ");
        }
        return switch (at.path("type").asText()) {
            case "number" -> "a number" + range(at);
            case "integer" -> "a whole number" + range(at);
            case "boolean" -> "true or false";
            case "array" -> "a list" + entries(at);
            case "object" -> "a block" + keys(file, at);
            default -> at.path("x-form").asText("text");
        };
    }

    private static String each(JsonNode list, Function<JsonNode, String> words, String between) {
        return StreamSupport.stream(list.spliterator(), false).map(words).collect(Collectors.joining(between));
    }

    private static String range(JsonNode at) {
        String unit = at.path("x-unit").asText();
        String most = Shown.number(at.path("maximum").asDouble()) + (unit.isEmpty() ? "" : " " + unit);
        return at.has("exclusiveMinimum")
                ? ", above " + Shown.number(at.path("exclusiveMinimum").asDouble()) + " and up to " + most
                : ", " + Shown.number(at.path("minimum").asDouble()) + " to " + most;
    }

    private static String entries(JsonNode at) {
        String form = at.path("items").path("x-form").asText();
        return (at.has("minItems") ? " with at least one entry" : "") + (form.isEmpty() ? "" : ", each " + form);
    }

    private static String keys(FileSchema file, JsonNode at) {
        List<String> names = file.keys(at);
        return names.size() > 3 || names.isEmpty() ? "" : " {" + String.join(": ..., ", names) + ": ...}";
    }
}
