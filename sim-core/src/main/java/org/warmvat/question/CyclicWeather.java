package org.warmvat.question;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/**
 * A whole year of weather that goes on with its own beginning, so that a study can run past the end of December. The ground of a
 * design stays as it was fitted to the file itself.
 */
public final class CyclicWeather {

    private CyclicWeather() {}

    /**
     * Weather with some hours of its beginning put behind its end.
     *
     * @param file a whole year
     * @param byHours how many hours, 0 up to the length of the file; with 0 the very same object
     */
    public static Weather weather(Weather file, int byHours) {
        if (byHours == 0) {
            return file;
        }
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        file.table().columns().forEach((quantity, values) -> columns.put(quantity, twice(values, byHours)));
        HourlyTable table = file.table();
        return new Weather(new HourlyTable(table.site(), table.start(), table.stamp(), columns));
    }

    private static double[] twice(double[] values, int by) {
        double[] longer = Arrays.copyOf(values, values.length + by);
        System.arraycopy(values, 0, longer, values.length, by);
        return longer;
    }

    /** The design with the ground that the file itself tells, where it uses one that the file has no column for. */
    public static Design design(Design design, Weather file) {
        if (!design.usesGround() || design.site().ground().wave().isPresent()) {
            return design;
        }
        return file.ground()
                .map(g -> design.with(new GroundWave(g.meanC(), g.amplitudeK(), g.coldestDay())))
                .orElse(design);
    }
}
