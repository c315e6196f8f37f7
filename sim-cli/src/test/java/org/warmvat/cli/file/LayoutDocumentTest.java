package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.service.LayoutProposal;
import org.warmvat.weather.service.Recognised;

/** Layout files: what is read, what is refused, and the schema that goes with them. */
class LayoutDocumentTest {

    private static final Path EXAMPLES = Path.of("..", "docs", "examples");
    private static final String SMALL = """
            time: {columns: t, stamp: hour_end}
            columns: {air_c: 2, global_w_m2: 3}
            site: {latitude_deg: 50, longitude_deg: 7, elevation_m: 10, utc_offset_h: 1}
            """;

    private static final String PLACE =
            "a whole number, 1 to 10000 (a column) or a heading or a block {from: ..., to: ...} or a list with at"
                    + " least one entry";
    private static final String FOUND = "a block {line: ..., cell: ..., pattern: ...}";

    private static List<String> faults(String text) {
        return assertThrows(InputRefused.class, () -> LayoutDocument.parse("l.yaml", text))
                .faults();
    }

    @Test
    void defaults() {
        Layout layout = LayoutDocument.parse("l.yaml", SMALL);
        assertEquals(new Layout.Text(0, true, ',', '.'), layout.text());
        assertEquals(List.of(new Layout.ByHeading("t")), layout.time().columns());
        assertEquals("YYYY-MM-DDThh:mm", layout.time().form().form());
        assertEquals(Stamp.HOUR_END, layout.time().stamp());
        assertEquals(
                new Layout.Column(new Layout.ByNumber(2), 1, 0),
                layout.columns().get(Quantity.AIR));
        assertEquals(Layout.Source.of("unnamed site"), layout.site().name());
    }

    @Test
    void unitsFactorsAndOffsets() {
        Layout layout = LayoutDocument.parse(
                "l.yaml",
                SMALL.replace("air_c: 2", "air_c: {column: T, unit: F, factor: 0.1, offset: 2}")
                        .replace("global_w_m2: 3", "global_w_m2: {column: G, unit: kJ/m2}"));
        Layout.Column air = layout.columns().get(Quantity.AIR);
        // 480 tenths and 2: 50 F, 10 C
        assertEquals(10, 480 * air.factor() + air.offset(), 1e-9);
        assertEquals(1, 3.6 * layout.columns().get(Quantity.GLOBAL).factor(), 1e-12);
    }

    @Test
    void everyFaultWithLineAndExpectation() {
        String text = """
                text: {skip_lines: -1, delimiter: colon, headings: maybe}
                time:
                  column: t
                  form: YYYY-MM
                  stamp: end
                columns:
                  air: 2
                  global_w_m2: {column: 0, unit: calories, factor: ten}
                missing: -999
                site: {latitude_deg: north, longitude_deg: {line: 0, cell: 2}, elevation_m: 3}
                """;
        assertEquals(
                List.of(
                        "l.yaml line 1: text.skip_lines -1, expected a whole number, 0 to 10000",
                        "l.yaml line 1: text.headings \"maybe\", expected true or false",
                        "l.yaml line 1: text.delimiter \"colon\", expected one of comma, semicolon, tab, bar, none, ,, ;, |",
                        "l.yaml line 2: time.columns is missing, expected " + PLACE,
                        "l.yaml line 3: time.column is not a known key, did you mean time.columns?",
                        "l.yaml line 5: time.stamp \"end\", expected one of hour_start, hour_middle, hour_end",
                        "l.yaml line 7: columns.air is not a known key, did you mean columns.air_c?",
                        "l.yaml line 8: columns.global_w_m2.column 0, expected " + PLACE,
                        "l.yaml line 8: columns.global_w_m2.unit \"calories\", expected one of w/m2, wh/m2, kw/m2, kj/m2, mj/m2,"
                                + " j/m2, j/cm2",
                        "l.yaml line 8: columns.global_w_m2.factor \"ten\", expected a number, -1000000 to 1000000",
                        "l.yaml line 9: missing -999, expected a list",
                        "l.yaml line 10: site.latitude_deg \"north\", expected a number, -90 to 90 or " + FOUND,
                        "l.yaml line 10: site.longitude_deg.line 0, expected a whole number, 1 to 10000",
                        "l.yaml line 10: site.utc_offset_h is missing, expected a number, -12 to 14 or " + FOUND),
                faults(text));
    }

