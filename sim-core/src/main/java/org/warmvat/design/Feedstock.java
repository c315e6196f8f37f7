package org.warmvat.design;

import org.warmvat.design.keys.Key;

/**
 * One thing that is fed every day.
 *
 * @param name its name
 * @param kgPerDay fresh mass, kg/day
 * @param totalSolidsFraction total solids over fresh mass
 * @param volatileOfTotalSolids volatile over total solids
 * @param methaneNm3PerKgVs methane potential B0, Nm3 per kg of volatile solids (equation 7.2)
 * @param ratePerDay first-order rate at the reference temperature, 1/day (equation 7.3)
 */
public record Feedstock(
        @Key(
                name = "name",
                says = "Name of the feedstock",
                usual = "kitchen scraps",
                pattern = "\\S",
                form = "text that is not blank")
        String name,

        @Key(name = "kg_per_day", says = "Fresh mass fed each day", unit = "kg/day", least = 0, most = 100000)
        double kgPerDay,

        @Key(
                name = "total_solids",
                says = "Total solids over fresh mass",
                unit = "kg/kg",
                least = 0,
                most = 1,
                usual = "0.22")
        double totalSolidsFraction,

        @Key(
                name = "vs_of_ts",
                says = "Volatile solids over total solids",
                unit = "kg/kg",
                least = 0,
                most = 1,
                usual = "0.88")
        double volatileOfTotalSolids,

        @Key(
                name = "methane_nm3_per_kg_vs",
                says = "Methane potential per kg of volatile solids, at 0 C and 101.325 kPa",
                unit = "Nm3/kg",
                least = 0,
                most = 1.5,
                usual = "0.42")
        double methaneNm3PerKgVs,

        @Key(
                name = "rate_per_day",
                says = "First-order rate of digestion at gas.reference_c",
                unit = "1/day",
                least = 0,
                most = 5,
                usual = "0.20")
        double ratePerDay) {

    /** Refuses numbers out of range. */
    public Feedstock {
        Ranges.check(
                Feedstock.class,
                name,
                kgPerDay,
                totalSolidsFraction,
                volatileOfTotalSolids,
                methaneNm3PerKgVs,
                ratePerDay);
    }

    /** Total solids fed, kg/day. */
    public double totalSolidsKgPerDay() {
        return kgPerDay * totalSolidsFraction;
    }

    /** Volatile solids fed, kg/day. */
    public double volatileSolidsKgPerDay() {
        return totalSolidsKgPerDay() * volatileOfTotalSolids;
    }
}
