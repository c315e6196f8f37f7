package org.warmvat.regression;

/** A fit that could not be completed; the message says why. */
public final class FitFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** A failure with its reason. */
    public FitFailure(String message) {
        super(message);
    }

    /** A failure with its reason and cause. */
    public FitFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
