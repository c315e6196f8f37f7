package org.warmvat.weather;

/**
 * Where the weather was measured.
 *
 * @param name as the file calls it
 * @param latitudeDeg north positive, -90 to 90
 * @param longitudeDeg east positive, -180 to 180
 * @param elevationM above sea level, -450 to 6000
 * @param utcOffsetH local standard time less universal time, -12 to 14; no daylight saving
 */
public record Site(String name, double latitudeDeg, double longitudeDeg, double elevationM, double utcOffsetH) {
    /** Checks the ranges. */
    public Site {
        require(latitudeDeg >= -90 && latitudeDeg <= 90, "latitude", latitudeDeg);
        require(longitudeDeg >= -180 && longitudeDeg <= 180, "longitude", longitudeDeg);
        require(elevationM >= -450 && elevationM <= 6000, "elevation", elevationM);
        require(utcOffsetH >= -12 && utcOffsetH <= 14, "UTC offset", utcOffsetH);
    }

    /** Pressure of the standard atmosphere at the elevation, hPa (ISO 2533). */
    public double standardPressureHPa() {
        return 1013.25 * Math.pow(1 - 2.25577e-5 * elevationM, 5.25588);
    }

    private static void require(boolean good, String what, double value) {
        if (!good) {
            throw new IllegalArgumentException(what + " out of range: " + value);
        }
    }
}
