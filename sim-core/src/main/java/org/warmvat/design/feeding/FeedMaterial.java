package org.warmvat.design.feeding;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Feedstocks that a design may name without giving their numbers: low, middle and high of each, with its source.
 *
 * <p>What is called seen was read in print; the rest says that it is from memory. They are no measurements of yours: solids are found by
 * drying and burning a sample, the potential by a batch test.
 */
// a band is a record of numbers and words
@SuppressWarnings("ImmutableEnumChecker")
public enum FeedMaterial {
    /** Mixed scraps of a household's kitchen. */
    KITCHEN_SCRAPS(
            band(0.18, 0.24, 0.30),
            band(0.83, 0.88, 0.94),
            band(0.35, 0.42, 0.50)
                    .from(
                            "0.398 at full scale over 426 days, Banks and others 2011 (seen); batch tests up to 0.53, from memory"),
            rate(0.15, 0.20, 0.40),
            Caution.NONE),
    /** Trimmings of cabbage, roots, salad. */
    VEGETABLE_TRIMMINGS(
            band(0.06, 0.10, 0.15),
            band(0.80, 0.86, 0.92),
            band(0.22, 0.33, 0.40)
                    .from(
                            "low: 330 to 360 L of biogas after 10 to 20 days, gtz 97 after Maramba 1978 (seen); else from memory"),
            rate(0.15, 0.25, 0.40),
            Caution.NONE),
    /** Fallen or spoilt fruit. */
    FRUIT(band(0.10, 0.15, 0.20), band(0.90, 0.94, 0.97), band(0.30, 0.38, 0.45), rate(0.15, 0.25, 0.40), Caution.SOUR),
    /** Bread and bakery leftovers. */
    BREAD(band(0.55, 0.65, 0.70), band(0.93, 0.96, 0.98), band(0.35, 0.40, 0.45), rate(0.20, 0.30, 0.50), Caution.SOUR),
    /** Spent coffee grounds. */
    COFFEE_GROUNDS(
            band(0.30, 0.38, 0.45),
            band(0.95, 0.97, 0.99),
            band(0.25, 0.33, 0.40),
            rate(0.06, 0.10, 0.15),
            Caution.NONE),
    /** Meat, fish and their leftovers. */
    MEAT_AND_FISH(
            band(0.25, 0.30, 0.40),
            band(0.85, 0.92, 0.95),
            band(0.40, 0.50, 0.60),
            rate(0.10, 0.15, 0.25),
            Caution.NITROGEN_AND_HYGIENE),
    /** Frying oil and grease. */
    COOKING_FAT(
            band(0.95, 0.98, 1.00),
            band(0.98, 0.99, 1.00),
            band(0.75, 0.85, 1.00),
            rate(0.05, 0.10, 0.20),
            Caution.FAT),
    /** Fresh lawn or meadow cuttings. */
    GRASS(
            band(0.15, 0.20, 0.30),
            band(0.80, 0.88, 0.92),
            band(0.20, 0.28, 0.32)
                    .from(
                            "0.197 to 0.221 in 35 days, Biomass Bioenergy 130 (2019) 105391; silage and hay 0.286 to 0.319, Luna-delRisco and others 2011 (seen)"),
            rate(0.05, 0.08, 0.12),
            Caution.FLOATS),
    /** Weeds with some soil on the roots. */
    WEEDS(
            band(0.12, 0.18, 0.25),
            band(0.75, 0.82, 0.88),
            band(0.18, 0.24, 0.30),
            rate(0.04, 0.07, 0.10),
            Caution.FLOATS),
    /** Fallen leaves of trees. */
    LEAVES(
            band(0.30, 0.40, 0.60),
            band(0.75, 0.85, 0.92),
            band(0.10, 0.14, 0.17)
                    .from("210 to 290 L of biogas at 58 % methane, gtz 97 after Maramba 1978 (seen); low from memory"),
            rate(0.02, 0.03, 0.05),
            Caution.FLOATS),
    /** Hay. */
    HAY(
            band(0.82, 0.86, 0.90),
            band(0.88, 0.92, 0.95),
            band(0.25, 0.29, 0.32).from("0.286 to 0.319, Luna-delRisco and others 2011 (seen); low from memory"),
            rate(0.04, 0.06, 0.09),
            Caution.FLOATS),
    /** Wheat straw, chopped. */
    WHEAT_STRAW(
            band(0.85, 0.88, 0.92),
            band(0.88, 0.92, 0.95),
            band(0.11, 0.18, 0.25)
                    .from(
                            "200 to 300 L of biogas at 50 to 60 % methane, gtz 97 after Maramba 1978 (seen); high from memory"),
            rate(0.02, 0.04, 0.06),
            Caution.FLOATS),
    /** Slurry of dairy cows. */
    CATTLE_SLURRY(
            band(0.06, 0.08, 0.12),
            band(0.75, 0.80, 0.85),
            band(0.18, 0.22, 0.26)
                    .from(
                            "IPCC 2006 dairy 0.24, other cattle 0.17 to 0.19 (seen in Wolf and others 2017, table 2); 0.238, Luna-delRisco and others 2011 (seen)"),
            rate(0.05, 0.08, 0.13),
            Caution.NONE),
    /** Fresh dung of cattle without water. */
    CATTLE_DUNG(
            band(0.10, 0.13, 0.17)
                    .from("8 % volatile solids of fresh dung, Werner and others 1989 (seen); total from memory"),
            band(0.62, 0.72, 0.82),
            band(0.17, 0.22, 0.26).from("as cattle slurry"),
            band(0.03, 0.05, 0.08).from("fits 15 and 54 L of gas a kg, Sasse 1988 (seen)"),
            Caution.NONE),
    /** Slurry of pigs. */
    PIG_SLURRY(
            band(0.03, 0.06, 0.09),
            band(0.70, 0.76, 0.82),
            band(0.30, 0.38, 0.48)
                    .from(
                            "IPCC 2006 0.45 to 0.48 (seen in Wolf and others 2017, table 2); 0.317, Luna-delRisco and others 2011 (seen)"),
            rate(0.08, 0.10, 0.15),
            Caution.NITROGEN),
    /** Horse dung with straw bedding. */
    HORSE_WITH_STRAW(
            band(0.25, 0.30, 0.40),
            band(0.78, 0.84, 0.90),
            band(0.12, 0.17, 0.25)
                    .from(
                            "200 to 300 L of biogas after 10 to 20 days, gtz 97 after Maramba 1978 (seen); high from memory"),
            rate(0.03, 0.05, 0.08),
            Caution.FLOATS),
    /** Droppings of hens. */
    POULTRY_DROPPINGS(
            band(0.22, 0.30, 0.45),
            band(0.65, 0.73, 0.80),
            band(0.19, 0.28, 0.37).from("310 to 620 L of biogas at 60 % methane, gtz 97 after Maramba 1978 (seen)"),
            rate(0.08, 0.12, 0.20),
            Caution.NITROGEN),
    /** Goat and sheep dung. */
    GOAT_DUNG(
            band(0.35, 0.42, 0.55),
            band(0.70, 0.78, 0.85),
            band(0.12, 0.17, 0.20)
                    .from("sheep 90 to 310 L of biogas, gtz 97 after Maramba 1978 (seen); methane share from memory"),
            rate(0.04, 0.06, 0.09),
            Caution.NONE);

