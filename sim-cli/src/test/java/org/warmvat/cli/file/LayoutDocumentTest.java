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
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;

/** Layout files: what is read, what is refused, and the schema that goes with them. */
class LayoutDocumentTest {

    private static final Path EXAMPLES = Path.of("..", "docs", "examples");
    private static final String SMALL = """
            time: {columns: t, stamp: hour_end}
            columns: {air_c: 2, global_w_m2: 3}
            site: {latitude_deg: 50, longitude_deg: 7, elevation_m: 10, utc_offset_h: 1}
            """;

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
                        "l.yaml line 1: text.delimiter \"colon\", expected one of , ; bar comma semicolon tab |",
                        "l.yaml line 2: time.columns is missing, expected a column by number or heading",
                        "l.yaml line 3: time.column is not a known key, did you mean time.columns?",
                        "l.yaml line 4: time.form \"YYYY-MM\", expected year Y, month M, day D and hour h, such as DD.MM.YYYY"
                                + " hh:mm",
                        "l.yaml line 5: time.stamp \"end\", expected one of hour_end hour_middle hour_start",
                        "l.yaml line 6: columns.air_c is missing, expected the column of air temperature",
                        "l.yaml line 7: columns.air is not a known key, did you mean columns.air_c?",
                        "l.yaml line 8: columns.global_w_m2.unit \"calories\", expected one of j/cm2 kj/m2 kw/m2 mj/m2 w/m2"
                                + " wh/m2",
                        "l.yaml line 8: columns.global_w_m2.factor \"ten\", expected a number",
                        "l.yaml line 8: columns.global_w_m2.column 0, expected a column by number, counted from 1, or by"
                                + " heading",
                        "l.yaml line 9: missing expected a list of codes, such as [-999, NA]",
                        "l.yaml line 10: site.latitude_deg \"north\", expected a number or {line: ..., cell: ...}",
                        "l.yaml line 10: site.longitude_deg.line 0, expected a whole number, 1 to 10000",
                        "l.yaml line 10: site.utc_offset_h is missing, expected a number or {line: ..., cell: ...}"),
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
        JsonNode columns = new ObjectMapper().readTree(LayoutDocument.schema()).at("/properties/columns/properties");
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
}
