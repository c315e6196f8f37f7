package org.warmvat.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SPA.SpaTimeDependent;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Apparent position of the sun's centre by the algorithm of I. Reda and A. Andreas (2004), "Solar position algorithm for
 * solar radiation applications", Solar Energy 76(5) 577-589, through the solarpositioning library. Good to 0.0003
 * degrees from the year -2000 to 6000; refraction for the observer's pressure and temperature is included as soon as
 * the centre is less than 0.83 degrees under the horizon. The library takes whole seconds; over the rest of a second the
 * earth turns on.
 */
final class SunPosition {
    /** Turn of the earth against the mean equinox. */
    private static final double TURN_DEG_PER_S = 360.98564736629 / 86_400;

    private final Observer observer;
    private final double deltaTS;

    /**
     * Sets the place.
     *
     * @param observer the place
     * @param date a day near those asked about: fixes terrestrial less universal time, 69 s in our years
     */
    SunPosition(Observer observer, LocalDate date) {
        this.observer = observer;
        this.deltaTS = DeltaT.estimate(date);
    }

    /** What the sun does at an instant in seconds of universal time since 1970, seen from nowhere yet. */
    private SpaTimeDependent sun(double epochS) {
        long second = (long) Math.floor(epochS);
        SpaTimeDependent sun =
                SPA.calculateSpaTimeDependentParts(Instant.ofEpochSecond(second).atZone(ZoneOffset.UTC), deltaTS);
        return new SpaTimeDependent(
                sun.thetaDegrees(),
                sun.betaDegrees(),
                sun.r(),
                sun.deltaPsi(),
                sun.epsilonDegrees(),
                sun.lambdaDegrees(),
                sun.nuDegrees() + TURN_DEG_PER_S * (epochS - second),
                sun.alphaDegrees(),
                sun.deltaDegrees());
    }

    private SolarPosition seen(SpaTimeDependent sun) {
        return SPA.calculateSolarPositionWithTimeDependentParts(
                observer.latitudeDeg(),
                observer.longitudeDeg(),
                observer.elevationM(),
                observer.pressureHPa(),
                observer.temperatureC(),
                sun);
    }

    /** Position at an instant in seconds of universal time since 1970; zenith refracted, azimuth from north. */
    SolarPosition at(double epochS) {
        return seen(sun(epochS));
    }

    /** Apparent elevation at an instant, degrees. */
    double elevationDeg(double epochS) {
        return 90 - at(epochS).zenithAngle();
    }

    /** Elevation without air, to a tenth of a degree in our centuries: what tells plain day and plain night, and no more. */
    double roughElevationDeg(double epochS) {
        Instant instant = Instant.ofEpochSecond((long) epochS);
        return 90
                - Grena3.calculateSolarPosition(
                                instant.atZone(ZoneOffset.UTC),
                                observer.latitudeDeg(),
                                observer.longitudeDeg(),
                                deltaTS)
                        .zenithAngle();
    }

    /** Elevation and hour angle at an instant. */
    Sight sight(double epochS) {
        SpaTimeDependent sun = sun(epochS);
        double hourAngle = Math.IEEEremainder(sun.nuDegrees() + observer.longitudeDeg() - sun.alphaDegrees(), 360);
        return new Sight(90 - seen(sun).zenithAngle(), hourAngle);
    }

    /**
     * The sun in the sky.
     *
     * @param elevationDeg apparent
     * @param hourAngleDeg -180 to 180, afternoon positive
     */
    record Sight(double elevationDeg, double hourAngleDeg) {}
}
