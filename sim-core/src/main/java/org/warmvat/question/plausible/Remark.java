package org.warmvat.question.plausible;

/**
 * Something in a design that deserves a second look.
 *
 * @param key short stable name
 * @param sentence whole sentence with what was found and what is usual
 * @param gravity how grave
 */
public record Remark(String key, String sentence, Gravity gravity) {

    /** How grave, the gravest first. */
    public enum Gravity {
        /** Not credible: most likely a slip. */
        NOT_CREDIBLE,
        /** Unlikely, or the tank cannot work so. */
        UNLIKELY,
        /** Worth a word. */
        NOTE
    }
}
