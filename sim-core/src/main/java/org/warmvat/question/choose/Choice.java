package org.warmvat.question.choose;

import java.util.List;
import java.util.Map;

/**
 * One thing that is to be chosen.
 *
 * @param name the key it sets, or a name of its own
 * @param options what can be bought, at least one; numbers rise
 * @param easing whether a later option never makes the tank short for longer, nor its warm-up longer
 */
public record Choice(String name, List<Option> options, boolean easing) {

    /** Keeps its own list. */
    public Choice {
        options = List.copyOf(options);
        if (options.isEmpty()) {
            throw new IllegalArgumentException(name + " has no options, expected at least one");
        }
    }

    /**
     * What can be bought.
     *
     * @param shown its value or its label
     * @param set numbers and words it gives to keys of the design
     * @param price what it costs
     * @param byAmount whether the price holds for any amount, so that what the design as drawn has is priced by it too
     */
    public record Option(Object shown, Map<String, Object> set, Price price, boolean byAmount) {}

    /** The option of an index. */
    Option at(int index) {
        return options.get(index);
    }

    /** Whether all that it sets stands in a block of the design. */
    boolean isOf(String block) {
        return options.stream()
                .flatMap(option -> option.set().keySet().stream())
                .allMatch(key -> key.startsWith(block + "."));
    }
}
