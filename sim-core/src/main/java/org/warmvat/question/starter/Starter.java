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

    /** The starter's keys; the names in braces are those of {@link #words}. */
    private static final String KEYS = "{title: 'Starter design, {litres} litres at {setpoint} °C',"
            + " tank: {inner_diameter_m: {diameter}, liquid_depth_m: {depth}, headspace_height_m: {headspace}, stands_on: legs,"
            + " place: {place}},"
            + " envelope: {shell: stainless_steel, shell_mm: 2, insulation: pir_foam, insulation_mm: {foam},"
            + " lid_insulation_mm: {lid_foam}, cladding: aluminium_sheet, cladding_mm: 0.8},"
            + " fittings: [{name: gas outlet, ua_w_k: 0.25}, {name: inlet, ua_w_k: 0.5}, {name: hatch, ua_w_k: 0.2},"
            + " {name: legs, bar: {material: steel, section_mm2: 400, length_mm: 150, count: 4}},"
            + " {name: shaft, bar: {material: stainless_steel, section_mm2: 490, length_mm: {foam}}},"
            + " {name: coil pipes, bar: {material: {conductivity_w_mk: 380, density_kg_m3: 8900, specific_heat_j_kgk: 385},"
            + " section_mm2: 66, length_mm: {foam}, count: 4}},"
            + " {name: outlet, pipe: {bore_mm: 110, wall_material: pvc_rigid, wall_mm: 3.2, length_m: 0.6, insulation_mm: 50,"
            + " insulation_w_mk: 0.027}}],"
            + " feed: {feedstocks: [{name: kitchen scraps, kg_per_day: {scraps}}, {name: garden greens, kg_per_day: {greens},"
            + " total_solids: 0.20, vs_of_ts: 0.85, methane_nm3_per_kg_vs: 0.27, rate_per_day: 0.07}], temperature: air,"
            + " may_freeze: true, water: {kg_per_day: {water}, temperature: {fixed_c: 10}}, windows: [{start: '08:00', hours: 3}]},"
            + " mixer: {revolutions_per_hour: 4, torque_nm: {torque}},"
            + "{solar_keys}"
            + " backup: {source: {source}, rated_w: {heater}, flow_limit_c: {flow_limit}, water_kg: {backup_water},"
            + " loop_kg_s: {backup_loop}, coil: {area_m2: {backup_coil}}},"
            + " control: {setpoint_c: {setpoint}, band_k: 1.0, floor_below_setpoint_k: 2.0},"
            + " gas: {methane_fraction: 0.58}{more_keys}}";

    private static final String SOLAR_KEYS =
            " solar: {area_m2: {collector}, tilt_deg: 60, {tube_keys}loop_kg_s: {solar_loop},"
                    + " loop_capacity_j_k: {solar_capacity}, coil: {area_m2: {solar_coil}}},";

    /** Evacuated tubes: less through the glass, less lost. */
    private static final String TUBE_KEYS = "eta0: 0.62, a1_w_m2k: 1.4, a2_w_m2k2: 0.006, ";

    private static final String TUNNEL_KEYS =
            ", shelter: {kind: polytunnel_single, floor_area_m2: 16, cover_area_m2: 42, volume_m3: 32}";
    private static final String REST_KEYS =
            ", calendar: [{name: winter rest, from: '{rest_from}', to: '{rest_to}', setpoint_c: 8,"
                    + " feed_factor: 0, floor: none, mixer_minutes_per_hour: 5}]";

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
        String tubes = atHand.collector() == CollectorKind.TUBES ? TUBE_KEYS : "";
        String solar = hasCollector() ? SOLAR_KEYS.replace("{tube_keys}", tubes) : "";
        String more =
                (atHand.standing() == Standing.POLYTUNNEL ? TUNNEL_KEYS : "") + (atHand.winterRest() ? REST_KEYS : "");
        String keys = KEYS.replace("{solar_keys}", solar).replace("{more_keys}", more);
        return Design.of(Reader.tree(filled(keys)), Findings.strict());
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
