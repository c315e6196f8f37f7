package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Nearest;
import org.warmvat.design.keys.Shown;

/** Holds a tree against the schema and says every difference in our words. */
final class SchemaCheck {

    private final Faults faults;
    private final JsonNode tree;

    private SchemaCheck(JsonNode tree, Faults faults) {
        this.tree = tree;
        this.faults = faults;
    }

    /** Adds every fault of a tree. */
    static void run(JsonNode tree, Faults faults) {
        SchemaCheck check = new SchemaCheck(tree, faults);
        DesignSchema.validate(tree).forEach(check::add);
    }

    private void add(Error error) {
        String path = path(error.getInstanceLocation());
        if (faults.isFaulty(path)) {
            return;
        }
        JsonNode schema = schemaAt(error.getInstanceLocation());
        switch (error.getKeyword()) {
            case "required" -> addMissing(path, error.getProperty(), schema);
            case "additionalProperties" -> addUnknown(path, error.getProperty(), schema);
            default -> addWrong(path, valueAt(error.getInstanceLocation()), schema, error);
        }
    }

    private void addMissing(String path, String key, JsonNode schema) {
        JsonNode block = DesignSchema.key(schema, key);
        faults.add(KeyPath.key(path, key), "is missing, expected " + Expectation.of(block));
    }

    private void addUnknown(String path, String key, JsonNode schema) {
        faults.add(KeyPath.key(path, key), () -> "is not a known key, " + hint(path, key, schema));
    }

    private static String hint(String path, String key, JsonNode schema) {
        List<String> known = DesignSchema.keys(schema);
        Optional<String> nearest = Nearest.of(key, known).map(near -> KeyPath.key(path, near));
        if (nearest.isPresent()) {
            return "did you mean " + nearest.get() + "?";
        }
        Set<String> elsewhere = DesignSchema.pathsOf(key);
        return elsewhere.isEmpty()
                ? "known here: " + String.join(", ", known)
                : "did you mean " + String.join(" or ", elsewhere) + "?";
    }

    /** A choice reports the faults of all its branches: of a block only those of the block's branch count. */
    @SuppressWarnings("ReferenceEquality") // whether a branch was found: the very same node otherwise
    private void addWrong(String path, JsonNode value, JsonNode schema, Error error) {
        JsonNode resolved = DesignSchema.resolved(schema);
        boolean wordForChoice = resolved.has("anyOf") && !value.isObject();
        boolean otherBranch = resolved.has("anyOf") && value.isObject();
        if (otherBranch && DesignSchema.blockOf(schema) != resolved && isAboutType(error)) {
            return;
        }
        faults.add(path, found(value) + ", expected " + Expectation.of(wordForChoice ? resolved : schema));
    }

    private static boolean isAboutType(Error error) {
        return Set.of("type", "enum", "anyOf", "const").contains(error.getKeyword());
    }

    private static String found(JsonNode value) {
        if (value.isTextual()) {
            return Shown.quoted(value.textValue());
        }
        if (value.isNumber()) {
            return Shown.number(value.doubleValue());
        }
        return value.isNull()
                ? "is empty"
                : value.isArray() ? "is a list" + size(value) : value.isObject() ? "is a block" : value.toString();
    }

    private static String size(JsonNode list) {
        return list.isEmpty() ? " without entries" : "";
    }

    private static List<Object> steps(NodePath location) {
        List<Object> steps = new ArrayList<>();
        for (int i = 0; i < location.getNameCount(); i++) {
            steps.add(location.getElement(i));
        }
        return steps;
    }

    private static String path(NodePath location) {
        String path = "";
        for (Object step : steps(location)) {
            path = step instanceof Integer index ? KeyPath.entry(path, index) : KeyPath.key(path, step.toString());
        }
        return path;
    }

    private static JsonNode schemaAt(NodePath location) {
        JsonNode at = DesignSchema.root();
        for (Object step : steps(location)) {
            at = step instanceof Integer ? DesignSchema.entries(at) : DesignSchema.key(at, step.toString());
        }
        return at;
    }

    private JsonNode valueAt(NodePath location) {
        JsonNode at = tree;
        for (Object step : steps(location)) {
            at = step instanceof Integer index ? at.path(index) : at.path(step.toString());
        }
        return at;
    }
}
