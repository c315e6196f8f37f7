package org.warmvat.sun;

/**
 * The place from which the sun is seen, with the air that bends its light.
 *
 * @param latitudeDeg north positive, -90 to 90
 * @param longitudeDeg east positive, -180 to 180
 * @param elevationM above sea level
 * @param pressureHPa mean air pressure for refraction
 * @param temperatureC air temperature for refraction; model equation 4.2 uses 10
 * @param leastBeamElevationDeg a sun that stands lower gives no beam, 0 to 10; model equation 4.4 uses 1
 */
public record Observer(
        double latitudeDeg,
        double longitudeDeg,
        double elevationM,
        double pressureHPa,
        double temperatureC,
        double leastBeamElevationDeg) {

    /** Checks the ranges. */
    public Observer {
        require(Math.abs(latitudeDeg) <= 90, "latitude", latitudeDeg);
        require(Math.abs(longitudeDeg) <= 180, "longitude", longitudeDeg);
        require(elevationM > -500 && elevationM < 9000, "elevation", elevationM);
        require(pressureHPa > 0 && pressureHPa < 2000, "pressure", pressureHPa);
        require(temperatureC > -273 && temperatureC < 100, "temperature", temperatureC);
        require(
                leastBeamElevationDeg >= 0 && leastBeamElevationDeg <= 10,
                "least elevation of beam",
                leastBeamElevationDeg);
    }

    /** An observer with the usual least elevation of the beam, {@link SunHour#LEAST_BEAM_ELEVATION_DEG}. */
    public Observer(
            double latitudeDeg, double longitudeDeg, double elevationM, double pressureHPa, double temperatureC) {
        this(latitudeDeg, longitudeDeg, elevationM, pressureHPa, temperatureC, SunHour.LEAST_BEAM_ELEVATION_DEG);
    }

    private static void require(boolean good, String what, double value) {
        if (!good) {
            throw new IllegalArgumentException(what + " out of range: " + value);
        }
    }
}
