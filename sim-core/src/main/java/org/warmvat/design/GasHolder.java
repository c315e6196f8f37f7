package org.warmvat.design;

/**
 * What stores the gas between making and use (equation 14.1).
 *
 * @param usefulM3 volume that can be filled and emptied, m3, 0.001..100000
 * @param startsFullShare how full it is at the start, 0..1
 * @param restartShare share at which draws begin again after they stopped, above 0 and below 1
 * @param reserveShare share kept for the tank's own heater, 0 up to but not including 1; with the restart at most 1
 * @param pressureKPaOver pressure over the standard atmosphere, kPa, 0..100
 */
public record GasHolder(
        double usefulM3, double startsFullShare, double restartShare, double reserveShare, double pressureKPaOver) {

    private static final double STANDARD_KPA = 101.325;
    private static final double FILLED_AT_K = 288.15;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** Refuses numbers out of range. */
    public GasHolder {
        Ranges.within("useful volume of the gas holder in m3", usefulM3, 0.001, 100_000);
        Ranges.within("share of the gas holder at the start", startsFullShare, 0, 1);
        Ranges.above("restart share of the gas holder", restartShare, 0, Math.nextDown(1.0));
        Ranges.within("reserve share of the gas holder", reserveShare, 0, Math.nextDown(1.0));
        Ranges.stated(
                "reserve and restart share of the gas holder together " + Ranges.text(reserveShare + restartShare),
                reserveShare + restartShare <= 1,
                "at most 1");
        Ranges.within("pressure of the gas holder in kPa over", pressureKPaOver, 0, 100);
    }

    /** Dry biogas it holds when full, Nm3: its gas is taken to be at 15 °C. */
    public double fullNm3() {
        return usefulM3 * normalPerM3();
    }

    /** Nm3 in a cubic metre of it. */
    public double normalPerM3() {
        return ZERO_CELSIUS_K / FILLED_AT_K * (STANDARD_KPA + pressureKPaOver) / STANDARD_KPA;
    }

    /** The same of another volume. */
    public GasHolder withUsefulM3(double m3) {
        return new GasHolder(m3, startsFullShare, restartShare, reserveShare, pressureKPaOver);
    }
}
