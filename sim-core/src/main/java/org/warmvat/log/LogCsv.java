package org.warmvat.log;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.warmvat.spelling.Nearest;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.CsvText;
import org.warmvat.weather.file.FileFaults;
import org.warmvat.weather.file.LeadIn;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Reads one log: Warmvat's own, which names its columns as we do, or any delimited text by its {@link LogLayout}. */
final class LogCsv {

    private static final String MARK = "# warmvat log";
    private static final String TIME = "time";
    private static final List<TimeForm> ISO = List.of(
            new TimeForm("YYYY-MM-DDThh:mm:ss"),
            new TimeForm("YYYY-MM-DDThh:mm"),
            new TimeForm("YYYY-MM-DD hh:mm:ss"),
            new TimeForm("YYYY-MM-DD hh:mm"));
    private static final String OTHERS = "; any other text is read with --log-layout";
    private static final String SUMMER_TIME =
            " (a clock put back from summer time does this: log by one clock all year)";
    private static final int SECONDS_PER_HOUR = 3600;

    private final String text;
    private final FileFaults faults;

    LogCsv(String text, FileFaults faults) {
        this.text = text;
        this.faults = faults;
    }

    /** Warmvat's own log. */
    LogTable read() throws WeatherRefused {
        OptionalDouble utcOffsetH = OptionalDouble.empty();
        int lines = 0;
        if (text.startsWith("#")) {
            refuseOtherKinds();
            LeadIn lead = LeadIn.read(text, MARK, List.of("utc_offset_h", "origin", "note"), faults);
            lines = lead.lines();
            utcOffsetH = lead.entry("utc_offset_h").isPresent()
                    ? OptionalDouble.of(lead.number("utc_offset_h", -12, 14))
                    : utcOffsetH;
        }
        CsvText csv = new CsvText(text, lines, ',', faults);
        CsvRecord heading = csv.heading();
        refuseWhatIsNoHeading(heading);
        Map<String, LogLayout.Column> columns = ownColumns(heading);
        Layout.Text own = new Layout.Text(lines, true, ',', '.');
        LogLayout layout = new LogLayout(own, List.of(new Layout.ByHeading(TIME)), ISO, utcOffsetH, columns, Set.of());
        return rows(csv, CsvText.names(heading), layout);
    }

    private void refuseOtherKinds() throws WeatherRefused {
        String first = text.lines().findFirst().orElse("");
        if (!first.startsWith(MARK)) {
            throw faults.refusedAt(
                    1, FileFaults.quoted(first) + ", expected \"" + MARK + " 1\" or a line of column names" + OTHERS);
        }
    }

    private void refuseWhatIsNoHeading(CsvRecord heading) throws WeatherRefused {
        long line = heading.getStartingLineNumber();
        if (heading.getFieldCount() == 1 && heading.getField(0).indexOf(';') >= 0) {
            throw faults.refusedAt(
                    line, "semicolons between the names, expected commas, and points in the numbers" + OTHERS);
        }
        String first = heading.getField(0).strip();
        if (ISO.stream().anyMatch(form -> form.seconds(first).isPresent())) {
            throw faults.refusedAt(
                    line, "a row of values, expected a line of column names before it, such as time,slurry_c,air_c");
        }
    }

    /** Any delimited text. */
    LogTable read(LogLayout layout) throws WeatherRefused {
        CsvText csv = new CsvText(text, layout.text().skipLines(), layout.text().delimiter(), faults);
        return rows(csv, layout.text().headings() ? CsvText.names(csv.heading()) : List.of(), layout);
    }

    private Map<String, LogLayout.Column> ownColumns(CsvRecord heading) throws WeatherRefused {
        long line = heading.getStartingLineNumber();
        Map<String, LogLayout.Column> columns = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (String name : CsvText.names(heading)) {
            if (!seen.add(name)) {
                faults.add(line, "column \"" + name + "\" stands twice");
            } else if (LogFiles.isColumn(name)) {
                columns.put(name, LogLayout.Column.of(new Layout.Column(new Layout.ByHeading(name), 1, 0)));
            } else if (!name.equals(TIME)) {
                faults.add(
                        line,
                        "unknown column \"" + name + "\", expected one of "
                                + Nearest.listAnd(name, LogFiles.columns())
                                + OTHERS);
            }
        }
        if (!seen.contains(TIME)) {
            faults.add(line, "no column time, which is required");
        }
        if (columns.keySet().stream().noneMatch(Sensors::isSensor)) {
            faults.add(line, "no column slurry_c (or slurry_NAME_c for several sensors), which is required" + OTHERS);
        }
        faults.refuseIfAny();
        return columns;
    }

