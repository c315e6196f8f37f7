package org.warmvat.cli.input;

import com.fasterxml.jackson.databind.JsonNode;

/** A material by its name or by its own numbers. */
sealed interface MaterialChoice {

    /** A name of the table or of the block {@code materials}. */
    record Named(String name) implements MaterialChoice {}

    /** Numbers that stand in its place. */
    record Own(MaterialKeys numbers) implements MaterialChoice {}

    /** The choice a value stands for: a text is a name, a block its numbers. */
    static MaterialChoice of(JsonNode node) {
        return node.isTextual() ? new Named(node.textValue()) : new Own(RecordBinder.bind(node, MaterialKeys.class));
    }
}
