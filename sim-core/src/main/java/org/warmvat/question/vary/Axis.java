package org.warmvat.question.vary;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.warmvat.design.keys.Shown;

/**
 * A number of the design and the values it takes in turn.
 *
 * @param key path of the number
 * @param values its values in the order given, at least one
 */
public record Axis(String key, List<Double> values) {

    private static final int MOST_VALUES = 100_000;

    /**
     * Reads {@code key=v1,v2,v3} or {@code key=from:to:step}; a range counts in decimals, so that 0:1:0.1 has eleven values.
     *
     * @throws IllegalArgumentException when it is neither, with what is wrong
     */
    public static Axis parse(String text) {
        // a material's name may hold one itself
        int equals = text.lastIndexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new IllegalArgumentException(Shown.quoted(text)
                    + ", expected a key with its values, such as solar.area_m2=1,2,3 or control.setpoint_c=20:40:5");
        }
        String key = text.substring(0, equals).strip();
        String values = text.substring(equals + 1);
        return new Axis(key, values.contains(":") ? range(key, values) : list(key, values));
    }

    /** Numbers in words, each with its key. */
    static String named(List<String> keys, double[] values) {
        return IntStream.range(0, values.length)
                .mapToObj(i -> keys.get(i) + " = " + Shown.number(values[i]))
                .collect(Collectors.joining(", "));
    }

    private static List<Double> list(String key, String text) {
        List<Double> values = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            values.add(number(key, part).doubleValue());
        }
        return List.copyOf(values);
    }

    private static List<Double> range(String key, String text) {
        String[] parts = text.split(":", -1);
        if (parts.length != 3) {
            throw new IllegalArgumentException(key + "=" + text + ", expected from:to:step");
        }
        BigDecimal from = number(key, parts[0]);
        BigDecimal to = number(key, parts[1]);
        BigDecimal step = number(key, parts[2]);
        boolean forward = step.signum() != 0 && to.subtract(from).signum() * step.signum() >= 0;
        if (!forward) {
            throw new IllegalArgumentException(key + "=" + text + ", expected a step that leads from "
                    + parts[0].strip() + " to " + parts[1].strip());
        }
        BigDecimal steps = to.subtract(from).divideToIntegralValue(step);
        if (steps.compareTo(BigDecimal.valueOf(MOST_VALUES)) >= 0) {
            throw new IllegalArgumentException(key + "=" + text + ", expected at most " + MOST_VALUES + " values");
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i <= steps.intValueExact(); i++) {
            values.add(from.add(step.multiply(BigDecimal.valueOf(i))).doubleValue());
        }
        return List.copyOf(values);
    }

    private static BigDecimal number(String key, String text) {
        String digits = text.strip();
        if (!digits.matches("[+-]?([0-9]{1,15}(\\.[0-9]{0,15})?|\\.[0-9]{1,15})([eE][+-]?[0-9]{1,2})?")) {
            throw new IllegalArgumentException(key + ": " + Shown.quoted(digits) + " is no number");
        }
        return new BigDecimal(digits);
    }
}
