package org.warmvat.weather.service;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.layout.Layout;

/** Writes a layout as the YAML file that would be read as it. */
final class LayoutYaml {
    private static final Map<Character, String> DELIMITERS =
            Map.of(',', "\",\"", ';', "\";\"", '\t', "tab", '|', "bar", Layout.Text.WHOLE_LINE, "none");

    private LayoutYaml() {}

    /** All blocks; a site's datum that is not known is left for the user to fill in. */
    static String of(Layout layout) {
        StringBuilder yaml = new StringBuilder();
        text(yaml, layout.text());
        time(yaml, layout.time());
        if (!layout.missing().isEmpty()) {
            line(yaml, "missing: " + codes(layout.missing()));
        }
        line(yaml, "columns:");
        for (Quantity quantity : Quantity.values()) {
            if (layout.columns().containsKey(quantity)) {
                line(
                        yaml,
                        "  " + quantity.key() + ": "
                                + column(
                                        quantity,
                                        layout.columns().get(quantity),
                                        layout.time().stepMinutes()));
            }
        }
        line(yaml, "site:");
        source(yaml, "name", layout.site().name(), "what to call it");
        source(yaml, "latitude_deg", layout.site().latitudeDeg(), "north positive");
        source(yaml, "longitude_deg", layout.site().longitudeDeg(), "east positive");
        source(yaml, "elevation_m", layout.site().elevationM(), "above sea level");
        source(yaml, "utc_offset_h", layout.site().utcOffsetH(), "local standard time less universal time");
        return yaml.toString();
    }

    private static void line(StringBuilder yaml, String text) {
        yaml.append(text).append('\n');
    }

    private static void text(StringBuilder yaml, Layout.Text text) {
        line(yaml, "text:");
        line(yaml, "  skip_lines: " + text.skipLines());
        line(yaml, "  headings: " + text.headings());
        line(yaml, "  delimiter: " + DELIMITERS.get(text.delimiter()));
        line(yaml, "  decimal_mark: \"" + text.decimalMark() + '"');
        text.until().ifPresent(until -> line(yaml, "  until: " + quoted(until)));
        if (text.latin1()) {
            line(yaml, "  encoding: latin-1");
        }
    }

    private static void time(StringBuilder yaml, Layout.Time time) {
        line(yaml, "time:");
        line(yaml, "  columns: " + places(time.columns()));
        line(yaml, "  form: " + quoted(time.form().form()));
        line(yaml, "  stamp: " + time.stamp().key());
        line(yaml, "  clock: " + time.clock().name().toLowerCase(Locale.ROOT));
        if (time.typical()) {
            line(yaml, "  typical: true");
        }
        if (time.stepMinutes() != 60) {
            line(yaml, "  step_min: " + time.stepMinutes());
        }
        time.instantMinutes().ifPresent(minutes -> line(yaml, "  instant_min: " + number(minutes)));
    }

    private static String column(Quantity quantity, Layout.Column column, int stepMinutes) {
        ColumnUnit converts = new ColumnUnit(column.factor(), column.offset());
        Optional<String> unit = ColumnUnit.of(quantity).keySet().stream()
                .filter(word -> ColumnUnit.of(quantity, word, stepMinutes).equals(converts))
                .findFirst();
        boolean plain =
                column.factor() == 1 && column.offset() == 0 && column.missing().isEmpty();
        if (plain && column.places().size() == 1 && !(column.place() instanceof Layout.ByPosition)) {
            return place(column.place());
        }
        return "{column: " + places(column.places())
                + (unit.isPresent() ? ", unit: " + unit.get() : "")
                + (unit.isPresent() || column.factor() == 1 ? "" : ", factor: " + number(column.factor()))
                + (unit.isPresent() || column.offset() == 0 ? "" : ", offset: " + number(column.offset()))
                + (column.missing().isEmpty() ? "" : ", missing: " + codes(column.missing()))
                + '}';
    }

    private static String places(List<Layout.Place> places) {
        return places.size() == 1
                ? place(places.get(0))
                : places.stream().map(LayoutYaml::place).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String place(Layout.Place place) {
        if (place instanceof Layout.ByNumber number) {
            return Integer.toString(number.column());
        }
        return place instanceof Layout.ByPosition position
                ? "{from: " + position.from() + ", to: " + position.to() + '}'
                : quoted(((Layout.ByHeading) place).name());
    }

    private static void source(StringBuilder yaml, String key, Layout.Source source, String meaning) {
        String said;
        if (source.cell().isPresent()) {
            Layout.LeadCell cell = source.cell().get();
            said = "{line: " + cell.line() + ", cell: " + cell.cell() + '}';
        } else if (source.pattern().isPresent()) {
            said = "{pattern: " + quoted(source.pattern().get()) + '}';
        } else if (source.typed().isEmpty()) {
            said = "  # fill in: " + meaning;
        } else {
            said = key.equals("name")
                    ? quoted(source.typed().get())
                    : source.typed().get();
        }
        line(yaml, "  " + key + ": " + said);
    }

    private static String codes(Set<String> codes) {
        return new TreeSet<>(codes).stream().map(LayoutYaml::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(10))
                .stripTrailingZeros()
                .toPlainString();
    }
}
