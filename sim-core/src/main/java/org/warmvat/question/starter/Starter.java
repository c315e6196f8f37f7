package org.warmvat.question.starter;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.weather.Weather;

/** A first design for a size and a climate, by rules of thumb (common practice, no source). */
public final class Starter {

    private static final List<Integer> HEATERS_W = List.of(
            50, 100, 150, 200, 300, 400, 500, 750, 1000, 1500, 2000, 3000, 4500, 6000, 9000, 12_000, 18_000, 24_000,
            36_000, 48_000, 72_000, 100_000);
    private static final double SOLAR_YIELD = 0.45;
    private static final double HEATER_MARGIN = 1.5;
    private static final double COIL_MARGIN = 1.6;
    private static final double COIL_W_M2K = 95;

    private final Weather weather;
    private final double litres;
    private final AtHand atHand;
    private final Map<String, String> words = new LinkedHashMap<>();

    private Starter(Weather weather, double litres, AtHand atHand) {
        this.weather = weather;
        this.litres = litres;
        this.atHand = atHand;
    }

    /** Where the tank stands. */
    public enum Standing {
        /** In the open. */
        OPEN,
        /** Out of the worst wind. */
        SHELTERED,
        /** Under a roof. */
        UNDER_ROOF,
        /** In a small polytunnel. */
        POLYTUNNEL
    }

    /** What heats it when the sun does not. */
    public enum Source {
        /** Electricity. */
        ELECTRIC,
        /** The tank's own gas. */
        OWN_GAS,
        /** Bought fuel. */
        FUEL
    }

    /** What a builder has or wants. */
    public enum CollectorKind {
        /** Flat plates. */
        FLAT_PLATE,
        /** Evacuated tubes. */
        TUBES
    }

    /**
     * What a builder has or wants, in place of the rules.
     *
     * @param standing where the tank stands
     * @param insulationMm thickness of insulation at hand, mm; absent by rule
     * @param collectorM2 collector at hand, m2, 0 for none; absent by rule
     * @param collector its kind
     * @param source what heats it when the sun does not
     * @param winterRest whether it rests in winter, at 8 °C and unfed
     */
    public record AtHand(
            Standing standing,
            OptionalDouble insulationMm,
            OptionalDouble collectorM2,
            CollectorKind collector,
            Source source,
            boolean winterRest) {

        /** Nothing: all by rule, sheltered, electric, fed all year. */
        public static final AtHand NOTHING = new AtHand(
                Standing.SHELTERED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                CollectorKind.FLAT_PLATE,
                Source.ELECTRIC,
                false);
    }

    /**
     * The starter for a size and a climate.
     *
     * @param litres volume of slurry, 20 to 100 000
     * @param setpointC set-point, 15 to 45 °C
     * @param weather the climate
     */
    public static Starter of(double litres, double setpointC, Weather weather) {
        return of(litres, setpointC, weather, AtHand.NOTHING);
    }

    /** The same with what is at hand in place of some of the rules. */
    public static Starter of(double litres, double setpointC, Weather weather, AtHand atHand) {
        Starter starter = new Starter(weather, litres, atHand);
        starter.words(weather.site().latitudeDeg() < 0);
        starter.size(setpointC);
        starter.insulation(setpointC);
        starter.solar(0.5);
        starter.heater(setpointC, HEATERS_W.get(0));
        // size, feed and insulation are known now, and the need of heat follows from them alone
        starter.heat(starter.design(), setpointC);
        return starter;
    }

    /** The design, of the numbers as {@link #words} round them. */
    public Design design() {
        return Design.of(Reader.tree(filled(StarterKeys.of(atHand, hasCollector()))), Findings.strict());
    }

    /** Whether there is a collector. */
    public boolean hasCollector() {
        return !atHand.collectorM2().equals(OptionalDouble.of(0));
    }

    private void words(boolean south) {
        words.put(
                "place",
                atHand.standing() == Standing.POLYTUNNEL
                        ? "shelter"
                        : atHand.standing().name().toLowerCase(Locale.ROOT));
        words.put("source", atHand.source().name().toLowerCase(Locale.ROOT));
        words.put("rest_from", south ? "05-16" : "11-16");
        words.put("rest_to", south ? "09-10" : "03-10");
    }

    /** A text in which the names of words in braces are replaced by the words. */
    public String filled(String template) {
        String text = template;
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("{" + word.getKey() + "}", word.getValue());
        }
        return text;
    }

    private void size(double setpointC) {
        double diameterM = Math.cbrt(litres / 1000 / (Math.PI / 4 * 1.15));
        put("litres", litres, 0);
        put("setpoint", setpointC, 1);
        put("diameter", diameterM, 3);
        put("depth", 1.15 * diameterM, 3);
        put("headspace", 0.25 * diameterM, 3);
        put("scraps", 6.7 * litres / 1000, 3);
        put("greens", 4.4 * litres / 1000, 3);
        put("water", 11.1 * litres / 1000, 3);
        put("torque", 67 * litres / 1000, 1);
        put("air", 1.1 * litres / 1000, 3);
    }

    private void insulation(double setpointC) {
        double coldest = coldestMonthC();
        double foamMm = 10 * Math.ceil(1.8 * Math.sqrt(Math.max(1, setpointC - coldest)));
        put("coldest_month", coldest, 1);
        put("foam", atHand.insulationMm().orElse(foamMm), 0);
        put("lid_foam", atHand.insulationMm().orElse(foamMm + 20), 0);
    }

    private void heat(Design sized, double setpointC) {
        double meanAirC = weather.meanAirC();
        double needMeanW = SteadyHeat.needW(sized, weather, meanAirC);
        double sunKWh = dailySunKWhPerM2();
        put("mean_air", meanAirC, 1);
        put("need_mean", needMeanW, 0);
        put("sun", sunKWh, 1);
        double area = sunKWh > 0 ? needMeanW * 0.024 / (SOLAR_YIELD * sunKWh) : 0.5;
        solar(atHand.collectorM2().orElse(Math.max(0.5, Math.rint(2 * area) / 2)));
        double coldC = weather.coldestDayC();
        double needColdW = SteadyHeat.needW(sized, weather, coldC);
        put("coldest_day", coldC, 1);
        put("need_cold", needColdW, 0);
        heater(setpointC, nextSizeW(HEATER_MARGIN * needColdW));
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
}
