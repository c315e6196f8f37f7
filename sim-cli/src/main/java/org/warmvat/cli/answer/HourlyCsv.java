package org.warmvat.cli.answer;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.warmvat.account.Hourly;

/**
 * Writes {@code hourly.csv}. Temperatures stand at the end of the hour with four decimals, powers as the hour's means with
 * three, methane with seven. The columns of a circuit that is not there are empty.
 */
final class HourlyCsv {

    private static final int BYTES_PER_ROW = 140;

    private record Column(String name, Optional<double[]> values, int decimals) {}

    private HourlyCsv() {}

    static byte[] of(Hourly hourly) {
        List<Column> columns = columns(hourly);
        StringBuilder text = new StringBuilder(hourly.hours() * BYTES_PER_ROW);
        text.append("time");
        columns.forEach(column -> text.append(',').append(column.name()));
        text.append('\n');
        LocalDateTime end = hourly.start();
        for (int hour = 0; hour < hourly.hours(); hour++) {
            end = end.plusHours(1);
            text.append(end);
            for (Column column : columns) {
                text.append(',');
                if (column.values().isPresent()) {
                    Decimals.append(text, column.values().get()[hour], column.decimals());
                }
            }
            text.append('\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<Column> columns(Hourly hourly) {
        return hourly.names().stream()
                .map(name -> new Column(name, hourly.column(name), decimals(name)))
                .toList();
    }

    private static int decimals(String name) {
        return name.endsWith("_c") ? 4 : name.contains("nm3") ? 7 : 3;
    }
}
