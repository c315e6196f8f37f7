package org.warmvat.log;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The rows of one file.
 *
 * @param file its name for messages
 * @param utcOffsetH its clock less universal time, where it says so
 * @param columns names of its columns, time left out
 * @param rows rising in time, at least one
 */
record LogTable(String file, OptionalDouble utcOffsetH, List<String> columns, List<LogRow> rows) {

    /** Value of a column in a row, NaN where there is none. */
    double value(LogRow row, String column) {
        int index = columns.indexOf(column);
        return index < 0 ? Double.NaN : row.values()[index];
    }
}
