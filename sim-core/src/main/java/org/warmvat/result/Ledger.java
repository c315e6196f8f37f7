package org.warmvat.result;

/**
 * The three heat balances of a period: in - out - stored, kWh. Stored heat comes from node temperatures and envelope losses
 * from the outer faces, so the residuals are checks and not identities.
 *
 * @param slurryResidualKWh slurry with envelope
 * @param collectorResidualKWh solar circuit
 * @param backupResidualKWh backup circuit
 * @param passedThroughKWh collector absorbed + backup power + shaft, or the sum of losses, whichever is larger
 */
public record Ledger(
        double slurryResidualKWh, double collectorResidualKWh, double backupResidualKWh, double passedThroughKWh) {

    /** Closes the three balances of a period (model.md section 8). */
    static Ledger of(Heats heats, Losses losses, Circuits circuits, Stored stored) {
        double slurry = heats.solarKWh()
                + heats.backupKWh()
                + heats.shaftKWh()
                + heats.reactionKWh()
                - losses.totalKWh()
                - heats.feedKWh()
                - heats.gasKWh()
                - stored.slurryKWh()
                - stored.envelopeKWh();
        double collector = circuits.collectorAbsorbedKWh()
                - circuits.collectorLossKWh()
                - heats.solarKWh()
                - stored.collectorKWh();
        double backup =
                circuits.backupPowerKWh() - circuits.backupLossKWh() - heats.backupKWh() - stored.backupCircuitKWh();
        double in = circuits.collectorAbsorbedKWh() + circuits.backupPowerKWh() + heats.shaftKWh();
        double out = losses.totalKWh()
                + heats.feedKWh()
                + heats.gasKWh()
                + circuits.collectorLossKWh()
                + circuits.backupLossKWh();
        return new Ledger(slurry, collector, backup, Math.max(in, out));
    }

    /** Largest of the three residuals as a share of the heat that passed through; 0 when nothing did. */
    public double residualFraction() {
        double worst = Math.max(
                Math.abs(slurryResidualKWh), Math.max(Math.abs(collectorResidualKWh), Math.abs(backupResidualKWh)));
        return worst == 0 ? 0 : worst / passedThroughKWh;
    }
}
