package org.warmvat.cli.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Fills absent keys with the schema's defaults and says each that was used. */
final class Defaults {

    private final List<String> assumed = new ArrayList<>();

    private Defaults() {}

    /**
     * Fills a tree in place.
     *
     * @param tree a design as written
     * @return one sentence for each default that was used, in the order of the schema
     */
    static List<String> fill(ObjectNode tree) {
        Defaults defaults = new Defaults();
        defaults.fill("", tree, DesignSchema.root());
        return defaults.assumed;
    }

    private void fill(String path, JsonNode value, JsonNode schema) {
        if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                fill(KeyPath.entry(path, i), value.get(i), DesignSchema.entries(schema));
            }
        } else if (value instanceof ObjectNode block) {
            for (String key : DesignSchema.keys(schema)) {
                fillKey(KeyPath.key(path, key), block, key, DesignSchema.key(schema, key));
            }
        }
    }

    private void fillKey(String path, ObjectNode block, String key, JsonNode schema) {
        boolean given = block.has(key);
        if (!given && holds(schema.path("x-default-when").asText(), block)) {
            JsonNode usual = schema.path("default");
            if (!usual.isMissingNode()) {
                block.set(key, usual.deepCopy());
            }
            tell(path, usual, schema);
        }
        if (block.has(key)) {
            fill(path, block.get(key), schema);
        }
    }

    private void tell(String path, JsonNode usual, JsonNode schema) {
        String otherwise = schema.path("x-otherwise").asText();
        boolean emptyBlock = usual.isObject() && usual.isEmpty();
        if (!otherwise.isEmpty()) {
            assumed.add(path + " not given: " + otherwise);
        } else if (!usual.isMissingNode() && !emptyBlock) {
            String unit = schema.path("x-unit").asText();
            assumed.add(path + " not given: " + words(usual) + (unit.isEmpty() ? "" : " " + unit));
        }
    }

    /** A default in words: numbers plain, lists by their entries, blocks by their keys. */
    static String words(JsonNode value) {
        if (value.isNumber()) {
            return Faults.number(value.doubleValue());
        }
        List<String> parts = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(entry -> parts.add(words(entry)));
            return parts.isEmpty() ? "none" : String.join("; ", parts);
        }
        if (value.isObject()) {
            value.properties().forEach(entry -> parts.add(entry.getKey() + " " + words(entry.getValue())));
            return String.join(", ", parts);
        }
        return value.asText();
    }

    /** Whether the terms of {@link Key#when()} hold in a block whose earlier keys are filled. */
    private static boolean holds(String when, ObjectNode block) {
        if (when.isEmpty()) {
            return true;
        }
        for (String term : when.split(" and ")) {
            String[] words = term.split(" ");
            boolean holds = words[1].equals("absent")
                    ? !block.has(words[0])
                    : block.path(words[0]).asText().equals(words[words.length - 1]) != words[2].equals("not");
            if (!holds) {
                return false;
            }
        }
        return true;
    }
}
