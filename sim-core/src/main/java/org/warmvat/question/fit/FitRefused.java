package org.warmvat.question.fit;

import java.util.List;

/** A log from which the tank cannot be found; every reason is a whole sentence and says what is needed. */
public final class FitRefused extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    /** Refuses for some reasons. */
    public FitRefused(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** The reasons. */
    public List<String> faults() {
        return faults;
    }
}
