package org.warmvat.question;

import java.util.Optional;

/**
 * Keeps what the numbered runs of a study gave, so that none need be done twice, be it after a stop or because it was done elsewhere. A
 * run's number says all that tells it from other runs of the study. Asked by many threads, told by one.
 */
public interface Kept {

    /** Keeps nothing. */
    Kept NOTHING = new Kept() {};

    /** What a run gave, bit for bit; empty when it has not been done. */
    default Optional<Figures> of(long run) {
        return Optional.empty();
    }

    /** Keeps what a run gave. */
    default void keep(long run, Figures figures) {}
}
