package org.warmvat.cli.answer;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.warmvat.result.Hourly;

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
        LocalDateTime end = hourly.firstHourStart();
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
        return List.of(
                temperature("slurry_c", Optional.of(hourly.slurryC())),
                temperature("collector_c", hourly.collectorC()),
                temperature("backup_circuit_c", hourly.backupCircuitC()),
                temperature("air_c", Optional.of(hourly.airC())),
                power("solar_heat_w", hourly.solarHeatW()),
                power("backup_heat_w", hourly.backupHeatW()),
                power("loss_w", Optional.of(hourly.lossW())),
                power("feed_w", Optional.of(hourly.feedW())),
                power("mixer_electric_w", Optional.of(hourly.mixerElectricW())),
                power("auger_electric_w", Optional.of(hourly.augerElectricW())),
                power("other_electric_w", Optional.of(hourly.otherElectricW())),
                new Column("methane_nm3_h", Optional.of(hourly.methaneNm3PerH()), 7),
                power("collector_irradiance_w_m2", hourly.collectorIrradianceWPerM2()));
    }

    private static Column temperature(String name, Optional<double[]> values) {
        return new Column(name, values, 4);
    }

    private static Column power(String name, Optional<double[]> values) {
        return new Column(name, values, 3);
    }
}
