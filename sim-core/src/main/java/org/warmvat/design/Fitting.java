package org.warmvat.design;

/** A loss beside the envelope: inlet, outlet, gas neck, shaft, hatch, support (equation 2.7). */
public sealed interface Fitting {

    /** The fitting's own name. */
    String name();

    /**
     * A loss stated as a conductance.
     *
     * @param name its name
     * @param uaWPerK conductance from contents to outside air or room, W/K, 0..1000
     */
    record Stated(String name, double uaWPerK) implements Fitting {

        /** Refuses a conductance out of range. */
        public Stated {
            Ranges.named("fitting", name);
            Ranges.within("conductance of " + name + " in W/K", uaWPerK, 0, 1000);
        }
    }

    /**
     * Solid bars through the foam, such as legs or straps.
     *
     * @param name their name
     * @param material what they are made of
     * @param sectionM2 section of one, m2, above 0 and up to 1
     * @param lengthM length between warm and cold end, m, 0.001..10
     * @param count how many, 1..1000
     */
    record Bar(String name, Material material, double sectionM2, double lengthM, int count) implements Fitting {

        /** Refuses sizes out of range. */
        public Bar {
            Ranges.named("fitting", name);
            Ranges.above("section of " + name + " in m2", sectionM2, 0, 1);
            Ranges.within("length of " + name + " in m", lengthM, 0.001, 10);
            Ranges.within("count of " + name, count, 1, 1000);
        }
    }

    /**
     * A pipe full of still slurry that sticks out: a fin.
     *
     * @param name its name
     * @param boreM inner diameter, m, 0.005..2
     * @param wall wall material and thickness
     * @param insulation insulation, thickness 0 for a bare pipe
     * @param lengthM length outside the envelope, m, 0.01..50
     * @param still what is taken for the still slurry in it and the air around it
     */
    record Pipe(String name, double boreM, PipeWall wall, PipeInsulation insulation, double lengthM, PipeFilm still)
            implements Fitting {

        /** Refuses sizes out of range. */
        public Pipe {
            Ranges.named("fitting", name);
            Ranges.within("bore of " + name + " in m", boreM, 0.005, 2);
            Ranges.within("length of " + name + " in m", lengthM, 0.01, 50);
        }
    }

    /**
     * The wall of a pipe.
     *
     * @param material what it is made of
     * @param thicknessM thickness, m, above 0 and up to 0.2
     */
    record PipeWall(Material material, double thicknessM) {

        /** Refuses a thickness out of range. */
        public PipeWall {
            Ranges.above("pipe wall in m", thicknessM, 0, 0.2);
        }
    }

    /**
     * Insulation around a pipe.
     *
     * @param thicknessM thickness, m, 0..1; 0 means none
     * @param conductivityWPerMK conductivity, W/(m K), 0.002..10
     */
    record PipeInsulation(double thicknessM, double conductivityWPerMK) {

        /** Refuses numbers out of range. */
        public PipeInsulation {
            Ranges.within("pipe insulation in m", thicknessM, 0, 1);
            Ranges.within("conductivity of the pipe insulation in W/mK", conductivityWPerMK, 0.002, 10);
        }
    }

    /**
     * Still slurry inside, air outside.
     *
     * @param slurryConductivityWPerMK conductivity of the still slurry, W/(m K), 0.1..5
     * @param outerWPerM2K outer film, W/(m2 K), 0.1..100
     */
    record PipeFilm(double slurryConductivityWPerMK, double outerWPerM2K) {

        /** Refuses numbers out of range. */
        public PipeFilm {
            Ranges.within("conductivity of still slurry in W/mK", slurryConductivityWPerMK, 0.1, 5);
            Ranges.within("outer film of a pipe in W/m2K", outerWPerM2K, 0.1, 100);
        }
    }
}
