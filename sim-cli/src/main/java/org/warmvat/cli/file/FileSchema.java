package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.keyword.KeywordType;
import com.networknt.schema.vocabulary.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.warmvat.design.keys.KeyPath;

/** The JSON Schema of a kind of file: as text, as a tree to look keys up in, and as a validator. */
final class FileSchema {

    /** That of the design file. */
    static final FileSchema DESIGN = new FileSchema(SchemaMaker.make());

    private final JsonNode root;
    private Schema validator;

    FileSchema(JsonNode root) {
        this.root = root;
    }

    /** One that is shipped with the program. */
    static FileSchema shipped(String resource) {
        return new FileSchema(
                FileTree.read(resource, SourceText.shipped(resource)).keys());
    }

    /** The schema as text, ending in a line feed. */
    String text() {
        return PlainTree.pretty(root);
    }

    JsonNode root() {
        return root;
    }

    List<Error> validate(JsonNode tree) {
        return validator().validate(tree);
    }

    /** A schema node with its reference followed; of a choice the block, which alone has keys. */
    JsonNode resolved(JsonNode node) {
        String reference = node.path("$ref").asText();
        return reference.isEmpty() ? node : root.at(reference.substring(1));
    }

    /** The block among the alternatives of a choice, or the node itself. */
    JsonNode blockOf(JsonNode node) {
        JsonNode at = resolved(node);
        for (JsonNode branch : at.path("anyOf")) {
            if (resolved(branch).has("properties")) {
                return resolved(branch);
            }
        }
        return at;
    }

    /** What the schema says about a key of a block; a missing node where it knows none. Attributes beside a reference stay beside it. */
    JsonNode key(JsonNode block, String name) {
        JsonNode at = blockOf(block);
        JsonNode property = at.path("properties").path(name);
        JsonNode free = at.path("additionalProperties");
        return property.isMissingNode() && free.isObject() ? free : property;
    }

    /** What the schema says about the key at a path; a missing node where it knows none. */
    JsonNode at(String path) {
        JsonNode at = root;
        for (String step : KeyPath.steps(path)) {
            at = step.startsWith("[") ? entries(at) : key(at, step);
        }
        return at;
    }

    /** What the schema says about the entries of a list. */
    JsonNode entries(JsonNode list) {
        return resolved(list).path("items");
    }

    /** Names of the keys of a block. */
    List<String> keys(JsonNode block) {
        List<String> names = new ArrayList<>();
        blockOf(block).path("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** Paths of all keys with this name, anywhere in the file; entries of lists are written {@code []}. */
    Set<String> pathsOf(String name) {
        Set<String> paths = new TreeSet<>();
        collect(root, "", name, paths);
        return paths;
    }

    private void collect(JsonNode block, String path, String name, Set<String> paths) {
        for (String key : keys(block)) {
            String at = KeyPath.key(path, key);
            if (key.equals(name)) {
                paths.add(at);
            }
            JsonNode property = key(block, key);
            JsonNode items = entries(property);
            collect(items.isMissingNode() ? property : items, items.isMissingNode() ? at : at + "[]", name, paths);
        }
    }

    /** Made when first asked for: printing the schema needs none. */
    private synchronized Schema validator() {
        if (validator == null) {
            validator = SchemaRegistry.withDialect(dialect()).getSchema(withPatternsForWords(root.deepCopy()));
        }
        return validator;
    }

    /** All keywords of JSON Schema; no formats of text such as addresses and times, of which our schemas have none. */
    private static Dialect dialect() {
        SpecificationVersion version = SpecificationVersion.DRAFT_2020_12;
        return Dialect.builder(version.getDialectId())
                .specificationVersion(version)
                .keywords(KeywordType.getKeywords(version))
                .vocabulary(Vocabulary.DRAFT_2020_12_CORE.getId())
                .vocabulary(Vocabulary.DRAFT_2020_12_APPLICATOR.getId())
                .vocabulary(Vocabulary.DRAFT_2020_12_VALIDATION.getId())
                .build();
    }

    /**
     * Says lists of allowed words as patterns: it means the same, and spares the start of the whole JSON library, 0.2 s of processor
     * time, which the validator's list of words would need to print itself.
     */
    private static JsonNode withPatternsForWords(JsonNode schema) {
        if (schema instanceof ObjectNode block && block.path("enum").isArray()) {
            List<String> words = new ArrayList<>();
            block.remove("enum").forEach(word -> words.add(word.textValue().replaceAll("[|.]", "[$0]")));
            block.put("pattern", "^(" + String.join("|", words) + ")$");
        }
        schema.forEach(FileSchema::withPatternsForWords);
        return schema;
    }
}
