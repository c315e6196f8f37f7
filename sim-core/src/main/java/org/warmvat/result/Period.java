package org.warmvat.result;

import java.util.OptionalDouble;

/**
 * All figures of a day, a month or the whole run.
 *
 * @param label 2025-01-31, 2025-01, or "year" for the whole run
 * @param hours length
 * @param heats heat exchanged by the slurry
 * @param losses envelope and fittings
 * @param circuits solar and backup circuit
 * @param stored heat stored between the two ends
 * @param electricity by consumer
 * @param gas gas and net energy
 * @param slurry slurry temperature
 * @param counts hours and starts
 */
public record Period(
        String label,
        double hours,
        Heats heats,
        Losses losses,
        Circuits circuits,
        Stored stored,
        Electricity electricity,
        GasFigures gas,
        SlurryTemperature slurry,
        Counts counts) {

    /** The period's three balances. */
    public Ledger ledger() {
        return Ledger.of(heats, losses, circuits, stored);
    }

    /** Solar heat over solar and backup heat; empty when neither gave any. */
    public OptionalDouble solarShare() {
        double both = heats.solarKWh() + heats.backupKWh();
        return both == 0 ? OptionalDouble.empty() : OptionalDouble.of(heats.solarKWh() / both);
    }
}
