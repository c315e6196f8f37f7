package org.warmvat.design.tank;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;

/** The inner plan of the tank; walls are upright. */
public sealed interface Shape {

    /** Inner plan area, m2: lid, floor and liquid surface. */
    double planAreaM2();

    /** Inner perimeter, m. */
    double perimeterM();

    /**
     * A cylinder on its end.
     *
     * @param innerDiameterM inner diameter, m
     */
    @Word("upright_cylinder")
    record UprightCylinder(
            @Key(
                    name = "inner_diameter_m",
                    says = "Inner diameter of an upright cylinder, which needs it",
                    range = "0.2 to 20 m")
            double innerDiameterM)
            implements Shape {

        /** Refuses a diameter out of range. */
        public UprightCylinder {
            Ranges.check(UprightCylinder.class, innerDiameterM);
        }

        @Override
        public double planAreaM2() {
            return Math.PI * innerDiameterM * innerDiameterM / 4;
        }

        @Override
        public double perimeterM() {
            return Math.PI * innerDiameterM;
        }
    }

    /**
     * A box.
     *
     * @param innerLengthM inner length, m
     * @param innerWidthM inner width, m
     * @param azimuthDeg by how much the four faces are turned from 0/90/180/270 degrees
     */
    @Word("box")
    record Box(
            @Key(name = "inner_length_m", says = "Inner length of a box, which needs it", range = "0.2 to 20 m")
            double innerLengthM,

            @Key(name = "inner_width_m", says = "Inner width of a box, which needs it", range = "0.2 to 20 m")
            double innerWidthM,

            @Key(
                    name = "box_azimuth_deg",
                    says =
                            "By how much the four walls of a box are turned clockwise from facing north, east, south and west",
                    range = "-360 to 360 deg",
                    usual = "0")
            double azimuthDeg)
            implements Shape {

        /** Refuses sides or an azimuth out of range. */
        public Box {
            Ranges.check(Box.class, innerLengthM, innerWidthM, azimuthDeg);
        }

        @Override
        public double planAreaM2() {
            return innerLengthM * innerWidthM;
        }

        @Override
        public double perimeterM() {
            return 2 * (innerLengthM + innerWidthM);
        }
    }
}
