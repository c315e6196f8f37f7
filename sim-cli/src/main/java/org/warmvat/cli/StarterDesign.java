package org.warmvat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.design.Design;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.weather.Weather;

/** A first design for a size and a climate, by the rules that its own comments state (common practice, no source). */
final class StarterDesign {

    private static final List<Integer> HEATERS_W = List.of(
            50, 100, 150, 200, 300, 400, 500, 750, 1000, 1500, 2000, 3000, 4500, 6000, 9000, 12_000, 18_000, 24_000,
            36_000, 48_000, 72_000, 100_000);
    private static final double SOLAR_YIELD = 0.45;
    private static final double HEATER_MARGIN = 1.5;
    private static final double COIL_MARGIN = 1.6;
    private static final double COIL_W_M2K = 95;

    private final Weather weather;
    private final double litres;
    private final Map<String, String> words = new LinkedHashMap<>();

    private StarterDesign(Weather weather, double litres) {
        this.weather = weather;
        this.litres = litres;
    }

    /**
     * The design file.
     *
     * @param litres volume of slurry
     * @param setpointC set-point
     * @param weather the climate
     */
    static String text(double litres, double setpointC, Weather weather) {
        StarterDesign starter = new StarterDesign(weather, litres);
        starter.size(setpointC);
        starter.foam(setpointC);
        starter.solar(0.5);
        starter.heater(setpointC, HEATERS_W.get(0));
        // size, feed and foam are known now, and the need of heat follows from them alone
        Design sized = DesignDocument.parse("starter design", starter.filled()).design();
        starter.heat(sized, setpointC);
        return starter.filled();
    }

    private void size(double setpointC) {
        double diameterM = Math.cbrt(litres / 1000 / (Math.PI / 4 * 1.15));
        put("litres", litres, 0);
        put("setpoint", setpointC, 1);
        words.put("site", weather.site().name().replaceAll("\\p{Cntrl}", " "));
        put("diameter", diameterM, 3);
        put("depth", 1.15 * diameterM, 3);
        put("headspace", 0.25 * diameterM, 3);
        put("scraps", 6.7 * litres / 1000, 3);
        put("greens", 4.4 * litres / 1000, 3);
        put("water", 11.1 * litres / 1000, 3);
        put("torque", 67 * litres / 1000, 1);
        put("air", 1.1 * litres / 1000, 3);
    }

    private void foam(double setpointC) {
        double coldest = coldestMonthC();
        double foamMm = 10 * Math.ceil(1.8 * Math.sqrt(Math.max(1, setpointC - coldest)));
        put("coldest_month", coldest, 1);
        put("foam", foamMm, 0);
        put("lid_foam", foamMm + 20, 0);
    }

    private void heat(Design sized, double setpointC) {
        double meanAirC = weather.meanAirC();
        double needMeanW = needW(sized, meanAirC);
        double sunKWh = dailySunKWhPerM2();
        put("mean_air", meanAirC, 1);
        put("need_mean", needMeanW, 0);
        put("sun", sunKWh, 1);
        double area = sunKWh > 0 ? needMeanW * 0.024 / (SOLAR_YIELD * sunKWh) : 0.5;
        solar(Math.max(0.5, Math.rint(2 * area) / 2));
        double coldC = weather.coldestDayC();
        double needColdW = needW(sized, coldC);
        put("coldest_day", coldC, 1);
        put("need_cold", needColdW, 0);
        heater(setpointC, nextSizeW(HEATER_MARGIN * needColdW));
    }

    private double needW(Design design, double airC) {
        DerivedFigures figures = DerivedFigures.of(design, weather.meanWindMPerS(), weather.meanAirC(), airC);
        return figures.coldLossW() + figures.coldFeedW();
    }

    private static double nextSizeW(double watts) {
        return HEATERS_W.stream()
                .filter(size -> size >= watts)
                .findFirst()
                .map(Integer::doubleValue)
                .orElse(1000 * Math.ceil(watts / 1000));
    }

    private void solar(double areaM2) {
        put("collector", areaM2, 1);
        put("solar_loop", 0.02 * areaM2, 3);
        put("solar_capacity", 4500 * areaM2, 0);
        put("solar_coil", 0.5 * areaM2, 2);
    }

    private void heater(double setpointC, double watts) {
        double flowC = Math.min(50, setpointC + 14);
        // the flow limit acts on the water's mean, and throttling begins 5 K below it
        double acrossK = Math.max(1, flowC - 5 - setpointC);
        put("heater", watts, 0);
        put("flow_limit", flowC, 1);
        put("backup_water", Math.max(4, 0.016 * watts), 1);
        put("backup_loop", Math.max(0.05, 1e-4 * watts), 3);
        put("backup_coil", Math.max(0.1, COIL_MARGIN * watts / (COIL_W_M2K * acrossK)), 2);
    }

    private double coldestMonthC() {
        Map<YearMonth, double[]> months = new TreeMap<>();
        for (int hour = 0; hour < weather.hours(); hour++) {
            double[] sum =
                    months.computeIfAbsent(YearMonth.from(weather.start().plusHours(hour)), unused -> new double[2]);
            sum[0] += weather.airC().at((hour + 0.5) * 3600);
            sum[1]++;
        }
        return months.values().stream()
                .mapToDouble(sum -> sum[0] / sum[1])
                .min()
                .orElseThrow();
    }

    private double dailySunKWhPerM2() {
        double sum = 0;
        for (int hour = 0; hour < weather.hours(); hour++) {
            sum += weather.globalWPerM2(hour);
        }
        return sum / weather.hours() * 0.024;
    }

    private void put(String word, double value, int decimals) {
        words.put(
                word,
                BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString());
    }

    private String filled() {
        String text = template();
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("{" + word.getKey() + "}", word.getValue());
        }
        // words of the climate that are not known yet stand in comments only
        return text;
    }

    private static String template() {
        try (InputStream in = StarterDesign.class.getResourceAsStream("starter.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
