package org.warmvat.weather.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.warmvat.weather.Quantity;

/**
 * A unit a foreign column may be in: the value in our unit is {@code factor x + offset}.
 *
 * @param factor multiplies
 * @param offset is added
 */
public record ColumnUnit(double factor, double offset) {

    private static final Set<String> SUMS = Set.of("wh/m2", "kj/m2", "mj/m2", "j/m2", "j/cm2");

    /** Our own unit. */
    public static final ColumnUnit SAME = new ColumnUnit(1, 0);

    private static ColumnUnit times(double factor) {
        return new ColumnUnit(factor, 0);
    }

    /** A unit by its name, our own where there is none; a sum of a step is that of an hour by its share of it. */
    public static ColumnUnit of(Quantity quantity, String name, int stepMinutes) {
        ColumnUnit unit = of(quantity).getOrDefault(name, SAME);
        return SUMS.contains(name) ? times(unit.factor() * 60 / stepMinutes) : unit;
    }

    /** The units known for a quantity by name, its own first. */
    public static Map<String, ColumnUnit> of(Quantity quantity) {
        Map<String, ColumnUnit> units = new LinkedHashMap<>();
        switch (quantity) {
            case AIR, DEW_POINT, GROUND -> {
                units.put("c", SAME);
                units.put("k", new ColumnUnit(1, -273.15));
                units.put("f", new ColumnUnit(1 / 1.8, -32 / 1.8));
            }
            case RELATIVE_HUMIDITY, CLOUD -> {
                units.put("fraction", SAME);
                units.put("percent", times(0.01));
                units.put("tenths", times(0.1));
                units.put("eighths", times(0.125));
            }
            case WIND -> {
                units.put("m/s", SAME);
                units.put("km/h", times(1 / 3.6));
                units.put("knots", times(0.514444));
                units.put("kt", times(0.514444));
                units.put("mph", times(0.44704));
            }
            case PRESSURE -> {
                units.put("hpa", SAME);
                units.put("pa", times(0.01));
                units.put("kpa", times(10));
                units.put("mmhg", times(1.333224));
                units.put("inhg", times(33.86389));
            }
            case GLOBAL, BEAM, DIFFUSE, LONGWAVE -> {
                units.put("w/m2", SAME);
                units.put("wh/m2", SAME);
                units.put("kw/m2", times(1000));
                units.put("kj/m2", times(1 / 3.6));
                units.put("mj/m2", times(1000 / 3.6));
                units.put("j/m2", times(1 / 3600.0));
                units.put("j/cm2", times(10 / 3.6));
            }
        }
        return units;
    }
}
