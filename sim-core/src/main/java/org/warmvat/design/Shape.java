package org.warmvat.design;

/** The inner plan of the tank; walls are upright. */
public sealed interface Shape {

    /** Inner plan area, m2: lid, floor and liquid surface. */
    double planAreaM2();

    /** Inner perimeter, m. */
    double perimeterM();

    /**
     * A cylinder on its end.
     *
     * @param innerDiameterM inner diameter, m, 0.2..20
     */
    record UprightCylinder(double innerDiameterM) implements Shape {

        /** Refuses a diameter out of range. */
        public UprightCylinder {
            Ranges.within("inner diameter in m", innerDiameterM, 0.2, 20);
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
     * @param innerLengthM inner length, m, 0.2..20
     * @param innerWidthM inner width, m, 0.2..20
     * @param azimuthDeg by how much the four faces are turned from 0/90/180/270 degrees, -360..360
     */
    record Box(double innerLengthM, double innerWidthM, double azimuthDeg) implements Shape {

        /** Refuses sides or an azimuth out of range. */
        public Box {
            Ranges.within("inner length in m", innerLengthM, 0.2, 20);
            Ranges.within("inner width in m", innerWidthM, 0.2, 20);
            Ranges.within("azimuth of the box in degrees", azimuthDeg, -360, 360);
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
