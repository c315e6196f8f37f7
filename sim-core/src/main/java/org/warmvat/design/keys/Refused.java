package org.warmvat.design.keys;

import java.util.List;
import java.util.stream.Collectors;

/** A record of a design was refused at birth, or a number of it when it was to be exchanged. */
public class Refused extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /**
     * One thing that is wrong.
     *
     * @param key path of the key
     * @param text what was found and what was expected
     * @param restsOn other blocks of the file the judgement rests on
     */
    public record Fault(String key, String text, List<String> restsOn) {

        @Override
        public String toString() {
            return key.isEmpty() ? text : key + " " + text;
        }

        private Fault in(String block) {
            String path = key.isEmpty() ? block : key.startsWith("[") ? block + key : KeyPath.key(block, key);
            return new Fault(path, text, restsOn);
        }
    }

    /** A path leads to no number of a design. */
    public static final class NoNumber extends Refused {

        private static final long serialVersionUID = 1L;

        /** Refuses a path. */
        public NoNumber(String path, String text) {
            super(path, text);
        }
    }

    /** Refuses for several faults. */
    public Refused(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("; ")));
        this.faults = List.copyOf(faults);
    }

    /** Refuses for one fault of a key. */
    public Refused(String key, String text) {
        this(List.of(new Fault(key, text, List.of())));
    }

    /** What is wrong, at least one. */
    public List<Fault> faults() {
        return faults;
    }

    /** The same with the keys' paths led on from a block. */
    Refused in(String block) {
        return block.isEmpty()
                ? this
                : new Refused(faults.stream().map(fault -> fault.in(block)).toList());
    }
}
