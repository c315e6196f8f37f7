package org.warmvat.sampling;

/**
 * How often something held among draws, with its sampling error.
 *
 * @param value share of the draws, 0 to 1
 * @param error one standard error, after Agresti and Coull (1998, Approximate is better than exact): two successes and two failures
 *     are added, so that none of none is not told as certain. For evenly laid points it is an upper bound.
 */
public record Share(double value, double error) {

    private static final int ADDED_EACH = 2;

    /**
     * Of a count.
     *
     * @param held how often it held
     * @param draws among how many, at least 1
     * @throws IllegalArgumentException when there are no draws or more held than were drawn
     */
    public static Share of(int held, int draws) {
        if (draws < 1 || held < 0 || held > draws) {
            throw new IllegalArgumentException(
                    "held " + held + " of " + draws + " draws, expected 0 to all of at least 1");
        }
        double all = draws + 2.0 * ADDED_EACH;
        double near = (held + ADDED_EACH) / all;
        return new Share((double) held / draws, Math.sqrt(near * (1 - near) / all));
    }
}
