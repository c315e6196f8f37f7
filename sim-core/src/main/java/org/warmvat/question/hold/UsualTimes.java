package org.warmvat.question.hold;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.warmvat.weather.Weather;

/** The hours until the first temperature, over all starts: the shortest of each month and the middle one. */
final class UsualTimes {

    private static final int MONTHS = 12;

    private UsualTimes() {}

    static HoldResult.Usual of(Weather file, int endHour, List<Integer> starts, List<OptionalDouble> first, int limit) {
        double[] shortest = new double[MONTHS];
        Arrays.fill(shortest, Double.POSITIVE_INFINITY);
        for (int i = 0; i < first.size(); i++) {
            int month = file.start().plusHours(starts.get(i)).getMonthValue() - 1;
            shortest[month] = Math.min(shortest[month], first.get(i).orElse(Double.POSITIVE_INFINITY));
        }
        // a start that runs out of weather tells nothing of how long the tank would have stayed warm
        double[] all = IntStream.range(0, first.size())
                .filter(i -> first.get(i).isPresent() || starts.get(i) + limit <= endHour)
                .mapToDouble(i -> first.get(i).orElse(Double.POSITIVE_INFINITY))
                .sorted()
                .toArray();
        return new HoldResult.Usual(
                starts.size(),
                all.length,
                Arrays.stream(shortest).mapToObj(UsualTimes::finite).toList(),
                all.length == 0 ? OptionalDouble.empty() : finite(all[all.length / 2]),
                limit);
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
