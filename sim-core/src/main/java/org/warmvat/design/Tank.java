package org.warmvat.design;

/**
 * The vessel's inner geometry and its place.
 *
 * @param shape inner plan
 * @param liquidDepthM depth of the contents, m, 0.1..20
 * @param headspaceHeightM height of the gas space above, m, 0.01..10
 * @param standsOn what is under the floor
 * @param place out of doors or in a room
 */
public record Tank(Shape shape, double liquidDepthM, double headspaceHeightM, StandsOn standsOn, Place place) {

    /** Refuses heights out of range. */
    public Tank {
        Ranges.within("liquid depth in m", liquidDepthM, 0.1, 20);
        Ranges.within("headspace height in m", headspaceHeightM, 0.01, 10);
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
