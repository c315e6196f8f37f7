package org.warmvat.weather.service;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.warmvat.weather.layout.Layout;

/**
 * A file of a public service, told by what stands in it and not by its name.
 *
 * @param kind what it was taken for
 * @param times what its times and values mean
 * @param layout how it is laid out
 */
public record Recognised(String kind, String times, Layout layout) {
    /** The kinds known, for a message. */
    public static final String KNOWN =
            "the typical years and hourly series of PVGIS, NSRDB, NASA POWER by the hour, TMY2 and TMY3";

    private static final List<Function<TextHead, Optional<Recognised>>> KINDS =
            List.of(Tmy3::in, PvgisTypicalYear::in, PvgisHourly::in, Nsrdb::in, NasaPower::in, Tmy2::in);

    /** What a text is, where it is of a known kind. */
    public static Optional<Recognised> in(String text) {
        TextHead head = TextHead.of(text);
        return KINDS.stream().flatMap(kind -> kind.apply(head).stream()).findFirst();
    }

    /** What it was taken for and how it is understood. */
    public String sentence() {
        return "Read as " + kind + ": " + times + ".";
    }
}
