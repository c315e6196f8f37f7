package org.warmvat.cli.input;

import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import com.github.victools.jsonschema.module.jackson.JacksonModule;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the schema of the design file from the records that mirror it. */
final class DesignSchemaGenerator {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private DesignSchemaGenerator() {}

    /** The schema as text, ending in a line feed. */
    static String generate() {
        SchemaGeneratorConfigBuilder builder =
                new SchemaGeneratorConfigBuilder(MAPPER, SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON);
        builder.with(new JacksonModule());
        builder.with(Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT, Option.DEFINITIONS_FOR_ALL_OBJECTS);
        builder.without(Option.FLATTENED_OPTIONALS);
        builder.forTypesInGeneral()
                .withPropertySorter((unusedLeft, unusedRight) -> 0)
                .withCustomDefinitionProvider(DesignSchemaGenerator::choice);
        describeFields(builder);
        ObjectNode schema = new SchemaGenerator(builder.build()).generateSchema(DesignFile.class);
        schema.put("title", "Warmvat design file");
        return print(schema);
    }

    private static void describeFields(SchemaGeneratorConfigBuilder builder) {
        builder.forFields()
                .withTargetTypeOverridesResolver(DesignSchemaGenerator::insideOptional)
                .withRequiredCheck(field -> key(field).usual().isEmpty()
                        && !field.getRawMember().getType().equals(Optional.class))
                .withDescriptionResolver(field -> whole(field).map(Key::says).orElse(null))
                .withDefaultResolver(
                        field -> whole(field).map(DesignSchemaGenerator::usual).orElse(null))
                .withNumberInclusiveMinimumResolver(field -> number(key(field).least()))
                .withNumberExclusiveMinimumResolver(field -> number(key(field).above()))
                .withNumberInclusiveMaximumResolver(field -> number(key(field).most()))
                .withArrayMinItemsResolver(field ->
                        whole(field).map(Key::entries).filter(n -> n > 0).orElse(null))
                .withStringPatternResolver(
                        field -> isText(field) && !key(field).pattern().isEmpty()
                                ? key(field).pattern()
                                : null)
                .withInstanceAttributeOverride((node, field, context) -> addOwnAttributes(node, field));
    }

    private static void addOwnAttributes(ObjectNode node, FieldScope field) {
        boolean entry = field.isFakeContainerItemScope();
        Key key = key(field);
        if (isText(field)) {
            put(node, "x-form", key.form());
        }
        if (!entry) {
            put(node, "x-unit", key.unit());
            put(node, "x-default-when", key.when());
            put(node, "x-otherwise", key.otherwise());
        }
    }

    private static void put(ObjectNode node, String name, String value) {
        if (!value.isEmpty()) {
            node.put(name, value);
        }
    }

    private static Key key(FieldScope field) {
        return field.getRawMember().getAnnotation(Key.class);
    }

    private static Optional<Key> whole(FieldScope field) {
        return field.isFakeContainerItemScope() ? Optional.empty() : Optional.of(key(field));
    }

    private static boolean isText(FieldScope field) {
        return field.getType().getErasedType() == String.class;
    }

    /** An absent key is left out, never written as null: an optional value has the type of what it holds. */
    private static List<ResolvedType> insideOptional(FieldScope field) {
        ResolvedType type = field.getType();
        return type.getErasedType() == Optional.class ? type.getTypeParameters() : null;
    }

    private static BigDecimal number(double value) {
        return Double.isNaN(value) ? null : new BigDecimal(Faults.number(value));
    }

    private static JsonNode usual(Key key) {
        try {
            return key.usual().isEmpty() ? null : MAPPER.readTree(key.usual());
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode word(Class<?> words) {
        ObjectNode word = MAPPER.createObjectNode().put("type", "string");
        ArrayNode allowed = word.putArray("enum");
        for (Object constant : words.getEnumConstants()) {
            allowed.add(((Enum<?>) constant).name().toLowerCase(Locale.ROOT));
        }
        return word;
    }

    /** Words in lower case, and the two types that are either a word or a block. */
    private static CustomDefinition choice(ResolvedType type, SchemaGenerationContext context) {
        if (type.getErasedType() == Map.class) {
            ObjectNode map = MAPPER.createObjectNode().put("type", "object");
            map.set(
                    "additionalProperties",
                    context.createDefinitionReference(context.getTypeContext().resolve(MaterialKeys.class)));
            return new CustomDefinition(map, true);
        }
        if (type.getErasedType().isEnum()) {
            return new CustomDefinition(word(type.getErasedType()), true);
        }
        if (type.getErasedType() == TemperatureChoice.class) {
            ObjectNode word = word(TemperatureChoice.Word.class);
            return choice(word, TemperatureChoice.FixedKeys.class, context);
        }
        if (type.getErasedType() == MaterialChoice.class) {
            ObjectNode name = MAPPER.createObjectNode().put("type", "string").put("x-form", "the name of a material");
            return choice(name, MaterialKeys.class, context);
        }
        return null;
    }

    private static CustomDefinition choice(ObjectNode word, Class<?> block, SchemaGenerationContext context) {
        ObjectNode either = MAPPER.createObjectNode();
        either.putArray("anyOf")
                .add(word)
                .add(context.createDefinitionReference(context.getTypeContext().resolve(block)));
        return new CustomDefinition(
                either, CustomDefinition.DefinitionType.STANDARD, CustomDefinition.EXCLUDING_ATTRIBUTES);
    }

    private static String print(ObjectNode schema) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
