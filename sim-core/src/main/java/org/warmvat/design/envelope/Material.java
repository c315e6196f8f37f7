package org.warmvat.design.envelope;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * A building material at its design values.
 *
 * @param name name in the design file
 * @param conductivityWPerMK thermal conductivity, W/(m K)
 * @param densityKgPerM3 density, kg/m3
 * @param specificHeatJPerKgK specific heat, J/(kg K)
 */
public record Material(
        String name,

        @Key(
                name = "conductivity_w_mk",
                says = "Thermal conductivity, aged and as damp as it will be",
                range = "0.002 to 500 W/mK")
        double conductivityWPerMK,

        @Key(name = "density_kg_m3", says = "Density", range = "1 to 20000 kg/m3")
        double densityKgPerM3,

        @Key(name = "specific_heat_j_kgk", says = "Specific heat", range = "100 to 5000 J/kgK")
        double specificHeatJPerKgK) {

    private static final Map<String, Material> TABLE = Collections.unmodifiableMap(table(
            new Material("stainless_steel", 17, 7900, 460),
            new Material("steel", 50, 7800, 450),
            new Material("aluminium_sheet", 160, 2800, 880),
            new Material("polyethylene_hd", 0.50, 980, 1800),
            new Material("polypropylene", 0.22, 910, 1800),
            new Material("pvc_rigid", 0.17, 1390, 900),
            new Material("glass_fibre_resin", 0.40, 1900, 1100),
            new Material("concrete", 1.65, 2200, 1000),
            new Material("timber", 0.13, 500, 1600),
            new Material("plywood", 0.13, 500, 1600),
            new Material("pir_foam", 0.027, 32, 1400),
            new Material("pur_foam", 0.026, 32, 1400),
            new Material("phenolic_foam", 0.025, 35, 1400),
            new Material("eps_foam", 0.037, 20, 1450),
            new Material("xps_foam", 0.035, 35, 1450),
            new Material("mineral_wool", 0.038, 50, 1030),
            new Material("sheep_wool", 0.040, 25, 1700),
            new Material("straw_bale", 0.065, 110, 1600)));

    private static final Pattern PLASTIC = Pattern.compile("\\b(?:pir|pur|eps|xps|pvc|pe|epdm|hdpe|ldpe)\\b");

    /** Refuses values out of range. */
    public Material {
        Ranges.check(Material.class, name, conductivityWPerMK, densityKgPerM3, specificHeatJPerKgK);
    }

    private static Map<String, Material> table(Material... materials) {
        Map<String, Material> table = new TreeMap<>();
        for (Material material : materials) {
            table.put(material.name(), material);
        }
        return table;
    }

    /**
     * The materials a design may name without giving their numbers, by name.
     *
     * <p>Sources: EN ISO 10456 and EN ISO 10077-2 where they have the material, ASHRAE (aged foams) and CIBSE Guide A for the rest. Foams
     * are aged design values; wet foam is for the user to state.
     */
    public static Map<String, Material> known() {
        return TABLE;
    }

    /** A name as it is read: {@code PIR foam} of {@code pir_foam}, abbreviations of plastics in capitals. */
    public static String spelt(String name) {
        return PLASTIC.matcher(name.replace('_', ' '))
                .replaceAll(found -> found.group().toUpperCase(Locale.ROOT));
    }

    /** The name as it is read. */
    public String spelt() {
        return spelt(name);
    }

    /** Volumetric heat capacity, J/(m3 K). */
    public double heatCapacityJPerM3K() {
        return densityKgPerM3 * specificHeatJPerKgK;
    }
}
