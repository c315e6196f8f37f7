package org.warmvat.weather.service;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.warmvat.weather.layout.Layout;

/**
 * A file of a public service, told by what stands in it and not by its name.
 *
 * @param kind what it was taken for
 * @param times what its times and values mean
 * @param layout how it is laid out
 * @param slopeDeg slope of the plane that its irradiance is said to be on, 0 for the horizontal
 */
public record Recognised(String kind, String times, Layout layout, double slopeDeg) {
    private static final String SAVED_AGAIN = ", saved again by a spreadsheet";

    private static final List<Kind> KINDS = List.of(
            new Kind("TMY3", Tmy3::in),
            new Kind("PVGIS typical year", PvgisTypicalYear::in),
            new Kind("PVGIS hourly series", PvgisHourly::in),
            new Kind("NSRDB", Nsrdb::in),
            new Kind("NASA POWER hourly", NasaPower::in),
            new Kind("TMY2", Tmy2::in));

    private record Kind(String name, Function<TextHead, Optional<Recognised>> reader) {}

    /** Irradiance is that on the horizontal. */
    Recognised(String kind, String times, Layout layout) {
        this(kind, times, layout, 0);
    }

    /** The names of the kinds known. */
    public static List<String> known() {
        return KINDS.stream().map(Kind::name).toList();
    }

    /** What a text is, where it is of a known kind, as it came or as a spreadsheet has parted its cells by semicolons or tabs. */
    public static Optional<Recognised> in(String text) {
        TextHead head = TextHead.of(text);
        return in(head).or(() -> Stream.of(';', '\t')
                .flatMap(delimiter -> in(head.withCommasFor(delimiter)).stream()
                        .map(found -> found.saved(delimiter, head.hasDecimalCommas() ? ',' : '.')))
                .findFirst());
    }

    private static Optional<Recognised> in(TextHead head) {
        return KINDS.stream()
                .flatMap(kind -> kind.reader().apply(head).stream())
                .findFirst();
    }

    private Recognised saved(char delimiter, char decimalMark) {
        return new Recognised(
                kind.replace(SAVED_AGAIN, "") + SAVED_AGAIN,
                times,
                layout.in(layout.text().parted(delimiter, decimalMark)),
                slopeDeg);
    }

    /** What it was taken for and how it is understood. */
    public String sentence() {
        return "Read as " + kind + ": " + times + ".";
    }
}
