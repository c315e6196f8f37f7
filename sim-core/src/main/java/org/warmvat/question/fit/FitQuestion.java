package org.warmvat.question.fit;

import java.util.List;

/**
 * What is to be found.
 *
 * @param factors which factors
 * @param asked whether they were asked for by name; without, capacity is held where the log cannot tell it from the envelope
 */
public record FitQuestion(List<Factor> factors, boolean asked) {

    /** Envelope and capacity, or envelope alone. */
    public static final FitQuestion USUAL = new FitQuestion(List.of(Factor.ENVELOPE, Factor.CAPACITY), false);

    /** Copies. */
    public FitQuestion {
        factors = List.copyOf(factors);
    }
}
