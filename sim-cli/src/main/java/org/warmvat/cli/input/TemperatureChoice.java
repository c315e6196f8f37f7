package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import org.warmvat.design.FeedTemperature;

/** How warm a stream is fed: {@code air}, {@code ground}, {@code room} or {@code {fixed_c: 12}}. */
record TemperatureChoice(FeedTemperature temperature) {

    /** The block of a fixed temperature. */
    record FixedKeys(
            @JsonProperty("fixed_c") @Key(says = "Always this warm", unit = "C", least = -40, most = 100)
            double fixedC) {}

    /** The words that may stand in its place. */
    enum Word {
        AIR,
        GROUND,
        ROOM
    }

    /** The choice a value stands for. */
    static TemperatureChoice of(JsonNode node) {
        if (node.isObject()) {
            return new TemperatureChoice(
                    new FeedTemperature.Fixed(node.path("fixed_c").doubleValue()));
        }
        return new TemperatureChoice(
                switch (node.textValue()) {
                    case "air" -> new FeedTemperature.Air();
                    case "ground" -> new FeedTemperature.Ground();
                    case "room" -> new FeedTemperature.Room();
                    default -> throw new IllegalArgumentException("temperature " + node);
                });
    }

    boolean isRoom() {
        return temperature instanceof FeedTemperature.Room;
    }
}
