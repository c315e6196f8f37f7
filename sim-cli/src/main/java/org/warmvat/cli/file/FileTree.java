package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A file of keys, YAML or JSON, on its way to what it says.
 *
 * @param keys what stands in it
 * @param faults takes what is wrong with it, and knows the lines
 */
record FileTree(ObjectNode keys, Faults faults) {

    /** Blocks inside blocks a file may have; more than any design needs. */
    static final int DEEPEST = 20;

    /**
     * Reads a text.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @throws InputRefused when it is no tree of keys
     */
    static FileTree read(String name, String text) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(name, lines);
        ObjectNode keys =
                name.endsWith(".json") ? JsonText.read(text, lines, faults) : YamlText.read(text, lines, faults);
        faults.refuseIfAny();
        return new FileTree(keys, faults);
    }

    /**
     * The same when its schema allows it.
     *
     * @throws InputRefused with every fault that the schema finds, up to twenty
     */
    FileTree checked(FileSchema schema) {
        judged(schema);
        faults.refuseIfAny();
        return this;
    }

    /** The same with what the schema finds among its faults, for those who go on looking for more. */
    FileTree judged(FileSchema schema) {
        SchemaCheck.run(schema, keys, faults);
        return this;
    }

    /** A number of a block that may be absent. */
    static OptionalDouble number(JsonNode block, String key) {
        return block.has(key) ? OptionalDouble.of(block.path(key).asDouble()) : OptionalDouble.empty();
    }
}
