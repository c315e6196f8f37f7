package org.warmvat.log;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.weather.file.Layout;
import org.warmvat.weather.file.TimeForm;

/**
 * How a delimited text is laid out, so that it can be read as a log.
 *
 * @param text lines, cells and numbers
 * @param time columns whose cells make the time, joined by single spaces
 * @param forms how the time may read; the first that fits counts
 * @param utcOffsetH the logger's clock less universal time, where it is known
 * @param columns where each column stands and in which unit, by our names
 * @param missing cells that mean no value, beside empty ones
 */
public record LogLayout(
        Layout.Text text,
        List<Layout.Place> time,
        List<TimeForm> forms,
        OptionalDouble utcOffsetH,
        Map<String, Layout.Column> columns,
        Set<String> missing) {

    /** Copies. */
    public LogLayout {
        time = List.copyOf(time);
        forms = List.copyOf(forms);
        columns = Map.copyOf(columns);
        missing = Set.copyOf(missing);
    }
}
