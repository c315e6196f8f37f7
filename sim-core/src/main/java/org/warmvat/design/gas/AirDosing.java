package org.warmvat.design.gas;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Air let into the headspace against hydrogen sulphide (equation 7.4).
 *
 * @param litresPerHour flow while running, L/h at 0 C and 101.325 kPa
 * @param duty share of the time it runs
 * @param pumpW electric power while running, W
 * @param warningShare share of air over dry biogas above which an hour is warned of
 */
public record AirDosing(
        @Key(
                name = "litres_per_hour",
                says = "Flow while running, at 0 C and 101.325 kPa",
                range = "0 to 10000 L/h",
                usual = "1.0")
        double litresPerHour,

        @Key(name = "duty", says = "Share of the time it runs", range = "0 to 1", usual = "1.0")
        double duty,

        @Key(name = "pump_w", says = "Electric power of its pump while running", range = "0 to 1000 W", usual = "2")
        double pumpW,

        @Key(
                name = "warning_share",
                says = "Share of air over dry biogas above which an hour is warned of",
                range = "0 to 1",
                usual = "0.06")
        double warningShare) {

    /** Refuses numbers out of range. */
    public AirDosing {
        Ranges.check(AirDosing.class, litresPerHour, duty, pumpW, warningShare);
    }
}
