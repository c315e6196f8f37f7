package org.warmvat.design.tank;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;

/**
 * The vessel's inner geometry and its place.
 *
 * @param shape inner plan
 * @param liquidDepthM depth of the contents, m
 * @param headspaceHeightM height of the gas space above, m
 * @param standsOn what is under the base
 * @param place out of doors or in a room
 */
public record Tank(
        @Key(name = "shape", says = "Inner shape", usual = "upright_cylinder")
        Shape shape,

        @Key(name = "liquid_depth_m", says = "Depth of the contents", range = "0.1 to 20 m")
        double liquidDepthM,

        @Key(
                name = "headspace_height_m",
                says = "Height of the gas space between contents and lid",
                range = "0.01 to 10 m",
                usual = "0.25")
        double headspaceHeightM,

        @Key(
                name = "stands_on",
                says = "What is under the base: moving air between legs, or the ground",
                usual = "legs")
        StandsOn standsOn,

        @Key(name = "place", says = "How open the tank stands to wind, sun and sky", usual = "sheltered")
        Place place) {

    /** Refuses heights out of range. */
    public Tank {
        Ranges.check(Tank.class, shape, liquidDepthM, headspaceHeightM, standsOn, place);
    }

    /** Inner plan area, m2. */
    public double innerPlanAreaM2() {
        return shape.planAreaM2();
    }

    /** Inner perimeter, m. */
    public double innerPerimeterM() {
        return shape.perimeterM();
    }

    /** Volume of the contents, m3. */
    public double liquidVolumeM3() {
        return innerPlanAreaM2() * liquidDepthM;
    }

    /** Volume of the headspace, m3. */
    public double headspaceVolumeM3() {
        return innerPlanAreaM2() * headspaceHeightM;
    }
}
