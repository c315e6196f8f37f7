package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.warmvat.design.keys.Shown;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Reads layout files: YAML or JSON that says how a foreign hourly text is laid out. */
public final class LayoutDocument {

    /** Name of the schema's resource. */
    static final String SCHEMA = "layout.schema.json";

    private static final Map<String, Character> DELIMITERS =
            Map.of(",", ',', "comma", ',', ";", ';', "semicolon", ';', "\t", '\t', "tab", '\t', "|", '|', "bar", '|');

    private final LayoutBlock root;

    private LayoutDocument(LayoutBlock root) {
        this.root = root;
    }

    /**
     * Reads a layout file.
     *
     * @param file the file
     * @throws InputRefused with every fault of the file, up to twenty
     */
    public static Layout read(Path file) {
        return parse(file.toString(), SourceText.read(file));
    }

    /**
     * Reads the text of a layout.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param text the text
     * @throws InputRefused with every fault, up to twenty
     */
    public static Layout parse(String name, String text) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(name, lines);
        ObjectNode tree =
                name.endsWith(".json") ? JsonText.read(text, lines, faults) : YamlText.read(text, lines, faults);
        faults.refuseIfAny();
        Layout layout = new LayoutDocument(new LayoutBlock("", tree, faults)).layout();
        faults.refuseIfAny();
        return layout;
    }

    /** The JSON Schema of the layout file. */
    public static String schema() {
        try (InputStream in = LayoutDocument.class.getResourceAsStream(SCHEMA)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Layout layout() {
        root.allow("text", "time", "columns", "missing", "site");
        return new Layout(
                text(root.block("text", false)),
                time(root.block("time", true)),
                columns(root.block("columns", true)),
                missing(),
                site(root.block("site", true)));
    }

    private static Layout.Text text(LayoutBlock text) {
        text.allow("skip_lines", "headings", "delimiter", "decimal_mark");
        return new Layout.Text(
                text.whole("skip_lines", 0, 10_000, 0),
                text.flag("headings", true),
                text.choice("delimiter", DELIMITERS, ','),
                text.choice("decimal_mark", Map.of(".", '.', "point", '.', ",", ',', "comma", ','), '.'));
    }

    private static Layout.Time time(LayoutBlock time) {
        time.allow("columns", "form", "stamp", "clock", "typical");
        List<Layout.Place> columns = time.places("columns");
        Map<String, Stamp> stamps = new HashMap<>();
        for (Stamp stamp : Stamp.values()) {
            stamps.put(stamp.key(), stamp);
        }
        return new Layout.Time(
                columns,
                form(time),
                time.needed("stamp", stamps, Stamp.HOUR_END),
                time.choice(
                        "clock",
                        Map.of("local", Layout.Clock.LOCAL, "utc", Layout.Clock.UTC, "solar", Layout.Clock.SOLAR),
                        Layout.Clock.LOCAL),
                time.flag("typical", false));
    }

    private static TimeForm form(LayoutBlock time) {
        String form = time.text("form", TimeForm.ISO.form());
        try {
            return new TimeForm(form);
        } catch (IllegalArgumentException e) {
            time.fault(
                    "form",
                    Shown.quoted(form) + ", expected year Y, month M, day D and hour h, such as DD.MM.YYYY hh:mm");
            return TimeForm.ISO;
        }
    }

    private static Map<Quantity, Layout.Column> columns(LayoutBlock columns) {
        List<String> known = new ArrayList<>();
        Map<Quantity, Layout.Column> result = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            known.add(quantity.key());
            columns.child(quantity.key()).ifPresent(node -> result.put(quantity, column(columns, quantity, node)));
        }
        columns.allow(known.toArray(String[]::new));
        if (!result.containsKey(Quantity.AIR)) {
            columns.missing("air_c", "the column of air temperature");
        }
        boolean both = result.containsKey(Quantity.BEAM) && result.containsKey(Quantity.DIFFUSE);
        if (!result.containsKey(Quantity.GLOBAL) && !both) {
            columns.missing("global_w_m2", "it, or both beam_w_m2 and diffuse_w_m2");
        }
        return result;
    }

    private static Layout.Column column(LayoutBlock columns, Quantity quantity, JsonNode node) {
        if (!node.isObject()) {
            return new Layout.Column(columns.place(quantity.key()), 1, 0);
        }
        LayoutBlock column = columns.block(quantity.key(), true);
        column.allow("column", "unit", "factor", "offset");
        ColumnUnit unit = column.choice("unit", ColumnUnit.of(quantity), ColumnUnit.SAME);
        double factor = column.number("factor", 1);
        double offset = column.number("offset", 0);
        return new Layout.Column(
                column.place("column"), unit.factor() * factor, unit.factor() * offset + unit.offset());
    }

    private Set<String> missing() {
        Set<String> codes = new LinkedHashSet<>();
        root.child("missing").ifPresent(node -> {
            if (!node.isArray()) {
                root.fault("missing", "expected a list of codes, such as [-999, NA]");
            }
            node.forEach(code -> codes.add(code.asText()));
        });
        return codes;
    }

    private static Layout.SiteSource site(LayoutBlock site) {
        site.allow("name", "latitude_deg", "longitude_deg", "elevation_m", "utc_offset_h");
        return new Layout.SiteSource(
                site.source("name", false),
                site.source("latitude_deg", true),
                site.source("longitude_deg", true),
                site.source("elevation_m", true),
                site.source("utc_offset_h", true));
    }
}
