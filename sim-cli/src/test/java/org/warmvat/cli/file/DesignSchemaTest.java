package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.keys.KeyPath;

/** The schema that is made from the records. */
class DesignSchemaTest {

    @Test
    void isASchemaOfItsDraft() {
        assertTrue(DesignDocument.schema()
                .startsWith("{\n  \"$schema\" : \"https://json-schema.org/draft/2020-12/schema\""));
    }

    @Test
    void everyNumberHasARangeAndEveryKeyADescription() {
        List<String> lacking = new ArrayList<>();
        collect("", FileSchema.DESIGN.root(), lacking);
        assertEquals(List.of(), lacking);
    }

    private static void collect(String path, JsonNode block, List<String> lacking) {
        for (String name : FileSchema.DESIGN.keys(block)) {
            String at = KeyPath.key(path, name);
            JsonNode key = FileSchema.DESIGN.key(block, name);
            String type = key.path("type").asText();
            boolean number = type.equals("number") || type.equals("integer");
            boolean ranged = (key.has("minimum") || key.has("exclusiveMinimum")) && key.has("maximum");
            if (!key.has("description") || (number && !ranged)) {
                lacking.add(at);
            }
            collect(at, FileSchema.DESIGN.entries(key).isMissingNode() ? key : FileSchema.DESIGN.entries(key), lacking);
        }
    }

    @Test
    void everyBlockRefusesUnknownKeys() {
        List<String> open = new ArrayList<>();
        FileSchema.DESIGN.root().findParents("properties").forEach(block -> {
            if (!block.path("additionalProperties").toString().equals("false")) {
                open.add(block.path("properties").toString());
            }
        });
        assertEquals(List.of(), open);
    }

    @Test
    void ownSchemaAcceptsEveryDefault() {
        List<String> refused = new ArrayList<>();
        collectRefusedDefaults("", FileSchema.DESIGN.root(), refused);
        assertEquals(List.of(), refused);
    }

    private static void collectRefusedDefaults(String path, JsonNode block, List<String> refused) {
        for (String name : FileSchema.DESIGN.keys(block)) {
            JsonNode key = FileSchema.DESIGN.key(block, name);
            JsonNode usual = key.path("default");
            if (usual.isNumber()
                    && !key.has("anyOf")
                    && (!(usual.asDouble() <= key.path("maximum").asDouble())
                            || usual.asDouble() < key.path("minimum").asDouble(-1e9))) {
                refused.add(KeyPath.key(path, name));
            }
            collectRefusedDefaults(
                    KeyPath.key(path, name),
                    FileSchema.DESIGN.entries(key).isMissingNode() ? key : FileSchema.DESIGN.entries(key),
                    refused);
        }
    }
}
