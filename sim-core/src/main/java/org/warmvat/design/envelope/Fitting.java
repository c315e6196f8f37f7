package org.warmvat.design.envelope;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/** A loss beside the envelope: inlet, outlet, gas neck, shaft, hatch, support (equation 2.7). */
public sealed interface Fitting {

    /** The fitting's own name. */
    String name();

    /**
     * A loss stated as a conductance.
     *
     * @param name its name
     * @param uaWPerK conductance from contents to outside air or room, W/K
     */
    record Stated(
            @Key(name = "name", says = "Name of the fitting", pattern = "\\S", form = "text that is not blank")
            String name,

            @Key(name = "ua_w_k", says = "Its loss per kelvin, as known", range = "0 to 1000 W/K")
            double uaWPerK)
            implements Fitting {

        /** Refuses a conductance out of range. */
        public Stated {
            Ranges.check(Stated.class, name, uaWPerK);
        }
    }

    /**
     * Solid bars through the insulation, such as legs or straps.
     *
     * @param name their name
     * @param bars what they are
     */
    record Bar(
            @Key(name = "name", says = "Name of the fitting", pattern = "\\S", form = "text that is not blank")
            String name,

            @Key(name = "bar", says = "Solid bars through the insulation: legs, straps, shafts")
            Bars bars)
            implements Fitting {

        /** Refuses a blank name. */
        public Bar {
            Ranges.check(Bar.class, name, bars);
        }
    }

    /**
     * A pipe full of still slurry that sticks out: a fin.
     *
     * @param name its name
     * @param pipe what it is
     */
    record Pipe(
            @Key(name = "name", says = "Name of the fitting", pattern = "\\S", form = "text that is not blank")
            String name,

            @Key(name = "pipe", says = "A pipe full of still slurry that sticks out: inlets and outlets")
            Stub pipe)
            implements Fitting {

        /** Refuses a blank name. */
        public Pipe {
            Ranges.check(Pipe.class, name, pipe);
        }
    }

    /**
     * Solid bars.
     *
     * @param material what they are made of
     * @param sectionM2 section of one, m2
     * @param lengthM length between warm and cold end, m
     * @param count how many
     */
    record Bars(
            @Key(name = "material", says = "What they are made of", usual = "stainless_steel")
            Material material,

            @Key(name = "section_mm2", says = "Section of one bar", range = "0.01 to 1e6 mm2", per = 1e6)
            double sectionM2,

            @Key(
                    name = "length_mm",
                    says = "Length between its warm and its cold end",
                    range = "1 to 10000 mm",
                    per = 1000)
            double lengthM,

            @Key(name = "count", says = "How many", range = "1 to 1000", usual = "1")
            int count) {

        /** Refuses sizes out of range. */
        public Bars {
            Ranges.check(Bars.class, material, sectionM2, lengthM, count);
        }
    }

    /**
     * A pipe outside the envelope.
     *
     * @param boreM inner diameter, m
     * @param wallMaterial what its wall is made of
     * @param wallM thickness of its wall, m
     * @param lengthM length outside the envelope, m
     * @param insulationM thickness of its insulation, m; 0 for a bare pipe
     * @param insulationWPerMK conductivity of its insulation, W/(m K)
     */
    record Stub(
            @Key(name = "bore_mm", says = "Inner diameter", range = "5 to 2000 mm", per = 1000)
            double boreM,

            @Key(name = "wall_material", says = "What its wall is made of", usual = "pvc_rigid")
            Material wallMaterial,

            @Key(name = "wall_mm", says = "Thickness of its wall", range = "0.1 to 200 mm", usual = "3.2", per = 1000)
            double wallM,

            @Key(name = "length_m", says = "Length outside the envelope", range = "0.01 to 50 m")
            double lengthM,

            @Key(
                    name = "insulation_mm",
                    says = "Thickness of its insulation; 0 for none",
                    range = "0 to 1000 mm",
                    usual = "0",
                    per = 1000)
            double insulationM,

            @Key(
                    name = "insulation_w_mk",
                    says = "Conductivity of its insulation",
                    range = "0.002 to 10 W/mK",
                    usual = "0.027")
            double insulationWPerMK) {

        /** Refuses sizes out of range. */
        public Stub {
            Ranges.check(Stub.class, boreM, wallMaterial, wallM, lengthM, insulationM, insulationWPerMK);
        }
    }
}
