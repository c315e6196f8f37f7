package org.warmvat.cli.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Refused;

/** Trees of a file as plain maps, lists, numbers and texts, and as JSON text. */
final class PlainTree {

    private PlainTree() {}

    /** The value of a node; values that are empty are left out. */
    static Object of(JsonNode node) {
        if (node.isObject()) {
            Map<String, Object> map = new LinkedHashMap<>();
            node.properties().stream()
                    .filter(entry -> !entry.getValue().isNull())
                    .forEach(entry -> map.put(entry.getKey(), of(entry.getValue())));
            return map;
        }
        if (node.isArray()) {
            return StreamSupport.stream(node.spliterator(), false)
                    .map(PlainTree::of)
                    .collect(Collectors.toList());
        }
        if (node.isNumber()) {
            return node.isIntegralNumber() ? (Object) node.longValue() : (Object) node.doubleValue();
        }
        return node.isBoolean() ? (Object) node.booleanValue() : node.asText();
    }

    /**
     * Puts a word in the place of a key, whose block must be there.
     *
     * @throws Refused when it is not
     */
    static void put(JsonNode tree, String path, String word) {
        List<String> steps = KeyPath.steps(path);
        JsonNode at = tree;
        for (String step : steps.subList(0, steps.size() - 1)) {
            at = step.matches("\\[[0-9]{1,4}]")
                    ? at.path(Integer.parseInt(step.substring(1, step.length() - 1)))
                    : at.path(step);
        }
        if (!(at instanceof ObjectNode block)) {
            throw new Refused(path, "has no place: this design file has no " + KeyPath.parent(path));
        }
        block.put(steps.get(steps.size() - 1), word);
    }

    /** Indented JSON, ending in a line feed. */
    static String pretty(JsonNode node) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(node) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
