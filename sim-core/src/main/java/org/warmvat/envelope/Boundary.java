package org.warmvat.envelope;

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
     * @param roomC its temperature, °C
     * @param filmWPerM2K whole surface coefficient, W/(m2 K)
     */
    record Room(double roomC, double filmWPerM2K) implements Boundary {}

    /**
     * The ground.
     *
     * @param soilResistanceM2KPerW resistance of the soil, m2 K/W
     */
    record Soil(double soilResistanceM2KPerW) implements Boundary {}

    /** A boundary followed through time: film and equivalent temperature at the instant last looked at. */
    final class Face {
        private final Boundary boundary;
        private final Surroundings surroundings;
        private double irradianceWPerM2;
        private double filmWPerM2K;
        private double equivalentC;

        Face(Boundary boundary, Surroundings surroundings) {
            this.boundary = boundary;
            this.surroundings = surroundings;
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
        void look(double timeS, double airC, double windMPerS, double skyC) {
            if (boundary instanceof Open open) {
                double convection = open.film().convectionWPerM2K(windMPerS);
                double radiation = open.film().radiationWPerM2K(airC);
                filmWPerM2K = convection + radiation;
                equivalentC = open.film().equivalentFluxWPerM2(convection, radiation, airC, skyC, irradianceWPerM2)
                        / filmWPerM2K;
            } else if (boundary instanceof Room room) {
                filmWPerM2K = room.filmWPerM2K();
                equivalentC = room.roomC();
            } else if (boundary instanceof Soil soil) {
                filmWPerM2K = 1 / soil.soilResistanceM2KPerW();
                equivalentC = surroundings.groundC(timeS);
            }
        }

        /** Conductance of the face's film per area, W/(m2 K); infinite without any resistance. */
        double filmWPerM2K() {
            return filmWPerM2K;
        }

        /** Temperature that stands for everything the face meets, °C. */
        double equivalentC() {
            return equivalentC;
        }
    }
}
