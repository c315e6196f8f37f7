package org.warmvat.question;

import java.util.Optional;

/**
 * Keeps what the numbered runs of a study gave, so that none need be done twice, be it after a stop or because it was done elsewhere. A
 * run's number says all that tells it from other runs of the study. Asked by many threads, told by one.
 */
public interface Kept {

    /** Keeps nothing. */
    Kept NOTHING = new Kept() {
        @Override
        public Optional<Figures> of(long run) {
            return Optional.empty();
        }

        @Override
        public void keep(long run, Figures figures) {
            // nothing is kept
        }
    };

    /** What a run gave, bit for bit; empty when it has not been done. */
    Optional<Figures> of(long run);

    /** Keeps what a run gave. */
    void keep(long run, Figures figures);
}
