package org.warmvat.sun;

import java.time.LocalDate;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Apparent position of the sun's centre by the algorithm of I. Reda and A. Andreas (2004), "Solar position algorithm for
 * solar radiation applications", Solar Energy 76(5) 577-589, through the solarpositioning library. Good to 0.0003
 * degrees from the year -2000 to 6000; refraction for the observer's pressure and temperature is included as soon as
 * the centre is less than 0.83 degrees under the horizon. For one thread.
 *
 * <p>What is the same for all places, the sun's way along the stars, changes by a degree a day and is interpolated from
 * midnight to midnight ({@link SunDay}); only the view from the place is computed for each instant.
 */
final class SunPosition {
    private final Observer observer;
    private final double deltaTS;
    private SunDay day;

    /**
     * Sets the place.
     *
     * @param observer the place
     * @param date a day near those asked about: fixes terrestrial less universal time, 69 s in our years
     */
    SunPosition(Observer observer, LocalDate date) {
        this.observer = observer;
        this.deltaTS = DeltaT.estimate(date);
        this.day = SunDay.of(date.toEpochDay(), deltaTS);
    }

    /** Position at an instant in seconds of universal time since 1970; zenith refracted, azimuth from north. */
    SolarPosition at(double epochS) {
        day = day.near((long) Math.floor(epochS / SunDay.DAY_S), deltaTS);
        return SPA.calculateSolarPositionWithTimeDependentParts(
                observer.latitudeDeg(),
                observer.longitudeDeg(),
                observer.elevationM(),
                observer.pressureHPa(),
                observer.temperatureC(),
                day.at(epochS));
    }

    /** Apparent elevation at an instant, degrees. */
    double elevationDeg(double epochS) {
        return 90 - at(epochS).zenithAngle();
    }
}
