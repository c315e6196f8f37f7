package org.warmvat.sun;

/**
 * The place from which the sun is seen, with the air that bends its light.
 *
 * @param latitudeDeg north positive, -90 to 90
 * @param longitudeDeg east positive, -180 to 180
 * @param elevationM above sea level
 * @param pressureHPa mean air pressure for refraction
 * @param temperatureC air temperature for refraction; model equation 4.2 uses 10
 */
public record Observer(
        double latitudeDeg, double longitudeDeg, double elevationM, double pressureHPa, double temperatureC) {

    /** Checks the ranges. */
    public Observer {
        require(Math.abs(latitudeDeg) <= 90, "latitude", latitudeDeg);
        require(Math.abs(longitudeDeg) <= 180, "longitude", longitudeDeg);
        require(elevationM > -500 && elevationM < 9000, "elevation", elevationM);
        require(pressureHPa > 0 && pressureHPa < 2000, "pressure", pressureHPa);
        require(temperatureC > -273 && temperatureC < 100, "temperature", temperatureC);
    }

    private static void require(boolean good, String what, double value) {
        if (!good) {
            throw new IllegalArgumentException(what + " out of range: " + value);
        }
    }
}
