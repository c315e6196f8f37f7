package org.warmvat.design.feeding;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * One thing that is fed every day.
 *
 * @param material what it is, by the catalogue, whose numbers it takes where it does not give its own
 * @param name its name
 * @param kgPerDay fresh mass, kg/day
 * @param totalSolidsFraction total solids over fresh mass
 * @param volatileOfTotalSolids volatile over total solids
 * @param potential methane potential B0 (equation 7.2)
 * @param rate first-order rate (equation 7.3)
 */
public record Feedstock(
        @Key(
                name = "material",
                says =
                        "What it is, by the catalogue of feedstocks; its numbers are taken where they are not given here")
        Optional<FeedMaterial> material,

        @Key(
                name = "name",
                says = "Name of the feedstock, that of its material where it has one; names differ",
                usual = "kitchen scraps",
                pattern = "\\S",
                form = "text that is not blank")
        String name,

        @Key(name = "kg_per_day", says = "Fresh mass fed each day", range = "0 to 100000 kg/day")
        double kgPerDay,

        @Key(name = "total_solids", says = "Total solids over fresh mass", range = "0 to 1 kg/kg", usual = "0.22")
        double totalSolidsFraction,

        @Key(name = "vs_of_ts", says = "Volatile solids over total solids", range = "0 to 1 kg/kg", usual = "0.88")
        double volatileOfTotalSolids,

        @Key(
                name = "methane_nm3_per_kg_vs",
                says =
                        "Methane potential per kg of volatile solids, at 0 C and 101.325 kPa; one number, which may be a fifth off, or low, middle and high",
                range = "0 to 1.5 Nm3/kg",
                usual = "0.42")
        MethanePotential potential,

        @Key(
                name = "rate_per_day",
                says =
                        "First-order rate of digestion at gas.reference_c; one number, which may be two fifths off, or low, middle and high",
                range = "0 to 5 1/day",
                usual = "0.20")
        DigestionRate rate) {

    /** Refuses numbers out of range. */
    public Feedstock {
        Ranges.check(
                Feedstock.class, material, name, kgPerDay, totalSolidsFraction, volatileOfTotalSolids, potential, rate);
    }

    /** Defaults of a feedstock that names its material. */
    static Map<String, Object> usualOf(Map<String, ?> keys) {
        return keys.get("material") instanceof String word
                ? FeedMaterial.valueOf(word.toUpperCase(Locale.ROOT)).keys()
                : Map.of();
    }

    /** The same with potential and rate taken low, as they are, or high. */
    public Feedstock at(Estimate estimate) {
        return new Feedstock(
                material,
                name,
                kgPerDay,
                totalSolidsFraction,
                volatileOfTotalSolids,
                potential.at(estimate),
                rate.at(estimate));
    }

    /** Methane potential B0, Nm3 per kg of volatile solids. */
    public double methaneNm3PerKgVs() {
        return potential.middle();
    }

    /** First-order rate at the reference temperature, 1/day. */
    public double ratePerDay() {
        return rate.middle();
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
