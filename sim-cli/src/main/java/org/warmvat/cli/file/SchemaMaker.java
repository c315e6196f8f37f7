package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Block;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.keys.Shown;
import org.warmvat.design.keys.Slot;

/** Makes the JSON Schema of the design file from what the design's records say of their keys. */
final class SchemaMaker {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private SchemaMaker() {}

    /** The schema of the whole file. */
    static ObjectNode make() {
        ObjectNode schema = NODES.objectNode().put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Warmvat design file");
        schema.setAll(object(List.of(Block.of(Design.class)), Map.of()));
        return schema;
    }

    /** A block whose keys are those of a record, or of one of several: then only what all of them need is required. */
    private static ObjectNode object(List<Block> variants, Map<String, ?> usual) {
        ObjectNode object = NODES.objectNode().put("type", "object");
        ObjectNode properties = object.putObject("properties");
        Set<String> required = new LinkedHashSet<>();
        for (Block variant : variants) {
            Set<String> own = new LinkedHashSet<>();
            new Keys(properties, own, usual, "", false).add(variant);
            if (variant == variants.get(0)) {
                required.addAll(own);
            }
            required.retainAll(own);
        }
        if (!required.isEmpty()) {
            required.forEach(object.putArray("required")::add);
        }
        return object.put("additionalProperties", false);
    }

    /**
     * The keys of a block being gathered.
     *
     * @param properties takes them
     * @param required takes the names of those that must be there
     * @param usual defaults that win over those of the keys
     * @param when when their defaults hold, in words; empty for always
     * @param optional whether none of them must be there
     */
    private record Keys(
            ObjectNode properties, Set<String> required, Map<String, ?> usual, String when, boolean optional) {

        void add(Block block) {
            for (Slot slot : block.slots()) {
                slot.key().ifPresent(key -> add(slot, key));
            }
        }

        private void add(Slot slot, Key key) {
            if (slot.inline()) {
                inline(slot, key);
                return;
            }
            properties.set(key.name(), described(slot, key, usual.get(key.name()), when));
            if (!key.also().isEmpty()) {
                properties.set(key.also(), described(slot, key, usual.get(key.name()), when));
            }
            boolean absent = slot.optional() || !key.usual().isEmpty() || usual.containsKey(key.name());
            if (!absent && !optional && !key.beside() && key.also().isEmpty()) {
                required.add(key.name());
            }
            if (key.beside()) {
                new Keys(properties, required, Map.of(), key.name() + " absent", true)
                        .add(slot.variants().get(0));
            }
            slot.variants().stream()
                    .filter(variant -> slot.choice() && !variant.words().isEmpty())
                    .forEach(variant -> new Keys(properties, required, usual, chosen(key, variant), true).add(variant));
        }

        private static String chosen(Key key, Block variant) {
            return key.name() + " is " + String.join(" or ", variant.words());
        }

        private void inline(Slot slot, Key key) {
            Map<String, Object> here = new LinkedHashMap<>();
            here.putAll(Reader.tree(key.usual()));
            here.putAll(usual);
            List<Block> variants = slot.variants();
            for (Block variant : variants) {
                boolean first = variant == variants.get(0) && variants.size() > 1;
                new Keys(
                                properties,
                                required,
                                here,
                                first ? others(variants) : when,
                                optional || slot.optional() || variants.size() > 1)
                        .add(variant);
            }
            if (!key.otherwise().isEmpty()) {
                Slot named = variants.get(0).slots().get(0);
                ((ObjectNode) properties.get(named.name())).put("x-otherwise", key.otherwise());
            }
        }

        private static String others(List<Block> variants) {
            Set<String> names = new LinkedHashSet<>();
            variants.stream().skip(1).flatMap(other -> other.slots().stream()).forEach(slot -> names.add(slot.name()));
            names.remove("");
            return String.join(" absent and ", names) + " absent";
        }
    }

    private static ObjectNode described(Slot slot, Key key, Object usualHere, String when) {
        Object usual = usualHere != null ? usualHere : key.usual().isEmpty() ? null : Reader.value(key.usual());
        ObjectNode value =
                held(slot, key, usual instanceof Map<?, ?> map && !slot.choice() ? Reader.texts(map) : Map.of());
        ObjectNode described = NODES.objectNode();
        described.setAll(value);
        described.put("description", key.says());
        if (usual != null) {
            described.set("default", usual instanceof Map && !slot.choice() ? NODES.objectNode() : json(usual));
        }
        put(described, "x-unit", slot.unit());
        put(described, "x-default-when", when);
        put(described, "x-otherwise", key.otherwise());
        return described;
    }

