package org.warmvat.design.gas;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * What stores the gas between making and use (equation 14.1).
 *
 * @param usefulM3 volume that can be filled and emptied, m3
 * @param startsFullShare how full it is at the start
 * @param restartShare share at which draws begin again after they stopped
 * @param reserveShare share kept for the tank's own heater; with the restart at most 1
 * @param pressureKPaOver pressure over the standard atmosphere, kPa
 */
public record GasHolder(
        @Key(name = "useful_m3", says = "Volume that can be filled and emptied", range = "0.001 to 100000 m3")
        double usefulM3,

        @Key(name = "starts_full_share", says = "How full it is at the start", range = "0 to 1", usual = "0.5")
        double startsFullShare,

        @Key(
                name = "restart_share",
                says = "Share at which draws begin again after they stopped",
                range = "0.001 to 0.999",
                usual = "0.05")
        double restartShare,

        @Key(
                name = "reserve_share",
                says =
                        "Share kept for the tank's own burner and hygienisation; counts only where one of them burns own gas",
                range = "0 to 0.999",
                usual = "0.2")
        double reserveShare,

        @Key(
                name = "pressure_kpa_over",
                says = "Pressure over the standard atmosphere",
                range = "0 to 100 kPa",
                usual = "2")
        double pressureKPaOver) {

    private static final double STANDARD_KPA = 101.325;
    private static final double FILLED_AT_K = 288.15;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** Refuses numbers out of range. */
    public GasHolder {
        Ranges.check(GasHolder.class, usefulM3, startsFullShare, restartShare, reserveShare, pressureKPaOver);
        Ranges.stated(
                reserveShare + restartShare <= 1,
                "reserve_share",
                Shown.number(reserveShare) + ", expected with restart_share together at most 1");
    }

    /** Dry biogas it holds when full, Nm3: its gas is taken to be at 15 °C. */
    public double fullNm3() {
        return usefulM3 * normalPerM3();
    }

    /** Nm3 in a cubic metre of it. */
    public double normalPerM3() {
        return ZERO_CELSIUS_K / FILLED_AT_K * (STANDARD_KPA + pressureKPaOver) / STANDARD_KPA;
    }
}
