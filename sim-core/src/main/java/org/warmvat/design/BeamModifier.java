package org.warmvat.design;

import java.util.List;

/** How a collector's take of the beam depends on the beam's angle (equations 5.1 and 13.3). */
public sealed interface BeamModifier {

    /** Largest value of a table. */
    double MOST = 2;

    /**
     * The formula {@code 1 - b0 (1/cos th - 1)}, never below 0.
     *
     * @param b0 0..1
     * @param limitDeg angle of incidence past which the beam counts nothing, degrees, 30..90
     */
    record Formula(double b0, double limitDeg) implements BeamModifier {

        /** Refuses numbers out of range. */
        public Formula {
            Ranges.within("b0", b0, 0, 1);
            Ranges.within("incidence limit in degrees", limitDeg, 30, 90);
        }
    }

    /**
     * A table by the angle of incidence, straight between its angles, 0 from 90 degrees.
     *
     * @param anglesDeg rising from 0 up to 90
     * @param values one for each angle, 0..2
     */
    record Table(List<Double> anglesDeg, List<Double> values) implements BeamModifier {

        /** Refuses lists that do not fit. */
        public Table {
            anglesDeg = angles(anglesDeg);
            values = checked("values of the incidence table", anglesDeg, values);
        }
    }

    /**
     * Two tables by the angle projected onto the planes across and along the tubes; their product counts.
     *
     * @param anglesDeg rising from 0 up to 90
     * @param transverse across the tubes, one for each angle, 0..2
     * @param longitudinal along the tubes, one for each angle, 0..2
     * @param tubes how the tubes lie
     */
    record Biaxial(List<Double> anglesDeg, List<Double> transverse, List<Double> longitudinal, Tubes tubes)
            implements BeamModifier {

        /** Refuses lists that do not fit. */
        public Biaxial {
            anglesDeg = angles(anglesDeg);
            transverse = checked("transverse values of the incidence table", anglesDeg, transverse);
            longitudinal = checked("longitudinal values of the incidence table", anglesDeg, longitudinal);
        }
    }

    /** How tubes lie on the collector's plane. */
    enum Tubes {
        /** Up and down. */
        ALONG_SLOPE,
        /** Level. */
        ACROSS_SLOPE
    }

    private static List<Double> angles(List<Double> anglesDeg) {
        Ranges.stated("incidence table has " + anglesDeg.size() + " angles", anglesDeg.size() >= 2, "at least two");
        Ranges.stated("first angle of the incidence table " + anglesDeg.get(0), anglesDeg.get(0) == 0, "0");
        for (int i = 1; i < anglesDeg.size(); i++) {
            Ranges.above("angle of the incidence table in degrees", anglesDeg.get(i), anglesDeg.get(i - 1), 90);
        }
        return List.copyOf(anglesDeg);
    }

    private static List<Double> checked(String what, List<Double> anglesDeg, List<Double> values) {
        Ranges.stated(
                what + ": " + values.size(), values.size() == anglesDeg.size(), anglesDeg.size() + " as of angles");
        values.forEach(value -> Ranges.within(what, value, 0, MOST));
        return List.copyOf(values);
    }
}