    private final Band totalSolids;
    private final Band volatileOfTotal;
    private final Band methaneNm3PerKgVs;
    private final Band ratePerDay;
    private final Caution caution;

    FeedMaterial(Band totalSolids, Band volatileOfTotal, Band methaneNm3PerKgVs, Band ratePerDay, Caution caution) {
        this.totalSolids = totalSolids;
        this.volatileOfTotal = volatileOfTotal;
        this.methaneNm3PerKgVs = methaneNm3PerKgVs;
        this.ratePerDay = ratePerDay;
        this.caution = caution;
    }

    /**
     * A number as it is found.
     *
     * @param low what a poor one has
     * @param middle what is taken
     * @param high what a rich one has
     * @param source where it is from
     */
    public record Band(double low, double middle, double high, String source) {

        private Band from(String where) {
            return new Band(low, middle, high, where);
        }

        private Map<String, Object> tree() {
            return Map.of("low", low, "middle", middle, "high", high);
        }
    }

    /** What deserves a word where a material is fed (common practice, no source). */
    public enum Caution {
        /** Nothing beyond the usual. */
        NONE(""),
        /** Much nitrogen. */
        NITROGEN(
                "is rich in nitrogen: much of it stops digestion by ammonia; keep it below a third of the volatile solids or thin it"),
        /** Much nitrogen, and of animals. */
        NITROGEN_AND_HYGIENE(
                "is rich in nitrogen and of animal origin: much of it stops digestion by ammonia, and the authority may ask for hygienisation"),
        /** Fat. */
        FAT("is fat: more than a small share foams, floats and sours the tank; raise it over weeks"),
        /** Sugars and starch. */
        SOUR("turns sour fast: feed it little by little, mixed with slower feed"),
        /** Fibres. */
        FLOATS("floats and felts: shred it short and keep the mixer running, or a crust holds the gas back");

        private final String words;

        Caution(String words) {
            this.words = words;
        }

        /** What to mind, after the material's name; empty for nothing. */
        public String words() {
            return words;
        }
    }

    /** A number that was not looked up. */
    private static Band band(double low, double middle, double high) {
        return new Band(low, middle, high, "from memory");
    }

    /** A rate that was not looked up; the review that has such a table was seen as an abstract only. */
    private static Band rate(double low, double middle, double high) {
        return new Band(low, middle, high, "from memory; ranges as in Vavilin and others 2008 (abstract seen)");
    }

    /** Its word in the design file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Total solids over fresh mass. */
    public Band totalSolids() {
        return totalSolids;
    }

    /** Volatile over total solids. */
    public Band volatileOfTotal() {
        return volatileOfTotal;
    }

    /** Methane potential, Nm3 per kg of volatile solids. */
    public Band methaneNm3PerKgVs() {
        return methaneNm3PerKgVs;
    }

    /** First-order rate at 35 C, 1/day. */
    public Band ratePerDay() {
        return ratePerDay;
    }

    /** What to mind. */
    public Caution caution() {
        return caution;
    }

    /** Its numbers as keys of a feedstock. */
    Map<String, Object> keys() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("name", word());
        keys.put("total_solids", totalSolids.middle());
        keys.put("vs_of_ts", volatileOfTotal.middle());
        keys.put("methane_nm3_per_kg_vs", methaneNm3PerKgVs.tree());
        keys.put("rate_per_day", ratePerDay.tree());
        return keys;
    }
}