    private static void put(ObjectNode node, String name, String value) {
        if (!value.isEmpty()) {
            node.put(name, value);
        }
    }

    private static ObjectNode held(Slot slot, Key key, Map<String, ?> usual) {
        ObjectNode value = NODES.objectNode();
        boolean texts = slot.type().isRecord() && slot.text();
        if (slot.list() || texts) {
            value.put("type", "array").set("items", texts ? text(key) : value(slot, key, usual));
            if (key.entries() > 0) {
                value.put("minItems", key.entries());
            }
        } else if (slot.map()) {
            value.put("type", "object").set("additionalProperties", value(slot, key, usual, true));
        } else {
            value = value(slot, key, usual);
        }
        return key.word().isEmpty() ? value : either(words(List.of(key.word())), value);
    }

    private static ObjectNode value(Slot slot, Key key, Map<String, ?> usual) {
        return value(slot, key, usual, false);
    }

    private static ObjectNode value(Slot slot, Key key, Map<String, ?> usual, boolean inMap) {
        if (slot.real() || slot.whole()) {
            ObjectNode number = NODES.objectNode().put("type", slot.whole() ? "integer" : "number");
            number.set("minimum", number(slot.bounds().least()));
            number.set("maximum", number(slot.bounds().most()));
            return number;
        }
        if (slot.truth()) {
            ObjectNode truth = NODES.objectNode().put("type", "boolean");
            return slot.text() ? either(words(List.of("off", "on")), truth) : truth;
        }
        if (slot.text()) {
            return text(key);
        }
        if (slot.choice()) {
            return choice(slot, usual);
        }
        if (slot.type().isEnum()) {
            return words(slot.words());
        }
        ObjectNode block = object(slot.variants(), usual);
        if (slot.aboutNumber()) {
            ObjectNode number = NODES.objectNode().put("type", "number");
            number.set("minimum", number(slot.bounds().least()));
            number.set("maximum", number(slot.bounds().most()));
            return either(number, block);
        }
        boolean named = slot.variants().get(0).slots().get(0).key().isEmpty();
        ObjectNode name = NODES.objectNode().put("type", "string").put("x-form", "the name of a material");
        return named && !inMap ? either(name, block) : block;
    }

    private static ObjectNode choice(Slot slot, Map<String, ?> usual) {
        List<String> words = slot.words();
        if (words.contains("true")) {
            return NODES.objectNode().put("type", "boolean");
        }
        List<Block> blocks = slot.variants().stream()
                .filter(variant -> variant.words().isEmpty())
                .toList();
        if (words.isEmpty()) {
            return object(blocks, usual);
        }
        return blocks.isEmpty() ? words(words) : either(words(words), object(blocks, usual));
    }

    private static ObjectNode text(Key key) {
        ObjectNode text = NODES.objectNode().put("type", "string").put("pattern", key.pattern());
        put(text, "x-form", key.form());
        return text;
    }

    private static ObjectNode words(Collection<String> words) {
        ObjectNode node = NODES.objectNode().put("type", "string");
        words.forEach(node.putArray("enum")::add);
        return node;
    }

    private static ObjectNode either(ObjectNode one, ObjectNode other) {
        ObjectNode either = NODES.objectNode();
        either.putArray("anyOf").add(one).add(other);
        return either;
    }

    private static JsonNode number(double value) {
        return NODES.numberNode(new BigDecimal(Shown.number(value)));
    }

    private static JsonNode json(Object usual) {
        if (usual instanceof Number value) {
            return number(value.doubleValue());
        }
        if (usual instanceof List<?> list) {
            return NODES.arrayNode().addAll(list.stream().map(SchemaMaker::json).toList());
        }
        if (usual instanceof Map<?, ?> map) {
            ObjectNode block = NODES.objectNode();
            map.forEach((key, value) -> block.set((String) key, json(value)));
            return block;
        }
        return usual instanceof Boolean truth ? NODES.booleanNode(truth) : NODES.textNode((String) usual);
    }
}
