package org.warmvat.network.meter;

/**
 * Something that what goes in must come out of again or be stored in.
 *
 * @param key short name, as in {@code ledger/slurry_residual_kwh}
 * @param name trade name
 * @param unit what it is kept in: {@link Unit#KWH} or {@link Unit#NM3}
 */
public record Balance(String key, String name, Unit unit) {

    /** Heat of the slurry and the envelope around it. */
    public static final Balance SLURRY = new Balance("slurry", "Slurry with envelope", Unit.KWH);

    /** The line of what does not close. */
    public Line residual() {
        return new Line("ledger/" + key + "_residual_" + (unit == Unit.KWH ? "kwh" : "nm3"), "residual", unit);
    }
}
