package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.warmvat.design.keys.KeyPath;
import org.warmvat.design.keys.Shown;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Reads layout files: YAML or JSON that says how a foreign hourly text is laid out. */
public final class LayoutDocument {

    private static final FileSchema SCHEMA = new FileSchema(schemaTree());
    private static final Map<String, Character> DELIMITERS = Map.of(
            ",",
            ',',
            "comma",
            ',',
            ";",
            ';',
            "semicolon",
            ';',
            "tab",
            '\t',
            "|",
            '|',
            "bar",
            '|',
            "none",
            Layout.Text.WHOLE_LINE);
    private static final Set<String> WORDS = Set.of("unit", "stamp", "clock", "delimiter", "decimal_mark", "encoding");
    private static final String BLANK_LINE = "blank_line";

    private final JsonNode tree;
    private final Faults faults;

    LayoutDocument(FileTree file) {
        tree = file.keys();
        faults = file.faults();
    }

    /**
     * Reads the bytes of a layout file.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param bytes UTF-8 text
     * @throws InputRefused with every fault of the file, up to twenty
     */
    public static Layout read(String name, byte[] bytes) {
        return parse(name, SourceText.decode(name, bytes));
    }

    /**
     * Reads the text of a layout.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param text the text
     * @throws InputRefused with every fault, up to twenty
     */
    public static Layout parse(String name, String text) {
        FileTree file = FileTree.read(name, text);
        inSmallLetters(file.keys());
        file.checked(SCHEMA);
        Layout layout = new LayoutDocument(file).layout();
        file.faults().refuseIfAny();
        return layout;
    }

    /** Words for units and the like may have capitals. */
    private static void inSmallLetters(JsonNode node) {
        if (node instanceof ObjectNode block) {
            for (String key : WORDS) {
                if (block.path(key).isTextual()) {
                    String word = block.path(key).asText().toLowerCase(Locale.ROOT);
                    block.put(key, word.equals("\t") ? "tab" : word);
                }
            }
        }
        node.forEach(LayoutDocument::inSmallLetters);
    }

    /** The JSON Schema of the layout file. */
    public static String schema() {
        return SCHEMA.text();
    }

    /** The shipped schema, with the units of every column, which stand in one place only. */
    private static JsonNode schemaTree() {
        JsonNode root = FileSchema.shipped("layout.schema.json").root();
        for (Quantity quantity : Quantity.values()) {
            addBranches((ObjectNode) root.at("/$defs/columns/properties/" + quantity.key()), root, quantity);
        }
        return root;
    }

    private static void addBranches(ObjectNode column, JsonNode root, Quantity quantity) {
        ArrayNode branches = column.putArray("anyOf");
        branches.add(root.at("/$defs/places/anyOf/0").deepCopy());
        branches.add(root.at("/$defs/places/anyOf/1").deepCopy());
        ObjectNode block = branches.addObject().put("type", "object");
        ObjectNode keys = block.putObject("properties");
        keys.putObject("column").put("$ref", "#/$defs/places");
        ObjectNode unit = keys.putObject("unit").put("type", "string");
        ColumnUnit.of(quantity).keySet().forEach(unit.putArray("enum")::add);
        describe(keys.putObject("factor"), "Multiplies the cell before the unit is converted");
        describe(keys.putObject("offset"), "Added after the factor, before the unit is converted");
        keys.putObject("missing").put("$ref", "#/$defs/codes");
        block.putArray("required").add("column");
        block.put("additionalProperties", false);
    }

    private static void describe(ObjectNode number, String description) {
        number.put("description", description)
                .put("type", "number")
                .put("minimum", -1e6)
                .put("maximum", 1e6);
    }

    private Layout layout() {
        Layout.SiteSource site = site(tree.path("site"));
        List<Layout.Beside> beside = new ArrayList<>();
        for (int i = 0; i < tree.path("beside").size(); i++) {
            JsonNode other = tree.path("beside").get(i);
            beside.add(new Layout.Beside(
                    other.path("file").asText(), rows(KeyPath.entry("beside", i), other, site, List.of())));
        }
        Layout layout = rows("", tree, site, beside);
        requireAirAndSun(layout);
        return layout;
    }

    private void requireAirAndSun(Layout layout) {
        Set<Quantity> all = EnumSet.noneOf(Quantity.class);
        all.addAll(layout.columns().keySet());
        layout.beside().forEach(other -> all.addAll(other.layout().columns().keySet()));
        if (!all.contains(Quantity.AIR)) {
            faults.add("columns.air_c", "is missing, expected the column of air temperature");
        }
        if (!all.contains(Quantity.GLOBAL) && !all.containsAll(Set.of(Quantity.BEAM, Quantity.DIFFUSE))) {
            faults.add("columns.global_w_m2", "is missing, expected it, or both beam_w_m2 and diffuse_w_m2");
        }
    }

    private Layout rows(String path, JsonNode block, Layout.SiteSource site, List<Layout.Beside> beside) {
        Layout.Time time = time(KeyPath.key(path, "time"), block.path("time"));
        return new Layout(
                text(KeyPath.key(path, "text"), block.path("text")),
                time,
                columns(block.path("columns"), time.stepMinutes()),
                codes(block.path("missing")),
                site,
                beside);
    }

