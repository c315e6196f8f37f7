package org.warmvat.question.sensitive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.surroundings.Place;

/**
 * A number that is never known well.
 *
 * @param key what a design states it by; {@code []} stands for every entry of a list, which move together
 * @param path the number itself where the key is of a choice
 * @param name in words
 * @param unit unit, empty for none
 * @param kelvin whether it is a temperature, moved by 2 K, else it moves by a fifth
 */
public record Doubtful(String key, String path, String name, String unit, boolean kelvin) {

    private static final double FIFTH = 0.2;
    private static final double TEMPERATURE_K = 2;
    private static final String EXPOSURE = "tank.exposure_factor";
    private static final String MATERIAL = "materials.[].conductivity_w_mk";

    /** The fixed dozen (common practice, no source). */
    static final List<Doubtful> DOZEN = List.of(
            new Doubtful(MATERIAL, MATERIAL, "conductivity of the insulation", "W/mK", false),
            number(EXPOSURE, "wind at the tank over that of the file", ""),
            number("envelope.films.surface_w_m2k", "film from slurry to gas space", "W/m²K"),
            number("feed.feedstocks[].methane_nm3_per_kg_vs", "methane potential", "Nm³/kg"),
            number("feed.feedstocks[].rate_per_day", "rate of digestion", "1/day"),
            new Doubtful(
                    "feed.water.temperature",
                    "feed.water.temperature.fixed_c",
                    "temperature of the dilution water",
                    "°C",
                    true),
            new Doubtful(
                    "gas.temperatures_c.best",
                    "gas.temperatures_c.best",
                    "optimum temperature of digestion",
                    "°C",
                    true),
            number("solar.eta0", "collector's optical efficiency", ""),
            number("solar.coil.u_w_m2k", "U of the solar coil", "W/m²K"),
            number("backup.coil.u_w_m2k", "U of the backup coil", "W/m²K"),
            number("mixer.torque_nm", "torque of the mixer", "N m"),
            number("feed.shredder_wh_per_kg", "energy of the shredder", "Wh/kg"));

    private static Doubtful number(String key, String name, String unit) {
        return new Doubtful(key, key, name, unit, false);
    }

    /**
     * The numbers it stands for that a design does not state, by their paths; none where it states them or has no such part.
     *
     * @param design the design, its known materials listed
     * @param stated materials that the design gives numbers of its own
     * @param unstated keys that the design leaves to their defaults
     */
    Map<String, Double> numbers(Design design, Set<String> stated, Set<String> unstated) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        if (path.equals(MATERIAL)) {
            insulation(design).stream()
                    .filter(name -> !stated.contains(name) && design.materials().containsKey(name))
                    .forEach(name -> numbers.put(
                            "materials." + name + ".conductivity_w_mk",
                            design.materials().get(name).conductivityWPerMK()));
            return numbers;
        }
        int entries = path.contains("[]") ? design.feed().feedstocks().size() : 1;
        for (int entry = 0; entry < entries; entry++) {
            String place = "[" + entry + "]";
            String at = path.replace("[]", place);
            if (unstated.contains(key.replace("[]", place))) {
                value(design, at).ifPresent(number -> numbers.put(at, number));
            }
        }
        return numbers;
    }

    private static List<String> insulation(Design design) {
        List<Layer> layers = new ArrayList<>(design.envelope().wall());
        layers.addAll(design.envelope().lid());
        layers.addAll(design.envelope().floor());
        return layers.stream()
                .filter(layer -> design.envelope().rules().isInsulation(layer))
                .map(Layer::material)
                .map(Material::name)
                .distinct()
                .toList();
    }

    private static OptionalDouble value(Design design, String path) {
        if (path.equals(EXPOSURE)) {
            return design.tank().place() instanceof Place.Outdoors outdoors
                    ? OptionalDouble.of(outdoors.windFactor())
                    : OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(design.number(path));
        } catch (Refused hasNone) {
            return OptionalDouble.empty();
        }
    }

    /** A number moved down or up by some share of its whole step. */
    double moved(double number, double share) {
        return kelvin ? number + share * TEMPERATURE_K : number * (1 + share * FIFTH);
    }
}
