package org.warmvat.cli.words;

import java.util.List;
import java.util.Map;

/** Numbers of a design as heads and axes name them: in the trade's words, the unit behind a comma. */
public final class AxisWords {

    private static final Map<String, String> NAMED = Map.of(
            "solar.area_m2", "collector, m²",
            "control.setpoint_c", "set-point, °C",
            "backup.rated_w", "backup heater, W",
            "envelope.insulation_mm", "insulation, mm",
            "envelope.lid_insulation_mm", "insulation of the lid, mm",
            "envelope.floor_insulation_mm", "insulation of the base, mm",
            "tank.inner_diameter_m", "inner diameter, m",
            "tank.liquid_depth_m", "depth of the slurry, m");

    /** Endings of keys with their units, those that end like others first. */
    private static final List<Map.Entry<String, String>> UNITS = List.of(
            Map.entry("_kg_per_day", "kg/day"),
            Map.entry("_per_day", "1/day"),
            Map.entry("_litres_per_hour", "litres/h"),
            Map.entry("_per_hour", "1/h"),
            Map.entry("_wh_per_kg", "Wh/kg"),
            Map.entry("_per_kwh", "per kWh"),
            Map.entry("_nm3_per_kg_vs", "Nm³/kg"),
            Map.entry("_m2k_w", "m²K/W"),
            Map.entry("_w_m2k2", "W/m²K²"),
            Map.entry("_w_m2k", "W/m²K"),
            Map.entry("_w_mk", "W/mK"),
            Map.entry("_w_k", "W/K"),
            Map.entry("_kg_s", "kg/s"),
            Map.entry("_kg_m3", "kg/m³"),
            Map.entry("_deg", "°"),
            Map.entry("_nm", "N m"),
            Map.entry("_m3", "m³"),
            Map.entry("_m2", "m²"),
            Map.entry("_mm", "mm"),
            Map.entry("_kg", "kg"),
            Map.entry("_m", "m"),
            Map.entry("_c", "°C"),
            Map.entry("_k", "K"),
            Map.entry("_w", "W"),
            Map.entry("_h", "h"));

    private AxisWords() {}

    /** A key in words: {@code collector, m²} of {@code solar.area_m2}. */
    public static String of(String key) {
        if (NAMED.containsKey(key)) {
            return NAMED.get(key);
        }
        for (Map.Entry<String, String> unit : UNITS) {
            if (key.endsWith(unit.getKey())) {
                return plain(key.substring(0, key.length() - unit.getKey().length())) + ", " + unit.getValue();
            }
        }
        return plain(key);
    }

    /** A key in words without its unit: {@code collector} of {@code solar.area_m2}. */
    public static String bare(String key) {
        String words = of(key);
        int unit = words.lastIndexOf(", ");
        return unit < 0 ? words : words.substring(0, unit);
    }

    /** A value of a key with its unit: {@code 2 m²}. */
    public static String value(String key, double value) {
        String words = of(key);
        int unit = words.lastIndexOf(", ");
        return Numerals.exact(value) + (unit < 0 ? "" : " " + words.substring(unit + 2));
    }

    private static String plain(String path) {
        return path.replaceFirst("^(envelope|control|tank)\\.", "")
                .replaceAll("\\.films\\b", " film")
                .replaceAll("[.\\[\\]_]+", " ")
                .strip();
    }
}
