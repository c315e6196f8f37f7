package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** A material by its name or by its own numbers. */
sealed interface MaterialChoice {

    /** A name of the table or of the block {@code materials}. */
    record Named(String name) implements MaterialChoice {}

    /** Numbers that stand in its place. */
    record Own(MaterialKeys numbers) implements MaterialChoice {}

    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    static MaterialChoice of(JsonNode node) {
        return node.isTextual()
                ? new Named(node.textValue())
                : new Own(new ObjectMapper().convertValue(node, MaterialKeys.class));
    }
}
