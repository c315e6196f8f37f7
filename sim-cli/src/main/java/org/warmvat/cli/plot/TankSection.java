package org.warmvat.cli.plot;

import java.util.List;
import java.util.Map;

/**
 * A tank cut open, to be drawn to scale. What has no words is not drawn.
 *
 * @param vessel its inside
 * @param wall sheets of the wall, from inside to outside
 * @param lid sheets of the lid, from inside to outside
 * @param base sheets of the base, from inside to outside
 * @param collector the collector, as if it were square, seen from its side; 0 m2 for none
 * @param words what is written about each part
 */
public record TankSection(
        Vessel vessel,
        List<Sheet> wall,
        List<Sheet> lid,
        List<Sheet> base,
        Collector collector,
        Map<Part, String> words) {

    /**
     * The inside, in metres.
     *
     * @param widthM diameter, or the longer side
     * @param liquidM depth of the contents
     * @param headspaceM height of the gas space
     * @param onGround whether it stands on the ground, not on legs
     * @param immersed whether the backup heater is an element in the contents, not a coil
     */
    public record Vessel(double widthM, double liquidM, double headspaceM, boolean onGround, boolean immersed) {}

    /**
     * One sheet of the envelope.
     *
     * @param thicknessM its thickness, m
     * @param kind what it is
     */
    public record Sheet(double thicknessM, Kind kind) {}

    /** What a sheet is. */
    public enum Kind {
        /** Insulation. */
        INSULATION,
        /** Metal. */
        METAL,
        /** Anything else: wood, plastic, concrete. */
        OTHER
    }

    /**
     * The collector beside the tank.
     *
     * @param areaM2 its area, m2
     * @param tiltDeg its tilt from the horizontal, degrees
     */
    public record Collector(double areaM2, double tiltDeg) {}

    /** Parts of the picture, in the order of their numbers. */
    public enum Part {
        /** The slurry. */
        CONTENTS,
        /** The gas space. */
        GAS_SPACE,
        /** The wall. */
        WALL,
        /** The lid. */
        LID,
        /** The base. */
        BASE,
        /** The coil fed by the sun. */
        SOLAR_COIL,
        /** The backup heater's coil or element. */
        BACKUP,
        /** The paddle and its drive. */
        MIXER,
        /** The feed auger. */
        FEED,
        /** The outlet. */
        OUTLET,
        /** The gas neck. */
        GAS_NECK,
        /** The collector. */
        COLLECTOR
    }

    boolean has(Part part) {
        return words.containsKey(part);
    }

    static double thicknessM(List<Sheet> sheets) {
        return sheets.stream().mapToDouble(Sheet::thicknessM).sum();
    }

    double outerWidthM() {
        return vessel.widthM() + 2 * thicknessM(wall);
    }

    double outerHeightM() {
        return thicknessM(base) + vessel.liquidM() + vessel.headspaceM() + thicknessM(lid);
    }

    /** What is under the tank: legs that nobody has measured, so as high as a seventh of it; nothing on the ground. */
    double legM() {
        return vessel.onGround() ? 0 : 0.15 * outerHeightM();
    }
}
