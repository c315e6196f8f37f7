package org.warmvat.design.surroundings;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.sun.Horizon;

/**
 * What stands between the sky and a collector or a tank (equations 13.1 and 13.2).
 *
 * @param points the line of hills, houses and walls; none for an open place, one for a ring of that height
 * @param shadeByMonth twelve shares of the sun that trees take away, January first; none for no trees
 */
public record Shading(
        @Key(
                name = "horizon",
                says =
                        "Line above which the sky begins: points with straight lines between, round the circle; one point is a ring",
                usual = "[]")
        List<HorizonPoint> points,

        @Key(
                name = "shade_by_month",
                says =
                        "Share of the sun that trees take away in each month, twelve values from January; half of it is taken from the sky's light (a convention)",
                range = "0 to 1",
                usual = "[]")
        List<Double> shadeByMonth) {

    /** Open to all sides. */
    public static final Shading NONE = new Shading(List.of(), List.of());

    private static final int MONTHS = 12;

    /** Refuses an azimuth that returns and anything but twelve shares. */
    public Shading {
        points = List.copyOf(points);
        shadeByMonth = List.copyOf(shadeByMonth);
        Ranges.check(Shading.class, points, shadeByMonth);
        Ranges.stated(
                shadeByMonth.isEmpty() || shadeByMonth.size() == MONTHS,
                "shade_by_month",
                "has " + shadeByMonth.size() + " values, expected twelve or none");
        long azimuths = points.stream()
                .mapToDouble(point -> point.azimuthDeg() % 360)
                .distinct()
                .count();
        Ranges.stated(azimuths == points.size(), "horizon", "has an azimuth twice, expected each once (360 is 0)");
    }

    /** The line as geometry. */
    public Horizon horizon() {
        return new Horizon(points.stream()
                .map(point -> new Horizon.Point(point.azimuthDeg(), point.elevationDeg()))
                .toList());
    }

    /** Whether it takes nothing away. */
    public boolean isNone() {
        return points.stream().allMatch(point -> point.elevationDeg() == 0)
                && shadeByMonth.stream().allMatch(share -> share == 0);
    }

    /** Share of the sun that trees take away in a month, 1 to 12. */
    public double shade(int month) {
        return shadeByMonth.isEmpty() ? 0 : shadeByMonth.get(month - 1);
    }

    /**
     * What of it is other for a collector.
     *
     * @param points the line; absent: that of the tank's surroundings
     * @param shadeByMonth shares of the sun; absent: those of the tank's surroundings
     */
    public record Own(
            @Key(
                    name = "horizon",
                    says = "Line above which the collector's sky begins",
                    otherwise = "that of surroundings")
            Optional<List<HorizonPoint>> points,

            @Key(
                    name = "shade_by_month",
                    says = "Share of the sun that trees take away from the collector in each month",
                    range = "0 to 1",
                    otherwise = "that of surroundings")
            Optional<List<Double>> shadeByMonth) {

        /** Refuses what {@link Shading} refuses. */
        public Own {
            new Shading(points.orElse(List.of()), shadeByMonth.orElse(List.of()));
        }

        /** What stands in the collector's sky. */
        public Shading over(Shading surroundings) {
            return new Shading(points.orElse(surroundings.points()), shadeByMonth.orElse(surroundings.shadeByMonth()));
        }
    }
}
