package org.warmvat.design;

/**
 * One thing that is fed every day.
 *
 * @param name its name
 * @param kgPerDay fresh mass, kg/day, 0..100000
 * @param totalSolidsFraction total solids over fresh mass, 0..1
 * @param volatileOfTotalSolids volatile over total solids, 0..1
 * @param methaneNm3PerKgVs methane potential B0, Nm3 per kg of volatile solids, 0..1.5 (equation 7.2)
 * @param ratePerDay first-order rate at the reference temperature, 1/day, 0..5 (equation 7.3)
 */
public record Feedstock(
        String name,
        double kgPerDay,
        double totalSolidsFraction,
        double volatileOfTotalSolids,
        double methaneNm3PerKgVs,
        double ratePerDay) {

    /** Refuses numbers out of range. */
    public Feedstock {
        Ranges.named("feedstock", name);
        Ranges.within("daily mass of " + name + " in kg", kgPerDay, 0, 100_000);
        Ranges.within("total solids of " + name, totalSolidsFraction, 0, 1);
        Ranges.within("volatile solids over total solids of " + name, volatileOfTotalSolids, 0, 1);
        Ranges.within("methane potential of " + name + " in Nm3/kg VS", methaneNm3PerKgVs, 0, 1.5);
        Ranges.within("rate of " + name + " per day", ratePerDay, 0, 5);
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
