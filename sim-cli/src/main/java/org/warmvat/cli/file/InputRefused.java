package org.warmvat.cli.file;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.warmvat.spelling.Nearest;

/** An input file was refused; nothing was computed. */
public final class InputRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    /**
     * Refuses an input.
     *
     * @param faults what is wrong, one line each, with place, fact and expectation; at least one
     */
    public InputRefused(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** Refuses an input for one thing. */
    public InputRefused(String fault) {
        this(List.of(fault));
    }

    /** Refuses where anything was found. */
    public static void ifAny(List<String> faults) {
        if (!faults.isEmpty()) {
            throw new InputRefused(faults);
        }
    }

    /** What is wrong, one line each, in the order of the file. */
    public List<String> faults() {
        return faults;
    }

    /** The known word nearest to a wrong one, if any is near. */
    public static Optional<String> nearest(String word, Collection<String> known) {
        return Nearest.of(word, known);
    }
}
