package org.warmvat.tank;

import org.warmvat.design.Design;
import org.warmvat.design.surroundings.AssumedWeather;
import org.warmvat.design.surroundings.Sky;
import org.warmvat.weather.Conventions;
import org.warmvat.weather.Weather;

/** Lays a design's conventions about sky and absent weather columns on a weather file. */
public final class SiteConventions {

    private SiteConventions() {}

    /** The weather as a design wants it taken: the very same object where the design keeps to the usual conventions. */
    public static Weather applied(Design design, Weather weather) {
        return weather.under(of(design));
    }

    /** What a design takes for granted. */
    public static Conventions of(Design design) {
        AssumedWeather absent = design.site().assumedWeather();
        Sky sky = design.site().sky();
        return new Conventions(
                absent.windMPerS(),
                absent.relativeHumidityFraction(),
                absent.cloudFraction(),
                sky.cloudFactor(),
                sky.refractionAirC(),
                sky.beamFromElevationDeg());
    }
}
