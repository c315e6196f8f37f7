package org.warmvat.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Apparent position of the sun's centre by the algorithm of I. Reda and A. Andreas (2004), "Solar position algorithm for
 * solar radiation applications", Solar Energy 76(5) 577-589, through the solarpositioning library. Good to 0.0003
 * degrees from the year -2000 to 6000; refraction for the observer's pressure and temperature is included as soon as
 * the centre is less than 0.83 degrees under the horizon.
 */
final class SunPosition {
    /** The library reads whole seconds; the rest of a second is given as the turn of the earth against the stars. */
    private static final double EARTH_TURNS_DEG_PER_S = 360.98564737 / 86_400;

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

    /** Position at an instant in seconds of universal time since 1970; zenith refracted, azimuth from north. */
    SolarPosition at(double epochS) {
        long whole = (long) Math.floor(epochS);
        double turned = observer.longitudeDeg() + EARTH_TURNS_DEG_PER_S * (epochS - whole);
        return SPA.calculateSolarPosition(
                Instant.ofEpochSecond(whole).atZone(ZoneOffset.UTC),
                observer.latitudeDeg(),
                turned > 180 ? turned - 360 : turned,
                observer.elevationM(),
                deltaTS,
                observer.pressureHPa(),
                observer.temperatureC());
    }

    /** Apparent elevation at an instant, degrees. */
    double elevationDeg(double epochS) {
        return 90 - at(epochS).zenithAngle();
    }
}
