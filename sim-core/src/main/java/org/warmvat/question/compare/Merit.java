package org.warmvat.question.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.warmvat.account.Period;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.tank.KeyFigures;

/** What one tank may be better at than another. */
public enum Merit {
    /** Hours below the minimum temperature, the fewer the better. */
    WARM(false, 1, of(KeyFigures.BELOW_FLOOR_HOURS)),
    /** Hours hotter than any feedstock digests at, the fewer the better. */
    NOT_TOO_HOT(
            false,
            1,
            column -> column.drawn().gas().isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(column.year().watchHours(KeyFigures.TOO_HOT))),
    /** Energy bought for the backup heater. */
    BOUGHT(false, 1, of(BackupPart.BOUGHT)),
    /** Electricity of the machinery. */
    ELECTRICITY(false, 1, of(Meter.ELECTRICITY)),
    /** Solar heat over solar and backup heat. */
    SOLAR_FRACTION(true, 0.001, of(KeyFigures.SOLAR_SHARE)),
    /** Methane made. */
    METHANE(true, 0.1, gas(GasPart.METHANE_MADE)),
    /** Gas energy less all that was bought; only where gas is computed. */
    NET_ENERGY(true, 1, gas(KeyFigures.NET)),
    /** The same of gas put to use; only where uses are given. */
    USEFUL_NET_ENERGY(true, 1, of(KeyFigures.USEFUL_NET));

    /** Values that differ by less than this share of the larger count as alike. */
    private static final double ALIKE = 0.005;

    private final boolean moreIsBetter;
    private final double alike;

    @SuppressWarnings("ImmutableEnumChecker") // functions of lines, without state
    private final Function<Column, OptionalDouble> value;

    Merit(boolean moreIsBetter, double alike, Function<Column, OptionalDouble> value) {
        this.moreIsBetter = moreIsBetter;
        this.alike = alike;
        this.value = value;
    }

    private static Function<Column, OptionalDouble> of(Line line) {
        return column -> finite(column.year(), line);
    }

    private static Function<Column, OptionalDouble> gas(Line line) {
        return column -> column.drawn().gas().isPresent() ? finite(column.year(), line) : OptionalDouble.empty();
    }

    private static OptionalDouble finite(Period year, Line line) {
        double value = year.of(line);
        return year.has(line) && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Its value; absent where it means nothing for a tank. */
    public OptionalDouble of(Column column) {
        return value.apply(column);
    }

    /** The best of some columns, all of them where they are alike; none where it means nothing for one of them. */
    List<Integer> best(List<Column> all, List<Integer> among) {
        if (among.stream().anyMatch(index -> of(all.get(index)).isEmpty())) {
            return List.of();
        }
        double[] values = among.stream()
                .mapToDouble(index -> of(all.get(index)).orElseThrow())
                .toArray();
        double sign = moreIsBetter ? 1 : -1;
        double most = IntStream.range(0, values.length)
                .mapToDouble(i -> sign * values[i])
                .max()
                .orElseThrow();
        return IntStream.range(0, values.length)
                .filter(i -> most - sign * values[i]
                        <= Math.max(alike, ALIKE * Math.max(Math.abs(most), Math.abs(values[i]))))
                .mapToObj(among::get)
                .toList();
    }
}
