package org.warmvat.sun;

/**
 * The sun's declination and hour angle by the low-precision formulas of the Astronomical Almanac (0.01 degrees from 1950
 * to 2050; the constants are quoted from memory). Only used to tell hours that are plainly day or plainly night from
 * those that need the full algorithm, with a margin of half a degree; no result is taken from it.
 */
final class AlmanacSun {
    private static final double EPOCH_2000_S = 946_728_000;

    private final double sinLatitude;
    private final double cosLatitude;
    private final double longitudeDeg;

    AlmanacSun(Observer observer) {
        double latitude = Math.toRadians(observer.latitudeDeg());
        this.sinLatitude = Math.sin(latitude);
        this.cosLatitude = Math.cos(latitude);
        this.longitudeDeg = observer.longitudeDeg();
    }

    /** Sine of the declination and hour angle (degrees, -180 to 180, afternoon positive) at an instant. */
    Place at(double epochS) {
        double days = (epochS - EPOCH_2000_S) / 86_400;
        double anomaly = Math.toRadians(357.528 + 0.9856003 * days);
        double mean = 280.460 + 0.9856474 * days;
        double longitude = Math.toRadians(mean + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2 * anomaly));
        double obliquity = Math.toRadians(23.439 - 4e-7 * days);
        double ascension = Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude));
        double sidereal = 15 * (18.697374558 + 24.06570982441908 * days);
        double hourAngle = Math.IEEEremainder(sidereal + longitudeDeg - Math.toDegrees(ascension), 360);
        return new Place(Math.sin(obliquity) * Math.sin(longitude), hourAngle);
    }

    /** Geometric elevation in degrees for a declination and an hour angle. */
    double elevationDeg(double sinDeclination, double hourAngleDeg) {
        double cosDeclination = Math.sqrt(1 - sinDeclination * sinDeclination);
        double sine =
                sinLatitude * sinDeclination + cosLatitude * cosDeclination * Math.cos(Math.toRadians(hourAngleDeg));
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine))));
    }

    /** A place of the sun in the sky of an observer. */
    record Place(double sinDeclination, double hourAngleDeg) {}
}
