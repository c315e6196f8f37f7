package org.warmvat.weather.made;

import java.util.List;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;

/**
 * Twelve monthly means of a place, from which a year of hours can be made.
 *
 * @param site where
 * @param seed picks one of many equally likely years
 * @param humidity what the months' humidity is: {@link Quantity#RELATIVE_HUMIDITY} or {@link Quantity#DEW_POINT}
 * @param months January first
 */
public record Normals(Site site, long seed, Quantity humidity, List<MonthNormals> months) {
    /** Checks that there are twelve months. */
    public Normals {
        months = List.copyOf(months);
        if (months.size() != 12) {
            throw new IllegalArgumentException(months.size() + " months");
        }
        if (humidity != Quantity.RELATIVE_HUMIDITY && humidity != Quantity.DEW_POINT) {
            throw new IllegalArgumentException("not a humidity: " + humidity);
        }
    }

    /** The same place with another seed. */
    public Normals withSeed(long other) {
        return new Normals(site, other, humidity, months);
    }
}
