package org.warmvat.engine;

/** A run that could not be completed; the message says when and why. */
public class EngineFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** A failure with its reason. */
    public EngineFailure(String message) {
        super(message);
    }

    /** A failure with its reason and cause. */
    public EngineFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
