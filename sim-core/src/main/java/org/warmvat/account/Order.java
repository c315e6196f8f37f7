package org.warmvat.account;

import java.util.List;
import org.warmvat.network.meter.Line;

/**
 * The order in which results are told, and what stands in all of them. Files are promises: a line, a column or a warning listed here
 * keeps its place whatever a tank has; what else the parts of a tank declare follows the others of its group, or all of them.
 *
 * @param lines lines of {@code summary.json} and its tables
 * @param columns columns of the hourly table
 * @param warnings keys of warnings
 */
public record Order(List<Line> lines, List<String> columns, List<String> warnings) {

    /** Takes lists as they are. */
    public Order {
        lines = List.copyOf(lines);
        columns = List.copyOf(columns);
        warnings = List.copyOf(warnings);
    }
}
