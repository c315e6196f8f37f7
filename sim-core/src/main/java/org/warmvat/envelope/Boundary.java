package org.warmvat.envelope;

import org.warmvat.network.Film;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.SunHour;

/** What an outside face meets. */
public sealed interface Boundary {

    /** Sun on a face in an hour, W/m2. */
    @FunctionalInterface
    interface FaceIrradiance {
        /** Nothing, as under a roof. */
        FaceIrradiance NONE = (light, sun) -> 0;

        /** Mean irradiance of the hour, W/m2. */
        double wattsPerM2(Irradiance light, SunHour sun);
    }

    /**
     * Weather: wind, air, sky and sun.
     *
     * @param film the outside film
     * @param irradiance sun on the face
     */
    record Open(OuterFilm film, FaceIrradiance irradiance) implements Boundary {}

    /**
     * A room.
     *
     * @param filmWPerM2K whole surface coefficient, W/(m2 K)
     */
    record Room(double filmWPerM2K) implements Boundary {}

    /**
     * The ground.
     *
     * @param soilResistanceM2KPerW resistance of the soil, m2 K/W
     */
    record Soil(double soilResistanceM2KPerW) implements Boundary {}

    /** A boundary followed through time: the node that stands for all it meets, and the film before it. */
    final class Face {
        private final Boundary boundary;
        private final Surroundings surroundings;
        private final int node;
        private final Film film;
        private double irradianceWPerM2;

        /**
         * Follows a boundary.
         *
         * @param name of the face's equivalent temperature in the network
         * @param boundary what the face meets
         * @param surroundings what is outside
         * @param around node of what is around the tank, which a face in a room meets
         * @param assembly the network being gathered
         */
        Face(String name, Boundary boundary, Surroundings surroundings, int around, Network.Assembly assembly) {
            this.boundary = boundary;
            this.surroundings = surroundings;
            if (boundary instanceof Room room) {
                node = around;
                film = new Film(room.filmWPerM2K());
            } else if (boundary instanceof Soil soil) {
                node = surroundings.ground();
                film = new Film(1 / soil.soilResistanceM2KPerW());
            } else {
                node = assembly.known(name, 0);
                film = new Film(0);
            }
        }

        /** Takes the sun of an hour. */
        void enter(int hour) {
            if (boundary instanceof Open open) {
                irradianceWPerM2 = open.irradiance()
                        .wattsPerM2(
                                surroundings.weather().light(hour),
                                surroundings.weather().sun(hour));
            }
        }

        /** Looks at an instant. */
        void look(double airC, double windMPerS, double skyC, State state) {
            if (boundary instanceof Open open) {
                double convection = open.film().convectionWPerM2K(windMPerS);
                double radiation = open.film().radiationWPerM2K(airC);
                film.set(convection + radiation);
                state.setNodeC(
                        node,
                        open.film().equivalentFluxWPerM2(convection, radiation, airC, skyC, irradianceWPerM2)
                                / film.wPerM2K());
            }
        }

        /** The node that stands for everything the face meets. */
        int node() {
            return node;
        }

        /** The film on the face. */
        Film film() {
            return film;
        }
    }
}
