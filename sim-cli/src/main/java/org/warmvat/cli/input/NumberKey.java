package org.warmvat.cli.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.weather.file.Nearest;

/** A number of a design addressed by its path. */
final class NumberKey {

    private final String document;
    private final String path;
    private final List<String> steps;

    NumberKey(String document, String path) {
        this.document = document;
        this.path = path;
        try {
            this.steps = bracketed(KeyPath.steps(path));
        } catch (IllegalArgumentException e) {
            throw new InputRefused(List.of(document + ": " + e.getMessage()));
        }
    }

    /** A list's entry may also be named after a dot: {@code envelope.wall.pir_foam} is {@code envelope.wall[pir_foam]}. */
    private static List<String> bracketed(List<String> steps) {
        List<String> bracketed = new ArrayList<>();
        JsonNode at = DesignSchema.root();
        for (String step : steps) {
            JsonNode entry = DesignSchema.entries(at);
            boolean named = !entry.isMissingNode() && !step.startsWith("[");
            bracketed.add(named ? "[" + step + "]" : step);
            at = named || step.startsWith("[") ? entry : DesignSchema.key(at, step);
        }
        return bracketed;
    }

    /** Adds the paths of all numbers below a value. */
    static void collect(String at, JsonNode value, List<String> paths) {
        if (value.isNumber()) {
            paths.add(at);
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                collect(KeyPath.entry(at, i), value.get(i), paths);
            }
        } else {
            value.properties().forEach(entry -> collect(KeyPath.key(at, entry.getKey()), entry.getValue(), paths));
        }
    }

    /** The path with each entry of a list by its place, counted from 0; the path itself where there is no such entry. */
    String placed(ObjectNode filled) {
        String placed = "";
        JsonNode at = filled;
        for (String step : steps) {
            Optional<Integer> index = step.startsWith("[") ? entry(at, step) : Optional.empty();
            placed = index.isPresent() ? KeyPath.entry(placed, index.get()) : KeyPath.key(placed, step);
            at = index.isPresent() ? at.path(index.get()) : at.path(step);
        }
        return placed;
    }

    /** The number in a tree that has its defaults. */
    double in(ObjectNode filled) {
        JsonNode value = descend(filled, steps);
        if (!value.isNumber()) {
            throw refused(schema().isMissingNode() ? unknown() : "is no number in this design");
        }
        return value.doubleValue();
    }

    /**
     * Puts a number in its place.
     *
     * @param written the keys as written: blocks that only defaults made are made here too
     * @param filled the same with defaults, which says which blocks there are
     */
    void set(ObjectNode written, ObjectNode filled, double value) {
        JsonNode schema = DesignSchema.resolved(schema());
        String type = schema.path("type").asText();
        if (!type.equals("number") && !type.equals("integer")) {
            throw refused(schema.isMissingNode() ? unknown() : "is no number, expected the path of one");
        }
        List<String> above = steps.subList(0, steps.size() - 1);
        if (!(descend(filled, above) instanceof ObjectNode)) {
            throw refused("has no place: this design has no " + blockPath());
        }
        if (!Double.isFinite(value)) {
            throw refused(value + ", expected a finite number");
        }
        boolean whole = type.equals("integer") && value == Math.rint(value);
        ObjectNode block = (ObjectNode) make(written, filled, above);
        block.set(steps.get(steps.size() - 1), whole ? LongNode.valueOf((long) value) : DoubleNode.valueOf(value));
    }

    private String blockPath() {
        return KeyPath.parent(path);
    }

    private static JsonNode descend(JsonNode from, List<String> steps) {
        JsonNode at = from;
        for (String step : steps) {
            at = step.startsWith("[") ? entry(at, step).map(at::path).orElse(at.path(-1)) : at.path(step);
        }
        return at;
    }

    /** Walks down the written keys and copies from the filled ones what is not there yet. */
    private static JsonNode make(ObjectNode written, ObjectNode filled, List<String> steps) {
        JsonNode at = written;
        JsonNode full = filled;
        for (String step : steps) {
            if (step.startsWith("[")) {
                int index = entry(full, step).orElseThrow();
                at = at.path(index);
                full = full.path(index);
                continue;
            }
            full = full.path(step);
            if (!at.has(step)) {
                // a list that comes from a default is taken over whole, a block starts empty and keeps its other
                // defaults
                ((ObjectNode) at).set(step, full.isArray() ? full.deepCopy() : ((ObjectNode) at).objectNode());
            }
            at = at.path(step);
        }
        return at;
    }

    /** The place of an entry: {@code [1]}, or the first whose material or name is in the brackets. */
    private static Optional<Integer> entry(JsonNode list, String step) {
        String inside = step.substring(1, step.length() - 1);
        if (!(list instanceof ArrayNode)) {
            return Optional.empty();
        }
        if (inside.matches("[0-9]{1,6}")) {
            int index = Integer.parseInt(inside);
            return index < list.size() ? Optional.of(index) : Optional.empty();
        }
        for (int i = 0; i < list.size(); i++) {
            JsonNode candidate = list.get(i);
            if (candidate.path("material").asText().equals(inside)
                    || candidate.path("name").asText().equals(inside)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private JsonNode schema() {
        StringBuilder full = new StringBuilder();
        steps.forEach(step ->
                full.append(full.isEmpty() || step.startsWith("[") ? "" : ".").append(step));
        return DesignSchema.at(full.toString());
    }

    private String unknown() {
        List<String> names = new ArrayList<>();
        JsonNode at = DesignSchema.root();
        String parent = "";
        for (String step : steps) {
            JsonNode next = step.startsWith("[") ? DesignSchema.entries(at) : DesignSchema.key(at, step);
            if (next.isMissingNode()) {
                names = DesignSchema.keys(at);
                Optional<String> nearest = Nearest.of(step, names);
                String block = parent;
                return "is not a known key, "
                        + nearest.map(near -> "did you mean " + KeyPath.key(block, near) + "?")
                                .orElse("known here: " + String.join(", ", names));
            }
            parent = step.startsWith("[") ? parent + step : KeyPath.key(parent, step);
            at = next;
        }
        return "is not a known key";
    }

    private InputRefused refused(String fact) {
        return new InputRefused(List.of(document + ": " + path + " " + fact));
    }
}
