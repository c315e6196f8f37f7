package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.warmvat.design.keys.Shown;
import org.warmvat.log.LogColumn;
import org.warmvat.log.LogFiles;
import org.warmvat.log.LogLayout;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.layout.ColumnUnit;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Reads layout files of logs: YAML or JSON that says how a logger's text is laid out. */
public final class LogLayoutDocument {

    private static final FileSchema SCHEMA = FileSchema.shipped("log-layout.schema.json");
    private final FileTree file;
    private final JsonNode tree;
    private final Faults faults;

    private LogLayoutDocument(FileTree file) {
        this.file = file;
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
    public static LogLayout read(String name, byte[] bytes) {
        return parse(name, SourceText.decode(name, bytes));
    }

    /**
     * Reads the text of a layout.
     *
     * @param name name for messages; one that ends in {@code .json} is read as JSON
     * @param text the text
     * @throws InputRefused with every fault, up to twenty
     */
    public static LogLayout parse(String name, String text) {
        FileTree file = FileTree.read(name, text).judged(SCHEMA);
        LogLayout layout = new LogLayoutDocument(file).layout();
        file.faults().refuseIfAny();
        return layout;
    }

    private LogLayout layout() {
        JsonNode time = tree.path("time");
        return new LogLayout(
                new LayoutDocument(file).text("text", tree.path("text")),
                LayoutDocument.places(time.path("columns")),
                forms(time.path("form")),
                FileTree.number(time, "utc_offset_h"),
                columns(),
                LayoutDocument.codes(tree.path("missing")));
    }

    private List<TimeForm> forms(JsonNode node) {
        List<TimeForm> forms = new ArrayList<>();
        for (JsonNode form : node.isArray() ? node : node.isTextual() ? List.of(node) : List.<JsonNode>of()) {
            try {
                forms.add(new TimeForm(form.asText()));
            } catch (IllegalArgumentException e) {
                faults.add(
                        "time.form",
                        Shown.quoted(form.asText())
                                + ", expected year Y, month M, day D and hour h, such as DD.MM.YYYY hh:mm:ss");
            }
        }
        return forms.isEmpty() ? List.of(TimeForm.ISO) : forms;
    }

    private Map<String, LogLayout.Column> columns() {
        Map<String, LogLayout.Column> columns = new LinkedHashMap<>();
        tree.path("columns").properties().forEach(entry -> {
            if (LogFiles.isColumn(entry.getKey())) {
                columns.put(entry.getKey(), column(entry.getKey(), entry.getValue()));
            } else {
                faults.add(
                        "columns." + entry.getKey(),
                        "is not a known key, known here: "
                                + String.join(
                                        ", ",
                                        LogFiles.columns()
                                                .subList(1, LogFiles.columns().size())));
            }
        });
        if (columns.keySet().stream().noneMatch(LogFiles::isSensor)) {
            faults.add(
                    "columns.slurry_c",
                    "is missing, expected the column of the slurry's temperature, or slurry_NAME_c for several sensors");
        }
        return columns;
    }

    private LogLayout.Column column(String name, JsonNode node) {
        if (!node.isObject()) {
            return LogLayout.Column.of(new Layout.Column(LayoutDocument.place(node), 1, 0));
        }
        Map<String, ColumnUnit> units = units(name);
        String word = node.path("unit").asText(units.keySet().iterator().next());
        if (!units.containsKey(word)) {
            faults.add(
                    "columns." + name + ".unit",
                    Shown.quoted(word) + ", expected one of " + String.join(", ", units.keySet()));
        }
        ColumnUnit unit = units.getOrDefault(word, ColumnUnit.SAME);
        double factor = node.path("factor").asDouble(1);
        double offset = node.path("offset").asDouble(0);
        return new LogLayout.Column(
                new Layout.Column(
                        LayoutDocument.place(node.path("column")),
                        unit.factor() * factor,
                        unit.factor() * offset + unit.offset()),
                node.path("least").asDouble(Double.NEGATIVE_INFINITY),
                node.path("most").asDouble(Double.POSITIVE_INFINITY));
    }

    /** The units a column of a log may be in, our own first. */
    private static Map<String, ColumnUnit> units(String column) {
        if (column.endsWith("_c")) {
            return ColumnUnit.of(Quantity.AIR);
        }
        return switch (LogColumn.ofKey(column).orElseThrow()) {
            case WIND -> ColumnUnit.of(Quantity.WIND);
            case GLOBAL -> units("w/m2", "kw/m2", 1000);
            case FEED -> Map.of("kg", ColumnUnit.SAME);
            case MIXER -> units("fraction", "percent", 0.01);
            default -> units("w", "kw", 1000);
        };
    }

    private static Map<String, ColumnUnit> units(String own, String other, double factor) {
        Map<String, ColumnUnit> units = new LinkedHashMap<>();
        units.put(own, ColumnUnit.SAME);
        units.put(other, new ColumnUnit(factor, 0));
        return units;
    }

    /** The schema, for editors that complete and check keys. */
    public static String schema() {
        return SCHEMA.text();
    }
}
