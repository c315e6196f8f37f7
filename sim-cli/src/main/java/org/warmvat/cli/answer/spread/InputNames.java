package org.warmvat.cli.answer.spread;

import java.util.LinkedHashMap;
import java.util.Map;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.design.envelope.Material;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.Uncertain;

/** What the usual uncertain inputs are called; any other goes by the words of its key. */
final class InputNames {

    private static final Map<String, String> NAMES = new LinkedHashMap<>();

    static {
        NAMES.put("adjust.envelope", "gaps and joints of the insulation");
        NAMES.put("adjust.fittings", "thermal bridges of fittings");
        NAMES.put("adjust.solar_coil", "heat transfer of the solar coil");
        NAMES.put("adjust.backup_coil", "heat transfer of the backup coil");
        NAMES.put("adjust.capacity", "heat capacity of the slurry");
        NAMES.put("adjust.collector", "collector's optical efficiency");
        NAMES.put("envelope.films.outer_per_wind_j_m3k", "wind at the tank");
        NAMES.put("shelter.air_changes_per_h", "air changes of the shelter");
        NAMES.put("feed.feedstocks[].kg_per_day", "amount fed");
        NAMES.put("feed.feedstocks[].methane_nm3_per_kg_vs", "methane potential of the feed");
        NAMES.put("feed.feedstocks[].rate_per_day", "rate of digestion");
        NAMES.put("feed.temperature.fixed_c", "temperature of the feed");
        NAMES.put("feed.water.temperature.fixed_c", "temperature of the water");
        NAMES.put("mixer.torque_nm", "torque of the mixer");
        NAMES.put("mixer.shaft_w", "power of the mixer");
        NAMES.put("solar.eta0", "collector's optical efficiency");
        NAMES.put("solar.a1_w_m2k", "heat loss of the collector");
        NAMES.put(Uncertain.AIR_OFFSET, "air temperature at the place");
        NAMES.put(Uncertain.SUN_FACTOR, "sun at the place");
        NAMES.put(SpreadResult.YEAR, "which year it is");
    }

    private InputNames() {}

    static String of(String key) {
        if (key.matches("materials\\.[a-z_]+\\.conductivity_w_mk")) {
            return "conductivity of " + Material.spelt(key.split("\\.")[1]);
        }
        return NAMES.containsKey(key) ? NAMES.get(key) : AxisWords.bare(key);
    }
}
