package org.warmvat.envelope;

import java.util.function.IntToDoubleFunction;
import org.warmvat.network.Film;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;

/** What an outside face meets. */
public sealed interface Boundary {

    /**
     * Weather: wind, air, sky and sun.
     *
     * @param film the outside film
     * @param sunny whether the sun falls on the face
     */
    record Open(OuterFilm film, boolean sunny) implements Boundary {}

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
        private final IntToDoubleFunction sunWPerM2;
        private final int node;
        private final Film film;
        private final double adjust;
        private double irradianceWPerM2;

        /**
         * Follows a boundary.
         *
         * @param name of the face's equivalent temperature in the network
         * @param boundary what the face meets
         * @param sunWPerM2 sun on the face by hour
         * @param surroundings what is outside
         * @param around node of what is around the tank, which a face in a room meets
         * @param assembly the network being gathered
         * @param adjust factor on every conductance behind the face and on its film
         */
        Face(
                String name,
                Boundary boundary,
                IntToDoubleFunction sunWPerM2,
                Surroundings surroundings,
                int around,
                Network.Assembly assembly,
                double adjust) {
            this.boundary = boundary;
            this.adjust = adjust;
            this.sunWPerM2 = sunWPerM2;
            if (boundary instanceof Room room) {
                node = around;
                film = new Film(adjust * room.filmWPerM2K());
            } else if (boundary instanceof Soil soil) {
                node = surroundings.ground();
                film = new Film(adjust / soil.soilResistanceM2KPerW());
            } else {
                node = assembly.known(name, 0);
                film = new Film(0);
            }
        }

        /** Takes the sun of an hour. */
        void enter(int hour) {
            if (boundary instanceof Open open && open.sunny()) {
                irradianceWPerM2 = sunWPerM2.applyAsDouble(hour);
            }
        }

        /** Looks at an instant. */
        void look(double airC, double windMPerS, double skyC, State state) {
            if (boundary instanceof Open open) {
                double convection = open.film().convectionWPerM2K(windMPerS);
                double radiation = open.film().radiationWPerM2K(airC);
                film.set(adjust * (convection + radiation));
                state.setNodeC(
                        node,
                        open.film().equivalentFluxWPerM2(convection, radiation, airC, skyC, irradianceWPerM2)
                                / (convection + radiation));
            }
        }

        /** The node that stands for everything the face meets. */
        int node() {
            return node;
        }

        /** Factor on every conductance behind the face and on its film; the temperature it meets stays. */
        double adjust() {
            return adjust;
        }

        /** The film on the face. */
        Film film() {
            return film;
        }
    }
}
