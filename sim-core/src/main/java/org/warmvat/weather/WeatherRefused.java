package org.warmvat.weather;

import java.util.List;

/** A weather file (or a file that describes one) that cannot be used, with everything found wrong, up to 20 faults. */
public final class WeatherRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    /** With the faults in the file's order; at least one. */
    public WeatherRefused(List<String> faults) {
        super(String.join("\n", faults));
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("refused without a fault");
        }
        this.faults = List.copyOf(faults);
    }

    /** With a single fault. */
    public WeatherRefused(String fault) {
        this(List.of(fault));
    }

    /** Whole sentences: file, line, what was found, what is allowed. */
    public List<String> faults() {
        return faults;
    }
}
