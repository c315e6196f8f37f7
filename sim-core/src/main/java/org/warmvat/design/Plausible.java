package org.warmvat.design;

import java.util.List;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Bounds beyond which numbers are remarked on as unlikely (common practice, no source), for who knows better.
 *
 * @param loadingKgVsPerM3Day organic loading rate above which it is high, kg VS/(m3 d)
 * @param loadingNotCredibleKgVsPerM3Day and above which it is not credible
 * @param retentionDays hydraulic retention time, shortest and longest, days
 * @param litres contents, smallest and largest this program is for, L
 * @param insulationM thinnest main insulation, m
 * @param heaterTimes heater's power over loss and feed above which it is large
 * @param collectorTimes collector's peak power over loss and feed above which it is large
 * @param windowMarginK set-point's least distance from the ends of digestion, K
 */
public record Plausible(
        @Key(
                name = "loading_kg_vs_m3_d",
                says = "Organic loading rate above which it is remarked on",
                range = "0 to 1000 kg/m3 day",
                usual = "3")
        double loadingKgVsPerM3Day,

        @Key(
                name = "loading_not_credible_kg_vs_m3_d",
                says = "Organic loading rate above which it is not credible",
                range = "0 to 1000 kg/m3 day",
                usual = "6")
        double loadingNotCredibleKgVsPerM3Day,

        @Key(
                name = "retention_days",
                says = "Shortest and longest hydraulic retention time without a remark",
                range = "0 to 10000 days",
                entries = 2,
                usual = "[15, 200]")
        List<Double> retentionDays,

        @Key(
                name = "litres",
                says = "Smallest and largest contents this program is for",
                range = "0 to 10000000 L",
                entries = 2,
                usual = "[45, 20000]")
        List<Double> litres,

        @Key(
                name = "insulation_mm",
                says = "Thinnest main insulation without a remark",
                range = "0 to 2000 mm",
                usual = "20",
                per = 1000)
        double insulationM,

        @Key(
                name = "heater_times",
                says = "Heater's power over loss and feed above which it is remarked on",
                range = "0 to 100000",
                usual = "20")
        double heaterTimes,

        @Key(
                name = "collector_times",
                says = "Collector's power in 1000 W/m2 of sun over loss and feed above which it is remarked on",
                range = "0 to 100000",
                usual = "40")
        double collectorTimes,

        @Key(
                name = "window_margin_k",
                says = "Least distance of the set-point from minimum and maximum of digestion",
                range = "0 to 50 K",
                usual = "2")
        double windowMarginK) {

    /** Refuses numbers out of range and pairs out of order. */
    public Plausible {
        retentionDays = List.copyOf(retentionDays);
        litres = List.copyOf(litres);
        Ranges.check(
                Plausible.class,
                loadingKgVsPerM3Day,
                loadingNotCredibleKgVsPerM3Day,
                retentionDays,
                litres,
                insulationM,
                heaterTimes,
                collectorTimes,
                windowMarginK);
        pair("retention_days", retentionDays);
        pair("litres", litres);
    }

    private static void pair(String key, List<Double> pair) {
        Ranges.stated(
                pair.size() == 2 && pair.get(0) <= pair.get(1), key, "expected two numbers, the smaller one first");
    }
}
