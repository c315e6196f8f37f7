package org.warmvat.checks;

/**
 * Where published values come from.
 *
 * @param topic heading of the page
 * @param publication short name; what counts as one source however many of its examples are checked
 * @param citation the whole citation with example, table or page and, where seen on the web, the address
 * @param conditions inputs and what stands in for them here
 * @param tolerance the rule and its reason
 */
public record Source(Topic topic, String publication, String citation, String conditions, String tolerance) {

    /** The usual tolerance. */
    public static final String HALF_DIGIT = "Half the last printed digit.";
}
