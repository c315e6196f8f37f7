package org.warmvat.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Draft;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Layer;

/** The dozen numbers of a design that matter most, as far as it has them: where they lie and how far they may be moved. */
final class Sliders {

    /** What conducts less is insulation, W/(m K): all insulating materials of the library lie below. */
    private static final double INSULATES_W_PER_M_K = 0.1;

    private final Map<String, Double> numbers;
    private final List<Map<String, Object>> sliders = new ArrayList<>();

    private Sliders(Map<String, Double> numbers) {
        this.numbers = numbers;
    }

    /**
     * A row each: path, name, unit, least, most, step, value.
     *
     * @param numbers all numbers of the design
     */
    static List<Map<String, Object>> of(Design design, Map<String, Double> numbers) {
        Sliders all = new Sliders(numbers);
        all.insulation(design.envelope());
        all.add("solar.area_m2", "Collector", "m²", 0, 6, 0.1);
        all.add("solar.tilt_deg", "Tilt of the collector", "°", 0, 90, 1);
        all.add("solar.coil.area_m2", "Solar coil", "m²", 0.1, 3, 0.1);
        all.add("backup.rated_w", "Backup heater", "W", 0, 1500, 50);
        all.add("backup.coil.area_m2", "Backup coil", "m²", 0.1, 3, 0.1);
        all.add("control.setpoint_c", "Set-point", "°C", 20, 55, 0.5);
        all.add("feed.feedstocks[0].kg_per_day", "First feedstock", "kg a day", 0, 20, 0.5);
        all.add("feed.water.kg_per_day", "Water in the feed", "kg a day", 0, 30, 0.5);
        all.add("mixer.minutes_per_hour", "Mixer", "minutes an hour", 0, 60, 1);
        all.add("tank.inner_diameter_m", "Inner diameter", "m", 0.4, 2.5, 0.05);
        all.add("tank.liquid_depth_m", "Depth of the contents", "m", 0.3, 2.5, 0.05);
        return all.sliders;
    }

    private void insulation(Envelope envelope) {
        insulation("wall", "", "Insulation of the wall", envelope.wall());
        insulation("lid", "lid_", "Insulation of the lid", envelope.lid());
        insulation("floor", "floor_", "Insulation of the base", envelope.floor());
    }

    /** The insulation of a side: the number of a single layer, or of the layer that insulates most. */
    private void insulation(String side, String lead, String name, List<Layer> layers) {
        String brief = "envelope." + lead + "insulation_mm";
        if (numbers.containsKey(brief)) {
            add(brief, name, "mm", 0, 300, 5);
            return;
        }
        int best = IntStream.range(0, layers.size())
                .filter(i -> layers.get(i).material().conductivityWPerMK() < INSULATES_W_PER_M_K)
                .reduce((a, b) -> layers.get(b).thicknessM() > layers.get(a).thicknessM() ? b : a)
                .orElse(-1);
        add("envelope." + side + "[" + best + "].thickness_mm", name, "mm", 5, 300, 5);
    }

    /** A slider of a number that is there; a value out of the usual stretches it. */
    private void add(String path, String name, String unit, double least, double most, double step) {
        Double value = numbers.get(path);
        if (value != null) {
            double stretched = Math.max(most, Math.ceil(2 * value / step) * step);
            sliders.add(Draft.row(
                    "path", path,
                    "name", name,
                    "unit", unit,
                    "least", Math.min(least, value),
                    "most", value > most ? stretched : most,
                    "step", step,
                    "value", value));
        }
    }
}