    /** How the text is cut into rows and cells. */
    Layout.Text text(String path, JsonNode text) {
        return new Layout.Text(
                text.path("skip_lines").asInt(0),
                text.path("headings").asBoolean(true),
                DELIMITERS.getOrDefault(text.path("delimiter").asText(","), ','),
                Set.of(",", "comma").contains(text.path("decimal_mark").asText(".")) ? ',' : '.',
                text.has("until")
                        ? Optional.of(until(
                                KeyPath.key(path, "until"), text.path("until").asText()))
                        : Optional.empty(),
                text.path("encoding").asText().equals("latin-1"));
    }

    private String until(String path, String until) {
        return until.equals(BLANK_LINE) ? "^\\s*$" : regex(path, until, 0);
    }

    /** A regular expression with at least so many groups. */
    private String regex(String path, String text, int groups) {
        try {
            if (Pattern.compile(text).matcher("").groupCount() < groups) {
                faults.add(path, Shown.quoted(text) + ", expected a group in round brackets around what is sought");
            }
        } catch (PatternSyntaxException e) {
            faults.add(path, Shown.quoted(text) + ", expected a regular expression (" + e.getDescription() + ")");
        }
        return text;
    }

    private Layout.Time time(String path, JsonNode time) {
        int step = time.path("step_min").asInt(60);
        if (60 % step != 0) {
            faults.add(
                    KeyPath.key(path, "step_min"),
                    step + ", expected minutes that divide an hour: 5, 10, 15, 20, 30 or 60");
        }
        return new Layout.Time(
                places(time.path("columns")),
                form(KeyPath.key(path, "form"), time.path("form").asText(TimeForm.ISO.form())),
                Stamp.valueOf(time.path("stamp").asText().toUpperCase(Locale.ROOT)),
                Layout.Clock.valueOf(time.path("clock").asText("local").toUpperCase(Locale.ROOT)),
                time.path("typical").asBoolean(false),
                step,
                FileTree.number(time, "instant_min"));
    }

    private TimeForm form(String path, String form) {
        try {
            return new TimeForm(form);
        } catch (IllegalArgumentException e) {
            faults.add(
                    path,
                    Shown.quoted(form) + ", expected year Y, month M, day D and hour h, such as DD.MM.YYYY hh:mm");
            return TimeForm.ISO;
        }
    }

    static List<Layout.Place> places(JsonNode node) {
        List<Layout.Place> places = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(one -> places.add(place(one)));
        } else {
            places.add(place(node));
        }
        return places;
    }

    static Layout.Place place(JsonNode node) {
        if (node.isNumber()) {
            return new Layout.ByNumber(node.asInt());
        }
        return node.isObject()
                ? new Layout.ByPosition(
                        node.path("from").asInt(), node.path("to").asInt())
                : new Layout.ByHeading(node.asText().strip());
    }

    private static Map<Quantity, Layout.Column> columns(JsonNode columns, int stepMinutes) {
        Map<Quantity, Layout.Column> result = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (columns.has(quantity.key())) {
                result.put(quantity, column(quantity, columns.path(quantity.key()), stepMinutes));
            }
        }
        return result;
    }

    private static Layout.Column column(Quantity quantity, JsonNode node, int stepMinutes) {
        if (!node.isObject()) {
            return new Layout.Column(place(node), 1, 0);
        }
        ColumnUnit unit = ColumnUnit.of(quantity, node.path("unit").asText(), stepMinutes);
        return new Layout.Column(
                places(node.path("column")),
                unit.factor() * node.path("factor").asDouble(1),
                unit.factor() * node.path("offset").asDouble(0) + unit.offset(),
                codes(node.path("missing")));
    }

    static Set<String> codes(JsonNode missing) {
        Set<String> codes = new LinkedHashSet<>();
        missing.forEach(code -> codes.add(code.asText()));
        return codes;
    }

    private Layout.SiteSource site(JsonNode site) {
        return new Layout.SiteSource(
                site.has("name") ? source(site, "name") : Layout.Source.of("unnamed site"),
                source(site, "latitude_deg"),
                source(site, "longitude_deg"),
                source(site, "elevation_m"),
                source(site, "utc_offset_h"));
    }

    private Layout.Source source(JsonNode site, String key) {
        JsonNode node = site.path(key);
        String path = KeyPath.key("site", key);
        if (!node.isObject()) {
            return Layout.Source.of(node.asText());
        }
        if (node.has("pattern") && node.size() == 1) {
            return Layout.Source.found(
                    regex(KeyPath.key(path, "pattern"), node.path("pattern").asText(), 1));
        }
        if (node.size() != 2 || !node.has("line") || !node.has("cell")) {
            faults.add(path, "expected {line: ..., cell: ...} or {pattern: ...}");
        }
        return Layout.Source.at(node.path("line").asInt(1), node.path("cell").asInt(1));
    }
}
