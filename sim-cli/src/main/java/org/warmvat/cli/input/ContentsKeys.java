package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.warmvat.design.Contents;
import org.warmvat.design.Design;

/** The block {@code contents}. */
record ContentsKeys(
        @JsonProperty("density_kg_m3")
        @Key(says = "Density of the slurry", unit = "kg/m3", least = 900, most = 1300, usual = "1010")
        double densityKgPerM3,

        @JsonProperty("total_solids")
        @Key(
                says = "Total solids of the slurry in the tank",
                unit = "kg/kg",
                least = 0,
                most = 0.5,
                otherwise = "the feed's solids less the volatile solids digested at steady state and set-point")
        Optional<Double> totalSolids,

        @JsonProperty("solids_j_kgk")
        @Key(
                says = "Specific heat of dry solids; that of water is 4186 J/kgK",
                unit = "J/kgK",
                least = 500,
                most = 4186,
                usual = "1600")
        double solidsJPerKgK,

        @JsonProperty("conductivity_w_mk")
        @Key(
                says = "Conductivity of still slurry in a pipe that sticks out",
                unit = "W/mK",
                least = 0.1,
                most = 5,
                usual = "0.6")
        double conductivityWPerMK) {

    /** Difference of solids fractions from which it is warned: about what moves the heat capacity by one per cent. */
    private static final double FAR = 0.02;

    /** A warning where the given solids are far from what feed and digestion lead to. */
    List<String> doubts(Design design) {
        double steady = design.steadyTotalSolidsFraction();
        return totalSolids
                .filter(given -> Math.abs(given - steady) > FAR)
                .map(given -> String.format(
                        Locale.ROOT,
                        "contents.total_solids %s is far from %.3f, which feed and digestion at the set-point lead to",
                        Faults.number(given),
                        steady))
                .stream()
                .toList();
    }

    Contents contents() {
        return new Contents(densityKgPerM3, totalSolids, solidsJPerKgK);
    }
}
