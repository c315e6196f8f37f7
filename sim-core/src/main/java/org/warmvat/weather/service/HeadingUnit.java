package org.warmvat.weather.service;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.layout.ColumnUnit;

/** Finds units in the headings of a table, and where they say none, what the size of the values says. */
final class HeadingUnit {
    private static final Pattern BETWEEN = Pattern.compile("[\\s\\[\\](),;:_]+");
    /** How else units are written, after small letters and without signs for degrees and powers. */
    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("%", "percent"),
            Map.entry("degc", "c"),
            Map.entry("celsius", "c"),
            Map.entry("degf", "f"),
            Map.entry("fahrenheit", "f"),
            Map.entry("kelvin", "k"),
            Map.entry("kmh", "km/h"),
            Map.entry("kph", "km/h"),
            Map.entry("kn", "kt"),
            Map.entry("knot", "kt"),
            Map.entry("mbar", "hpa"),
            Map.entry("mb", "hpa"),
            Map.entry("tenth", "tenths"),
            Map.entry("octas", "eighths"),
            Map.entry("oktas", "eighths"));

    private HeadingUnit() {}

    /** The unit of a column in the words of layouts, in which the largest value is given; empty where it seems to be our own. */
    static Optional<String> of(Quantity quantity, String heading, double most) {
        Set<String> known = ColumnUnit.of(quantity).keySet();
        Optional<String> said = words(heading).filter(known::contains).findFirst();
        return said.isPresent() ? said : bySize(quantity, most);
    }

    /** Whether a cell holds a unit and nothing else. */
    static boolean isUnit(String cell) {
        return words(cell)
                .anyMatch(word -> Stream.of(Quantity.values())
                        .anyMatch(quantity -> ColumnUnit.of(quantity).containsKey(word)));
    }

    private static Stream<String> words(String heading) {
        String plain = heading.toLowerCase(Locale.ROOT)
                .replace("²", "2")
                .replace("^2", "2")
                .replace("°", "");
        return BETWEEN.splitAsStream(plain).map(word -> OTHER_WORDS.getOrDefault(word, word));
    }

    private static Optional<String> bySize(Quantity quantity, double most) {
        return Optional.ofNullable(
                switch (quantity) {
                    case RELATIVE_HUMIDITY, CLOUD -> most > 1 ? "percent" : null;
                    case AIR, DEW_POINT -> most > 200 ? "k" : null;
                    case PRESSURE -> most > 40_000 ? "pa" : most < 35 ? "inhg" : most < 120 ? "kpa" : null;
                    default -> null;
                });
    }
}
