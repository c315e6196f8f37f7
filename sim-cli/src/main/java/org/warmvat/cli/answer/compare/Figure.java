package org.warmvat.cli.answer.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.warmvat.cli.words.Words;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Money;

/**
 * A figure that stands beside that of the other designs.
 *
 * @param name what it is, with its unit
 * @param of its value; absent where it means nothing
 * @param words how a value is written
 */
record Figure(String name, Function<Column, OptionalDouble> of, Function<Double, String> words) {

    /** Those of the table. */
    static final List<Figure> ALL = List.of(
            new Figure(
                    "slurry, litres",
                    column -> OptionalDouble.of(1000 * column.drawn().tank().liquidVolumeM3()),
                    Words::number),
            line("below the minimum, h", KeyFigures.BELOW_FLOOR_HOURS, Words::hours),
            line("lowest slurry, °C", KeyFigures.LEAST_C, Words::tenth),
            line("highest slurry, °C", KeyFigures.MOST_C, Words::tenth),
            new Figure(
                    "lost through insulation and fittings, kWh",
                    column -> OptionalDouble.of(Lines.lossKWh(column.year())),
                    Words::number),
            line("taken by the feed, kWh", FeedPart.FEED, Words::number),
            line("heat from the sun, kWh", SolarPart.HEAT, Words::number),
            line("sun not used, kWh", SolarPart.SUN_NOT_USED, Words::number),
            line("solar fraction", KeyFigures.SOLAR_SHARE, Words::percentCell),
            line("heat from the backup, kWh", BackupPart.HEAT, Words::number),
            line("bought for the backup, kWh", BackupPart.BOUGHT, Words::number),
            line("electricity, kWh", Meter.ELECTRICITY, Words::number),
            gas("methane, Nm³", GasPart.METHANE_MADE),
            gas("net energy, kWh", KeyFigures.NET),
            gas(
                    "net energy a litre, kWh",
                    column -> column.year().of(KeyFigures.NET)
                            / (1000 * column.drawn().tank().liquidVolumeM3())),
            line("useful net energy, kWh", KeyFigures.USEFUL_NET, Words::number),
            line("collector stagnates, h", SolarPart.STAGNATION_HOURS, Words::hours),
            line("solar loop frozen, h", SolarPart.FROZEN_HOURS, Words::hours),
            line("a pipe's end frozen, h", FittingsPart.COLD_PIPE_END_HOURS, Words::hours),
            line("too much air in the gas, h", GasPart.AIR_SHARE_HOURS, Words::hours));

    private static Figure line(String name, Line line, Function<Double, String> words) {
        return new Figure(
                name,
                column ->
                        column.year().has(line) && Double.isFinite(column.year().of(line))
                                ? OptionalDouble.of(column.year().of(line))
                                : OptionalDouble.empty(),
                words);
    }

    private static Figure gas(String name, Line line) {
        return gas(name, column -> column.year().of(line));
    }

    private static Figure gas(String name, Function<Column, Double> value) {
        return new Figure(
                name,
                column -> column.drawn().gas().isPresent()
                        ? OptionalDouble.of(value.apply(column))
                        : OptionalDouble.empty(),
                Words::number);
    }

    /** What is left in money, in the design's own. */
    static Figure balance(String currency) {
        return gas(
                "left in money, " + currency,
                column -> Money.of(column.drawn(), column.year()).balance());
    }

    /** Whether any of the columns has it. */
    boolean isIn(List<Column> columns) {
        return columns.stream().anyMatch(column -> of.apply(column).isPresent());
    }

    /** As a cell. */
    String cell(Column column) {
        OptionalDouble value = of.apply(column);
        return value.isPresent() ? words.apply(value.getAsDouble()) : "–";
    }

    /** A column less another, with its sign. */
    String difference(Column column, Column from) {
        OptionalDouble one = of.apply(column);
        OptionalDouble other = of.apply(from);
        if (one.isEmpty() || other.isEmpty()) {
            return "–";
        }
        double difference = one.getAsDouble() - other.getAsDouble();
        String size = words.apply(Math.abs(difference));
        boolean none = size.matches("[0.]+( %)?");
        return none ? size : (difference > 0 ? "+" : "−") + size;
    }
}
