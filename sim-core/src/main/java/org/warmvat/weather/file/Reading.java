package org.warmvat.weather.file;

import java.util.Optional;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;

/**
 * How a weather file is to be read.
 *
 * @param layout how it is laid out, where that is not to be recognised
 * @param fillHolesH holes of up to so many hours are filled from neighbouring days, where they are longer than what straight lines fill;
 *     0 for none
 * @param beside finds the files that a layout names beside the first one
 */
public record Reading(Optional<Layout> layout, int fillHolesH, Beside beside) {
    /** Longest hole that may be asked to be filled: four weeks. */
    public static final int MOST_FILL_HOLES_H = 672;

    /** Recognised by its content, long holes refused, nothing beside. */
    public static final Reading USUAL = new Reading(Optional.empty(), 0, file -> {
        throw new WeatherRefused(file + ": is named in the layout, but files beside cannot be found here");
    });

    /** Refuses a length out of range. */
    public Reading {
        if (fillHolesH < 0 || fillHolesH > MOST_FILL_HOLES_H) {
            throw new IllegalArgumentException("holes to be filled, hours: " + fillHolesH);
        }
    }

    /** The usual way, by a layout. */
    public static Reading by(Layout layout) {
        return new Reading(Optional.of(layout), 0, USUAL.beside);
    }

    /** Finds files. */
    @FunctionalInterface
    public interface Beside {
        /** The bytes of a file in the folder of the first one. */
        byte[] bytes(String file) throws WeatherRefused;
    }
}
