package org.warmvat.cli.option;

import java.util.List;
import java.util.Map;

/** How bad a year is for a question, by the figures of its answer; a figure that is missing is the worst. */
public final class Badness {

    private Badness() {}

    /** Net energy of the year: the less, the worse. */
    public static double littleNet(Map<String, Object> figures) {
        return -net(inner(figures, "year"), Double.NEGATIVE_INFINITY);
    }

    /** Hours short with the sun alone, and of years that are alike the heat that was missing. */
    public static double shortHours(Map<String, Object> figures) {
        double shortfall = number(figures.get("shortfall_kwh"), 0);
        return number(figures.get("hours_short"), Double.POSITIVE_INFINITY) + shortfall / (1 + shortfall);
    }

    /** Hours until the highest temperature that was asked for is reached when the heater fails: the fewer, the worse. */
    public static double shortHold(Map<String, Object> figures) {
        if (inner(figures, "failed_heater").get("reached") instanceof List<?> reached
                && !reached.isEmpty()
                && reached.get(0) instanceof Map<?, ?> first) {
            return -number(first.get("hours"), Double.MAX_VALUE);
        }
        return Double.NEGATIVE_INFINITY;
    }

    /** The earliest start that pays: the later, the worse. */
    public static double lateStart(Map<String, Object> figures) {
        return inner(figures, "spring").get("earliest_that_pays") instanceof String date
                ? Double.parseDouble(date.replace('-', '.'))
                : Double.POSITIVE_INFINITY;
    }

    /** The smallest gas holder that serves: the larger, the worse. */
    public static double largeHolder(Map<String, Object> figures) {
        return number(inner(figures, "holder").get("smallest_m3"), Double.POSITIVE_INFINITY);
    }

    /** What the tank loses in the coldest air: the more, the worse. */
    public static double coldLoss(Map<String, Object> figures) {
        return number(figures.get("cold_loss_w"), 0);
    }

    /** Net energy of many runs, or what they buy where no gas is computed: the less is left in all of them together, the worse. */
    public static double littleNetOf(String runs, Map<String, Object> figures) {
        double sum = 0;
        if (figures.get(runs) instanceof List<?> rows) {
            for (Object row : rows) {
                Map<?, ?> run = (Map<?, ?>) row;
                sum += net(run, -number(run.get("backup_bought_kwh"), 0));
            }
        }
        return -sum;
    }

    /** Net energy, useful where uses of the gas are given. */
    private static double net(Map<?, ?> figures, double otherwise) {
        return number(figures.get("useful_net_energy_kwh"), number(figures.get("net_energy_kwh"), otherwise));
    }

    private static Map<?, ?> inner(Map<String, Object> figures, String key) {
        return figures.get(key) instanceof Map<?, ?> map ? map : Map.of();
    }

    private static double number(Object figure, double otherwise) {
        return figure instanceof Number number ? number.doubleValue() : otherwise;
    }
}
