package org.warmvat.cli.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The shipped schema is the one the records make. To make it anew after a change of the records:
 * {@code mvn -pl sim-cli -am test -Dtest=DesignSchemaTest -Dsurefire.failIfNoSpecifiedTests=false -Dregenerate=true}, then once more without.
 */
class DesignSchemaTest {

    private static final Path FILE = Path.of("src/main/resources/org/warmvat/cli/input", DesignSchema.RESOURCE);

    @Test
    void fileAndRecordsAgree() throws IOException {
        String made = DesignSchemaGenerator.generate();
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(FILE, made, StandardCharsets.UTF_8);
        }
        assertEquals(made, Files.readString(FILE, StandardCharsets.UTF_8));
    }

    @Test
    void isPrintedAsItIsShipped() throws IOException {
        assertEquals(Files.readString(FILE, StandardCharsets.UTF_8), DesignDocument.schema());
        assertTrue(DesignDocument.schema()
                .startsWith("{\n  \"$schema\" : \"https://json-schema.org/draft/2020-12/schema\""));
    }

    @Test
    void everyNumberHasARangeAndEveryKeyADescription() {
        List<String> lacking = new ArrayList<>();
        collect("", DesignSchema.root(), lacking);
        assertEquals(List.of(), lacking);
    }

    private static void collect(String path, JsonNode block, List<String> lacking) {
        for (String name : DesignSchema.keys(block)) {
            String at = KeyPath.key(path, name);
            JsonNode key = DesignSchema.key(block, name);
            String type = key.path("type").asText();
            boolean number = type.equals("number") || type.equals("integer");
            boolean ranged = (key.has("minimum") || key.has("exclusiveMinimum")) && key.has("maximum");
            if (!key.has("description") || (number && !ranged)) {
                lacking.add(at);
            }
            collect(at, DesignSchema.entries(key).isMissingNode() ? key : DesignSchema.entries(key), lacking);
        }
    }

    @Test
    void everyBlockRefusesUnknownKeys() {
        DesignSchema.root().path("$defs").properties().forEach(definition -> {
            if (definition.getValue().has("properties")) {
                assertEquals(
                        "false",
                        definition.getValue().path("additionalProperties").toString(),
                        definition.getKey());
            }
        });
        assertFalse(DesignSchema.root().path("additionalProperties").asBoolean(true));
    }

    @Test
    void ownSchemaAcceptsEveryDefault() {
        List<String> refused = new ArrayList<>();
        collectRefusedDefaults("", DesignSchema.root(), refused);
        assertEquals(List.of(), refused);
    }

    private static void collectRefusedDefaults(String path, JsonNode block, List<String> refused) {
        for (String name : DesignSchema.keys(block)) {
            JsonNode key = DesignSchema.key(block, name);
            JsonNode usual = key.path("default");
            if (usual.isNumber()
                    && (!(usual.asDouble() <= key.path("maximum").asDouble())
                            || usual.asDouble() < key.path("minimum").asDouble(-1e9))) {
                refused.add(KeyPath.key(path, name));
            }
            collectRefusedDefaults(
                    KeyPath.key(path, name),
                    DesignSchema.entries(key).isMissingNode() ? key : DesignSchema.entries(key),
                    refused);
        }
    }
}
