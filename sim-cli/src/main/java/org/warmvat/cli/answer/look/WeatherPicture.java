package org.warmvat.cli.answer.look;

import java.util.stream.IntStream;
import org.warmvat.cli.plot.Band;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.weather.Weather;

/** Air temperature and sun through a weather file, day by day. */
final class WeatherPicture {

    private static final int DAY_H = 24;

    private WeatherPicture() {}

    /** The picture. */
    static Drawing of(Weather weather) {
        int hours = Math.max(DAY_H, weather.hours() / DAY_H * DAY_H);
        double[] airC = IntStream.range(0, Math.min(hours, weather.hours()))
                .mapToDouble(hour -> weather.airC().value(hour))
                .toArray();
        double[] sunKWhADay = IntStream.range(0, airC.length)
                .mapToDouble(hour -> weather.globalWPerM2(hour) * DAY_H / 1000)
                .toArray();
        return LineChart.overTime("weather", "Weather: " + weather.site().name(), weather.start(), weather.end())
                .caption("Each day's air temperature and irradiation on the horizontal.")
                .strip("air, °C", 2)
                .band("air, mean of each day", "lowest to highest of the day", Look.SLURRY, Band.ofEach(DAY_H, airC))
                .stripWithZero("kWh/m² a day", 1)
                .line("sun on the flat, each day", Look.SUN, Points.means(sunKWhADay, DAY_H));
    }
}