    @Test
    void theSchemaAcceptsTheExamplesAndRefusesWhatTheReaderRefuses() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(new ObjectMapper().readTree(LayoutDocument.schema()));
        for (String name : List.of("service", "satellite", "fixed")) {
            String text = Files.readString(EXAMPLES.resolve(name + "-layout.yaml"));
            assertEquals(List.of(), schema.validate(tree(text)), name);
        }
        assertEquals(List.of(), schema.validate(tree(SMALL)));
        for (String broken : List.of(
                SMALL.replace("stamp: hour_end", "stamp: noon"),
                SMALL.replace("air_c: 2", "air: 2"),
                SMALL.replace("air_c: 2", "air_c: 0"),
                SMALL.replace("latitude_deg: 50, ", ""))) {
            assertTrue(!schema.validate(tree(broken)).isEmpty(), broken);
            assertTrue(!faults(broken).isEmpty());
        }
    }

    private static JsonNode tree(String text) {
        Map<String, Integer> lines = new HashMap<>();
        return YamlText.read(text, lines, new Faults("l.yaml", lines));
    }

    /** The schema's columns and units are the reader's. */
    @Test
    void schemaAndReaderKnowTheSameColumnsAndUnits() throws IOException {
        JsonNode columns = new ObjectMapper().readTree(LayoutDocument.schema()).at("/$defs/columns/properties");
        List<String> names = new ArrayList<>();
        columns.fieldNames().forEachRemaining(names::add);
        List<String> known = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            known.add(quantity.key());
            List<String> units = new ArrayList<>();
            columns.path(quantity.key()).at("/anyOf/2/properties/unit/enum").forEach(unit -> units.add(unit.asText()));
            assertEquals(new TreeSet<>(ColumnUnit.of(quantity).keySet()), new TreeSet<>(units), quantity.key());
        }
        assertEquals(new TreeSet<>(known), new TreeSet<>(names));
    }

    @Test
    void whatLayoutsHaveLearnt() {
        Layout layout = LayoutDocument.parse("l.yaml", """
                text: {skip_lines: 3, delimiter: ";", until: blank_line, encoding: Latin-1}
                time: {columns: [YR, {from: 3, to: 4}], form: "YYYY M D h", stamp: hour_end, clock: solar, step_min: 30, instant_min: 10.5}
                columns:
                  air_c: {column: {from: 5, to: 8}, factor: 0.1, missing: [9999]}
                  global_w_m2: {column: [b, d], unit: kJ/m2}
                  wind_m_s: {column: w, unit: kt}
                site: {latitude_deg: {pattern: "lat (.*)"}, longitude_deg: {line: 1, cell: 2}, elevation_m: 3, utc_offset_h: 1}
                beside:
                  - file: other.txt
                    time: {columns: t, stamp: hour_start, clock: utc}
                    columns: {pressure_hpa: {column: 2, unit: pa}}
                """);
        assertEquals(new Layout.Text(3, true, ';', '.', Optional.of("^\\s*$"), true), layout.text());
        assertEquals(Layout.Clock.SOLAR, layout.time().clock());
        assertEquals(30, layout.time().stepMinutes());
        assertEquals(10.5, layout.time().instantMinutes().orElseThrow());
        assertEquals(new Layout.ByPosition(3, 4), layout.time().columns().get(1));
        Layout.Column air = layout.columns().get(Quantity.AIR);
        assertEquals(new Layout.ByPosition(5, 8), air.place());
        assertEquals(Set.of("9999"), air.missing());
        Layout.Column global = layout.columns().get(Quantity.GLOBAL);
        assertEquals(2, global.places().size());
        // kJ of half an hour: twice as many watts
        assertEquals(2 / 3.6, global.factor(), 1e-12);
        assertEquals(0.514444, layout.columns().get(Quantity.WIND).factor());
        assertEquals(Optional.of("lat (.*)"), layout.site().latitudeDeg().pattern());
        Layout other = layout.beside().get(0).layout();
        assertEquals(Layout.Clock.UTC, other.time().clock());
        assertEquals(0.01, other.columns().get(Quantity.PRESSURE).factor());
        assertEquals(layout.site(), other.site());
    }

    @Test
    void whatTheSchemaCannotSayIsSaidAfterIt() {
        assertEquals(
                List.of(
                        "l.yaml line 1: text.until \"a(\", expected a regular expression (Unclosed group)",
                        "l.yaml line 2: time.step_min 25, expected minutes that divide an hour: 5, 10, 15, 20, 30 or 60",
                        "l.yaml line 2: time.form \"YYYY-MM\", expected year Y, month M, day D and hour h, such as DD.MM.YYYY hh:mm",
                        "l.yaml line 3: columns.air_c is missing, expected the column of air temperature",
                        "l.yaml line 3: columns.global_w_m2 is missing, expected it, or both beam_w_m2 and diffuse_w_m2",
                        "l.yaml line 4: site.latitude_deg.pattern \"lat .*\", expected a group in round brackets around what is sought",
                        "l.yaml line 4: site.longitude_deg expected {line: ..., cell: ...} or {pattern: ...}"),
                faults("""
                        text: {until: "a("}
                        time: {columns: t, stamp: hour_end, form: YYYY-MM, step_min: 25}
                        columns: {wind_m_s: 2}
                        site: {latitude_deg: {pattern: "lat .*"}, longitude_deg: {line: 1}, elevation_m: 3, utc_offset_h: 1}
                        """));
    }

    /** The layout that is written for a file of a service reads back as the very layout by which the file is read. */
    @Test
    void writtenLayoutsReadBack() {
        String power = """
                -BEGIN HEADER-
                NASA/POWER invented
                Location: latitude  48.3   longitude 67.5\s
                elevation from MERRA-2: x = 310.0 meters
                -END HEADER-
                YEAR,MO,DY,HR,T2M,WS10M,PS,ALLSKY_SFC_SW_DWN
                2025,1,1,0,1,1,100,0
                """;
        String pvgis = """
                Latitude (decimal degrees): 45.0
                Longitude (decimal degrees): 8.0
                Elevation (m): 250.0
                Irradiance Time Offset (h): 0.1761
                time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP
                """;
        String tmy2 = String.format(
                Locale.ROOT,
                " 99001 %-22s ZZ  -5 N 42 54 W  78 42   215\n%-142s\n",
                "INVENTED",
                " 61010101".concat("0".repeat(133)));
        for (String text : List.of(power, pvgis, tmy2)) {
            Layout known = Recognised.in(text).orElseThrow().layout();
            String yaml = LayoutProposal.of(text, false).orElseThrow();
            Layout read = LayoutDocument.parse("l.yaml", yaml);
            assertEquals(known.text(), read.text(), yaml);
            assertEquals(known.missing(), read.missing());
            assertEquals(known.columns(), read.columns(), yaml);
            assertEquals(known.time().columns(), read.time().columns());
            assertEquals(known.time().form().form(), read.time().form().form());
            assertEquals(
                    known.time().instantMinutes().orElse(-1),
                    read.time().instantMinutes().orElse(-1),
                    1e-8);
            assertEquals(known.site().latitudeDeg(), read.site().latitudeDeg());
        }
    }
}