    private LogTable rows(CsvText csv, List<String> names, LogLayout layout) throws WeatherRefused {
        List<Integer> time = new ArrayList<>();
        for (Layout.Place place : layout.time()) {
            time.add(index(place, names, layout));
        }
        List<PlacedColumn> columns = new ArrayList<>();
        for (String name : layout.columns().keySet().stream().sorted().toList()) {
            LogLayout.Column column = layout.columns().get(name);
            columns.add(new PlacedColumn(name, index(column.at().place(), names, layout), column));
        }
        faults.refuseIfAny();
        int needed = 1
                + Math.max(
                        time.stream().mapToInt(i -> i).max().orElse(0),
                        columns.stream().mapToInt(PlacedColumn::index).max().orElse(0));
        List<LogRow> rows = new ArrayList<>();
        while (csv.hasNext()) {
            CsvRecord record = csv.next();
            // some loggers write the names again whenever they start
            boolean none = CsvText.isBlank(record) || (!names.isEmpty() && names.equals(CsvText.names(record)));
            if (!none && hasCells(record, needed)) {
                row(record, time, columns, layout, rows);
            }
        }
        faults.refuseIfAny();
        if (rows.isEmpty()) {
            faults.add("no rows, expected readings of the slurry");
            faults.refuseIfAny();
        }
        return new LogTable(
                faults.file(),
                layout.utcOffsetH(),
                columns.stream().map(PlacedColumn::name).toList(),
                rows);
    }

    private boolean hasCells(CsvRecord record, int needed) throws WeatherRefused {
        int cells = record.getFieldCount();
        if (cells < needed) {
            faults.add(
                    record.getStartingLineNumber(),
                    cells + (cells == 1 ? " cell" : " cells") + ", expected at least " + needed);
        }
        return cells >= needed;
    }

    private void row(
            CsvRecord record, List<Integer> time, List<PlacedColumn> columns, LogLayout layout, List<LogRow> rows)
            throws WeatherRefused {
        long line = record.getStartingLineNumber();
        String clock = String.join(
                " ", time.stream().map(index -> record.getField(index).strip()).toList());
        OptionalLong second = layout.forms().stream()
                .map(form -> form.seconds(clock))
                .filter(OptionalLong::isPresent)
                .findFirst()
                .orElse(OptionalLong.empty());
        if (second.isEmpty()) {
            faults.add(line, "time \"" + clock + "\", expected the form " + words(layout.forms()));
            return;
        }
        long sinceS = rows.isEmpty()
                ? 1
                : second.getAsLong() - rows.get(rows.size() - 1).second();
        if (sinceS <= 0) {
            faults.add(
                    line,
                    "time \"" + clock + "\", expected one after that of the row before"
                            + (sinceS < 0 && sinceS >= -SECONDS_PER_HOUR ? SUMMER_TIME : ""));
        }
        double[] values = new double[columns.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = columns.get(i).value(record, layout, faults);
        }
        rows.add(new LogRow(second.getAsLong(), line, values));
    }

    private static String words(List<TimeForm> forms) {
        return String.join(" or ", forms.stream().map(TimeForm::form).toList());
    }

    private int index(Layout.Place place, List<String> names, LogLayout layout) throws WeatherRefused {
        if (place instanceof Layout.ByNumber number) {
            return number.column() - 1;
        }
        String name = ((Layout.ByHeading) place).name();
        int index = names.indexOf(name);
        if (index < 0) {
            faults.add(
                    layout.text().skipLines() + 1L,
                    "no column \"" + name + "\", expected "
                            + (names.isEmpty()
                                    ? "a layout with headings: true"
                                    : "one of " + Nearest.listAnd(name, names)));
        }
        return Math.max(0, index);
    }
}
