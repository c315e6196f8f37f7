package org.warmvat.design.heating;

import java.util.List;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/** How a collector's take of the beam depends on the beam's angle (equations 5.1 and 13.3). */
public sealed interface BeamModifier {

    /** The formula, or a table in its place. */
    sealed interface Stated {

        /** The modifier itself. */
        BeamModifier modifier();
    }

    /**
     * The formula {@code 1 - b0 (1/cos th - 1)}, never below 0.
     *
     * @param b0 its coefficient
     * @param limitDeg angle of incidence past which the beam counts nothing, degrees
     */
    record Formula(
            @Key(
                    name = "b0",
                    says = "Incidence modifier of the beam, 1 - b0 (1/cos th - 1)",
                    range = "0 to 1",
                    usual = "0.14")
            double b0,

            @Key(
                    name = "incidence_limit_deg",
                    says = "Angle of incidence past which the beam counts nothing",
                    range = "30 to 90 deg",
                    usual = "85")
            double limitDeg)
            implements BeamModifier, Stated {

        /** Refuses numbers out of range. */
        public Formula {
            Ranges.check(Formula.class, b0, limitDeg);
        }

        @Override
        public BeamModifier modifier() {
            return this;
        }
    }

    /**
     * A table in place of the formula.
     *
     * @param modifier the table
     */
    record Tabled(
            @Key(
                    name = "incidence",
                    says =
                            "Table of incidence modifiers, straight between its angles, instead of b0: values, or transverse and longitudinal for tubes")
            InTable modifier)
            implements Stated {}

    /** A table by one angle or by two. */
    sealed interface InTable extends BeamModifier {}

    /**
     * A table by the angle of incidence, straight between its angles, 0 from 90 degrees.
     *
     * @param anglesDeg rising from 0 up to 90
     * @param values one for each angle
     */
    record Table(
            @Key(name = "angles_deg", says = "Angles, rising from 0", range = "0 to 90 deg", entries = 2)
            List<Double> anglesDeg,

            @Key(name = "values", says = "Modifier at each angle", range = "0 to 2", entries = 2)
            List<Double> values)
            implements InTable {

        /** Refuses lists that do not fit. */
        public Table {
            anglesDeg = List.copyOf(anglesDeg);
            values = List.copyOf(values);
            Ranges.check(Table.class, anglesDeg, values);
            checkAngles(anglesDeg);
            checkLength("values", values, anglesDeg);
        }
    }

    /**
     * Two tables by the angle projected onto the planes across and along the tubes; their product counts.
     *
     * @param anglesDeg rising from 0 up to 90
     * @param transverse across the tubes, one for each angle
     * @param longitudinal along the tubes, one for each angle
     * @param tubes how the tubes lie
     */
    record Biaxial(
            @Key(name = "angles_deg", says = "Angles, rising from 0", range = "0 to 90 deg", entries = 2)
            List<Double> anglesDeg,

            @Key(name = "transverse", says = "Modifier across the tubes at each angle", range = "0 to 2", entries = 2)
            List<Double> transverse,

            @Key(name = "longitudinal", says = "Modifier along the tubes at each angle", range = "0 to 2", entries = 2)
            List<Double> longitudinal,

            @Key(name = "tubes", says = "How the tubes lie on the collector's plane", usual = "along_slope")
            Tubes tubes)
            implements InTable {

        /** Refuses lists that do not fit. */
        public Biaxial {
            anglesDeg = List.copyOf(anglesDeg);
            transverse = List.copyOf(transverse);
            longitudinal = List.copyOf(longitudinal);
            Ranges.check(Biaxial.class, anglesDeg, transverse, longitudinal, tubes);
            checkAngles(anglesDeg);
            checkLength("transverse", transverse, anglesDeg);
            checkLength("longitudinal", longitudinal, anglesDeg);
        }
    }

    /** How tubes lie on the collector's plane. */
    enum Tubes {
        /** Up and down. */
        ALONG_SLOPE,
        /** Level. */
        ACROSS_SLOPE
    }

    private static void checkAngles(List<Double> anglesDeg) {
        boolean rising = anglesDeg.get(0) == 0;
        for (int i = 1; i < anglesDeg.size(); i++) {
            rising &= anglesDeg.get(i) > anglesDeg.get(i - 1);
        }
        Ranges.stated(rising, "angles_deg", "expected to rise from 0");
    }

    private static void checkLength(String key, List<Double> values, List<Double> anglesDeg) {
        Ranges.stated(
                values.size() == anglesDeg.size(),
                key,
                "has " + values.size() + " values, expected " + anglesDeg.size() + " as of angles");
    }
}
