package org.warmvat.cli.input;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is left of a faulty tree without its faulty keys, so that the rest can still be judged in the same go. */
final class SoundPart {

    /** Passes as a name and as a time of day. */
    private static final String ANY_TEXT = "00:00";

    private final Faults faults;

    private SoundPart(Faults faults) {
        this.faults = faults;
    }

    /**
     * The tree without faulty keys, its required numbers filled with allowed ones.
     *
     * @return empty where the rest is still no design
     */
    static Optional<ObjectNode> of(ObjectNode tree, Faults faults) {
        ObjectNode sound = tree.deepCopy();
        new SoundPart(faults).prune("", sound, DesignSchema.root());
        if (!DesignSchema.validate(sound).isEmpty()) {
            return Optional.empty();
        }
        Defaults.fill(sound);
        return Optional.of(sound);
    }

    private void prune(String path, JsonNode value, JsonNode schema) {
        if (value instanceof ObjectNode block) {
            List<String> faulty = new ArrayList<>();
            for (Map.Entry<String, JsonNode> entry : block.properties()) {
                String at = KeyPath.key(path, entry.getKey());
                if (faults.isFaulty(at)) {
                    faulty.add(entry.getKey());
                } else {
                    prune(at, entry.getValue(), DesignSchema.key(schema, entry.getKey()));
                }
            }
            block.remove(faulty);
            fillRequired(block, DesignSchema.blockOf(schema));
        } else if (value instanceof ArrayNode list) {
            for (int i = list.size() - 1; i >= 0; i--) {
                String at = KeyPath.entry(path, i);
                if (faults.isFaulty(at)) {
                    list.remove(i);
                } else {
                    prune(at, list.get(i), DesignSchema.entries(schema));
                }
            }
        }
    }

    private static void fillRequired(ObjectNode block, JsonNode schema) {
        for (JsonNode key : schema.path("required")) {
            JsonNode property = schema.path("properties").path(key.asText());
            if (!block.has(key.asText()) && property.has("maximum")) {
                block.set(
                        key.asText(),
                        DoubleNode.valueOf(property.path("maximum").doubleValue()));
            } else if (!block.has(key.asText())
                    && property.path("type").asText().equals("string")) {
                block.put(key.asText(), ANY_TEXT);
            }
        }
    }
}
