package org.warmvat.question.spread;

/** A draw made a design that is not allowed; nothing was answered. */
public final class DrawRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    DrawRefused(int run, String fault, Throwable cause) {
        super(
                "run " + (run + 1) + " draws a tank that is not allowed: " + fault
                        + "; expected spreads that stay apart",
                cause);
    }
}
