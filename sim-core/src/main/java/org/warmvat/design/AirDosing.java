package org.warmvat.design;

/**
 * Air let into the headspace against hydrogen sulphide (equation 7.4).
 *
 * @param litresPerHour flow while running, L/h at 0 C and 101.325 kPa, 0..10000
 * @param duty share of the time it runs, 0..1
 * @param pumpW electric power while running, W, 0..1000
 * @param warningShare share of air over dry biogas above which an hour is warned of, 0..1
 */
public record AirDosing(double litresPerHour, double duty, double pumpW, double warningShare) {

    /** Refuses numbers out of range. */
    public AirDosing {
        Ranges.within("air dosing in L/h", litresPerHour, 0, 10_000);
        Ranges.within("duty of air dosing", duty, 0, 1);
        Ranges.within("air pump in W", pumpW, 0, 1000);
        Ranges.within("share of air to warn of", warningShare, 0, 1);
    }
}
