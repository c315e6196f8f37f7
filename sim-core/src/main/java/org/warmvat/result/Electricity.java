package org.warmvat.result;

/**
 * Electricity by consumer over a period, kWh; a backup heater's own electricity is in {@link Circuits#backupBoughtKWh}.
 *
 * @param mixerKWh mixer with its drive and idle power
 * @param augerKWh feed auger
 * @param shredderKWh shredder
 * @param solarPumpKWh pump of the solar loop
 * @param backupPumpKWh pump of the backup circuit
 * @param airPumpKWh air dosing pump
 * @param electronicsKWh controls
 */
public record Electricity(
        double mixerKWh,
        double augerKWh,
        double shredderKWh,
        double solarPumpKWh,
        double backupPumpKWh,
        double airPumpKWh,
        double electronicsKWh) {

    /** All consumers together, kWh. */
    public double totalKWh() {
        return mixerKWh + augerKWh + shredderKWh + solarPumpKWh + backupPumpKWh + airPumpKWh + electronicsKWh;
    }
}
