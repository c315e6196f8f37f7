package org.warmvat.question.advise;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.warmvat.design.Design;

/**
 * Something to do.
 *
 * @param kind what it is about
 * @param about a name, a period or a sentence that belongs to it; empty for none
 * @param amount a number that belongs to it: hours, °C or W; not a number for none
 * @param change what is changed in the design; empty where nothing in it could be
 * @param after what comes of the change; without one what there is
 * @param outlay what it costs once, at the design's prices; absent where they say nothing of it
 */
public record Recommendation(
        Kind kind, String about, double amount, Optional<Change> change, Outcome after, OptionalDouble outlay) {

    /**
     * A changed number of the design.
     *
     * @param key path of its key
     * @param from its value, in the file's unit; absent where there was none
     * @param to its value afterwards; not a number where it is more than one number
     * @param made changes it
     */
    public record Change(String key, OptionalDouble from, double to, UnaryOperator<Design> made) {

        /** The same under another key. */
        Change named(String other) {
            return new Change(other, from, to, made);
        }

        /** A number exchanged. */
        static Change of(Design design, String key, double to) {
            return new Change(key, OptionalDouble.of(design.number(key)), to, changed -> changed.with(key, to));
        }
    }
}
