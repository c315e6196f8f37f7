package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.Runner;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** Repeats the table of docs/weather-sources.md on which columns of weather matter, by the demonstration's tank and year. */
class ColumnsThatMatterTest {
    private static final Weather YEAR = WeatherFiles.demonstration();
    private static final Set<Quantity> SUN = Set.of(Quantity.GLOBAL, Quantity.BEAM, Quantity.DIFFUSE);

    private static List<String> page() throws IOException {
        return Files.readAllLines(Path.of("..", "docs", "weather-sources.md"));
    }

    private static Period heats(Map<Quantity, double[]> columns) throws Exception {
        HourlyTable table = YEAR.table();
        Weather weather = new Weather(new HourlyTable(table.site(), table.start(), table.stamp(), columns));
        return YearStudy.run(
                        DesignDocument.demonstration().design(),
                        new Runner(weather, new ExponentialEngine()),
                        HourSink.IGNORE)
                .whole();
    }

    private static Map<Quantity, double[]> without(Set<Quantity> gone) {
        Map<Quantity, double[]> columns = new EnumMap<>(YEAR.table().columns());
        columns.keySet().removeAll(gone);
        return columns;
    }

    private static Map<Quantity, double[]> changed(Set<Quantity> which, double factor, double plus) {
        Map<Quantity, double[]> columns = new EnumMap<>(YEAR.table().columns());
        columns.replaceAll((quantity, values) -> which.contains(quantity)
                ? Arrays.stream(values).map(value -> factor * value + plus).toArray()
                : values);
        return columns;
    }

    /** The columns of a row of the table, by what its first cell says before a bracket. */
    private static Map<Quantity, double[]> columns(String row) {
        return switch (row) {
            case "without dew point" -> without(Set.of(Quantity.DEW_POINT));
            case "without wind" -> without(Set.of(Quantity.WIND));
            case "with half the wind" -> changed(Set.of(Quantity.WIND), 0.5, 0);
            case "without pressure" -> without(Set.of(Quantity.PRESSURE));
            case "without cloud" -> without(Set.of(Quantity.CLOUD));
            case "with global irradiance only, split by Erbs and others" ->
                without(Set.of(Quantity.BEAM, Quantity.DIFFUSE));
            case "with air and global irradiance only" -> {
                Map<Quantity, double[]> columns = new EnumMap<>(YEAR.table().columns());
                columns.keySet().retainAll(Set.of(Quantity.AIR, Quantity.GLOBAL));
                yield columns;
            }
            case "air 1 K warmer" -> changed(Set.of(Quantity.AIR), 1, 1);
            case "all irradiance a tenth less" -> changed(SUN, 0.9, 0);
            default -> throw new AssertionError("the page has a row that is not measured: " + row);
        };
    }

    @Test
    void theTableOnThePageIsWhatIsMeasured() throws Exception {
        Period whole = heats(YEAR.table().columns());
        String told = String.format(
                Locale.ROOT,
                "solar heat %.0f kWh, backup heat %.0f kWh a year",
                whole.of(SolarPart.HEAT),
                whole.of(BackupPart.HEAT));
        List<String> page = page();
        assertEquals(1, page.stream().filter(line -> line.contains(told)).count(), told);
        int heading = page.indexOf("| the file | solar heat, kWh | backup heat, kWh |");
        int rows = 0;
        for (String line : page.subList(heading + 2, page.size())) {
            if (!line.startsWith("| ")) {
                break;
            }
            String[] cells = line.split(" *\\| *");
            Period changed = heats(columns(cells[1].replaceAll(" \\(.*", "")));
            assertEquals(
                    cells[2] + ", " + cells[3],
                    String.format(
                            Locale.ROOT,
                            "%+.1f, %+.1f",
                            changed.of(SolarPart.HEAT) - whole.of(SolarPart.HEAT),
                            changed.of(BackupPart.HEAT) - whole.of(BackupPart.HEAT)),
                    cells[1]);
            rows++;
        }
        assertEquals(9, rows);
    }
}
