package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Shown;
import org.warmvat.spelling.Nearest;

/** Holds a tree against the schema and says every difference in our words. */
final class SchemaCheck {

    private final FileSchema schema;
    private final Faults faults;
    private final JsonNode tree;

    private SchemaCheck(FileSchema schema, JsonNode tree, Faults faults) {
        this.schema = schema;
        this.tree = tree;
        this.faults = faults;
    }

    /** Adds every fault of a tree. */
    static void run(FileSchema schema, JsonNode tree, Faults faults) {
        SchemaCheck check = new SchemaCheck(schema, tree, faults);
        schema.validate(tree).forEach(check::add);
    }

    private void add(Error error) {
        String path = path(error.getInstanceLocation());
        if (faults.isFaulty(path)) {
            return;
        }
        JsonNode place = schemaAt(error.getInstanceLocation());
        switch (error.getKeyword()) {
            case "required" -> addMissing(path, error.getProperty(), place);
            case "additionalProperties" -> addUnknown(path, error.getProperty(), place);
            default -> addWrong(path, valueAt(error.getInstanceLocation()), place, error);
        }
    }

    private void addMissing(String path, String key, JsonNode place) {
        JsonNode block = schema.key(place, key);
        faults.add(KeyPath.key(path, key), "is missing, expected " + Expectation.of(schema, block));
    }

    private void addUnknown(String path, String key, JsonNode place) {
        faults.add(KeyPath.key(path, key), () -> "is not a known key, " + hint(path, key, place));
    }

    private String hint(String path, String key, JsonNode place) {
        List<String> known = schema.keys(place);
        Optional<String> nearest = Nearest.of(key, known).map(near -> KeyPath.key(path, near));
        if (nearest.isPresent()) {
            return "did you mean " + nearest.get() + "?";
        }
        Set<String> elsewhere = schema.pathsOf(key);
        return elsewhere.isEmpty()
                ? "known here: " + String.join(", ", known)
                : "did you mean " + String.join(" or ", elsewhere) + "?";
    }

    /** A choice reports the faults of all its branches: of a block only those of the block's branch count. */
    @SuppressWarnings("ReferenceEquality") // whether a branch was found: the very same node otherwise
    private void addWrong(String path, JsonNode value, JsonNode place, Error error) {
        JsonNode resolved = schema.resolved(place);
        boolean wordForChoice = resolved.has("anyOf") && !value.isObject();
        boolean otherBranch = resolved.has("anyOf") && value.isObject();
        if (otherBranch && schema.blockOf(place) != resolved && isAboutType(error)) {
            return;
        }
        faults.add(path, found(value) + ", expected " + Expectation.of(schema, wordForChoice ? resolved : place));
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

    private JsonNode schemaAt(NodePath location) {
        JsonNode at = schema.root();
        for (Object step : steps(location)) {
            at = step instanceof Integer ? schema.entries(at) : schema.key(at, step.toString());
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
