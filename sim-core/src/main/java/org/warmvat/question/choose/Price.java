package org.warmvat.question.choose;

import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.tank.Tank;

/**
 * What an option costs to buy.
 *
 * @param each whatever its size
 * @param perM2 for each square metre: of collector or coil where the option is one, else of the tank's inner area
 * @param perM2Mm for each square metre of the tank's inner area and millimetre of insulation
 */
public record Price(double each, double perM2, double perM2Mm) {

    private static final double MM = 1000;

    /**
     * The price of what a design has.
     *
     * @param design the design
     * @param keys the keys of the design that the option sets
     */
    double of(Design design, Set<String> keys) {
        return each
                + (perM2 == 0 ? 0 : perM2 * areaM2(design, keys))
                + (perM2Mm == 0 ? 0 : perM2Mm * areaMm(design, keys));
    }

    private static double areaM2(Design design, Set<String> keys) {
        return keys.stream()
                .filter(key -> key.endsWith("area_m2"))
                .findFirst()
                .map(key -> Catalogue.lacks(design, key) ? 0 : design.number(key))
                .orElseGet(() -> innerAreaM2(design.tank(), part(keys)));
    }

    /** Area times thickness, m2 mm: the thickness that the option names, else that of each part's main insulation. */
    private static double areaMm(Design design, Set<String> keys) {
        String part = part(keys);
        return keys.stream()
                .filter(key -> key.endsWith("_mm"))
                .findFirst()
                .map(key -> innerAreaM2(design.tank(), part) * design.number(key))
                .orElseGet(() -> insulation(design, part));
    }

    private static double insulation(Design design, String part) {
        Envelope envelope = design.envelope();
        double plan = design.tank().innerPlanAreaM2();
        return (part.matches("|wall") ? thicknessMm(envelope, envelope.wall()) * wallM2(design.tank()) : 0)
                + (part.matches("|lid") ? thicknessMm(envelope, envelope.lid()) * plan : 0)
                + (part.matches("|floor") ? thicknessMm(envelope, envelope.floor()) * plan : 0);
    }

    private static double thicknessMm(Envelope envelope, java.util.List<Layer> layers) {
        return MM
                * envelope.rules().mainInsulation(layers).map(Layer::thicknessM).orElse(0.0);
    }

    /** The part of the envelope that all keys belong to; empty for the whole of it. */
    private static String part(Set<String> keys) {
        for (String part : Envelope.PARTS) {
            if (keys.stream().allMatch(key -> key.startsWith("envelope." + part))) {
                return part;
            }
        }
        return "";
    }

    /** Inner area of a part, or of wall, lid and base together, m2. */
    static double innerAreaM2(Tank tank, String part) {
        return switch (part) {
            case "wall" -> wallM2(tank);
            case "lid", "floor" -> tank.innerPlanAreaM2();
            default -> wallM2(tank) + 2 * tank.innerPlanAreaM2();
        };
    }

    private static double wallM2(Tank tank) {
        return tank.innerPerimeterM() * (tank.liquidDepthM() + tank.headspaceHeightM());
    }
}
