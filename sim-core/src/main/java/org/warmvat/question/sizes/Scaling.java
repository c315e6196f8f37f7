package org.warmvat.question.sizes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Refused;

/**
 * A design at other volumes. The tank stays geometrically similar; feed, gas and air follow the volume, and so does the paddle's
 * torque (at the same speed a paddle in stiff slurry meets a stress on an arm: length cubed). Heater, collector, coils and the
 * flows between them follow the steady need of heat in cold air. A gas holder follows the volume, since it is sized as a share of a day's gas
 * (0.6 of it: Werner, Stoehr and Hees 1989, p. 113); a shelter stays similar round its tank, its floor and cover by the area, its air by the
 * volume (common practice, no source); a vessel for hygienisation loses by its area. All else stays: insulation and shell thickness,
 * fittings with their bores, idle power, pumps, electronics, what burns the gas.
 */
public final class Scaling {

    private static final double LENGTH = 1.0 / 3.0;
    private static final double AREA = 2.0 / 3.0;

    private final Design base;
    private final Map<String, ScalingRule> rules = new LinkedHashMap<>();

    /**
     * Checks that replacing rules name numbers of a design.
     *
     * @throws Refused with what is wrong
     */
    public static void check(Design base, List<ScalingRule> replaced) {
        replaced.forEach(rule -> base.number(rule.key()));
    }

    /**
     * The rules for a design, some of them replaced.
     *
     * @throws Refused when a replacing rule names no number of the design
     */
    public Scaling(Design base, List<ScalingRule> replaced) {
        this.base = base;
        for (String key : base.numbers().keySet()) {
            usual(key, rules);
        }
        for (ScalingRule rule : replaced) {
            base.number(rule.key());
            rules.put(rule.key(), rule);
        }
    }

    private static void usual(String key, Map<String, ScalingRule> rules) {
        if (key.matches("tank\\.(inner_diameter_m|inner_length_m|inner_width_m|liquid_depth_m|headspace_height_m)")) {
            rules.put(key, ScalingRule.byVolume(key, LENGTH));
        } else if (key.matches("feed\\.(feedstocks\\[[0-9]+]|water)\\.kg_per_day")
                || key.matches("mixer\\.(torque_nm|shaft_w)")
                || key.matches("gas\\.(air_dosing\\.litres_per_hour|holder\\.useful_m3)|shelter\\.volume_m3")) {
            rules.put(key, ScalingRule.byVolume(key, 1));
        } else if (key.matches(
                "shelter\\.(floor_area_m2|cover_area_m2|mass_kj_k)|feed\\.hygienisation\\.loss_ua_w_k")) {
            rules.put(key, ScalingRule.byVolume(key, AREA));
        } else if (key.matches("(solar\\.area_m2|backup\\.rated_w|(solar|backup)\\.(coil\\.area_m2|loop_kg_s))")
                || key.matches("solar\\.loop_capacity_j_k|backup\\.water_kg")) {
            rules.put(key, ScalingRule.byNeed(key));
        }
    }

    /** The rules in the order of the design file. */
    public List<ScalingRule> rules() {
        return List.copyOf(rules.values());
    }

    /**
     * The design at another volume.
     *
     * @param litres volume of the contents
     * @param needW steady need of heat of a design, which must not depend on heater or collector
     * @throws Refused when a scaled number is not allowed
     */
    public Design at(double litres, ToDoubleFunction<Design> needW) {
        double volumes = litres / 1000 / base.tank().liquidVolumeM3();
        Map<String, Double> numbers = new LinkedHashMap<>();
        rules.values().stream()
                .filter(rule -> rule.power().isPresent())
                .forEach(rule -> numbers.put(rule.key(), base.number(rule.key()) * rule.factor(volumes, 1)));
        // size and feed first: the need follows from them
        Design sized = with(numbers, litres);
        double needs = needW.applyAsDouble(sized) / needW.applyAsDouble(base);
        rules.values().stream()
                .filter(rule -> rule.power().isEmpty())
                .forEach(rule -> numbers.put(rule.key(), base.number(rule.key()) * needs));
        return with(numbers, litres);
    }

    private Design with(Map<String, Double> numbers, double litres) {
        try {
            return base.with(numbers);
        } catch (Refused refused) {
            throw new Refused(refused.faults().stream()
                    .map(fault -> new Refused.Fault(
                            "",
                            "at "
                                    + BigDecimal.valueOf(litres)
                                            .stripTrailingZeros()
                                            .toPlainString() + " litres: " + fault,
                            List.of()))
                    .toList());
        }
    }

    /** The scaled numbers of a design, in the order of the rules. */
    public List<Double> numbers(Design scaled) {
        List<Double> numbers = new ArrayList<>();
        rules.keySet().forEach(key -> numbers.add(scaled.number(key)));
        return numbers;
    }
}
