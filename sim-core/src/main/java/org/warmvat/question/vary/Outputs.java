package org.warmvat.question.vary;

import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.warmvat.account.Books;
import org.warmvat.design.Design;
import org.warmvat.network.meter.Line;
import org.warmvat.question.GasRange;
import org.warmvat.question.payback.Purchase;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Money;

/** The figures of one run among many, each under the name of its column: all lines of the tank's account, and some more. */
public final class Outputs {

    /** Figures of the account of which more is better; of its others less is. */
    private static final Set<String> BETTER_HIGH = Set.of(
            "solar_heat_kwh",
            "solar_share",
            "reaction_heat_kwh",
            "methane_nm3",
            "biogas_nm3",
            "gas_energy_kwh",
            "net_energy_kwh",
            "useful_net_energy_kwh",
            "net_energy_weighted_kwh",
            "slurry_least_c",
            "slurry_mean_c");

    private static final List<More> MORE = List.of(
            less("degree_hours_short", run -> run.year().degreeHoursShort()),
            more("worst_month_net_kwh", run -> run.year().worstMonthNetKWh()),
            more("gas_energy_low_kwh", run -> run.end(ends -> ends.low().gasKWh())),
            more("gas_energy_high_kwh", run -> run.end(ends -> ends.high().gasKWh())),
            more("net_energy_low_gas_kwh", run -> run.end(ends -> ends.low().netKWh())),
            more("net_energy_high_gas_kwh", run -> run.end(ends -> ends.high().netKWh())),
            less("litres", run -> run.design().tank().liquidVolumeM3() * 1000),
            less("retention_days", run -> run.design().retentionDays()),
            less("loading_kg_vs_m3_day", run -> GasByVolume.loading(run.design())),
            less("volume_for_equal_gas_l", Run::volumeForEqualGasL),
            less("energy_cost", run -> run.money().cost()),
            more("gas_worth", run -> run.hasGas() ? run.money().gasWorth() : Double.NaN),
            more("money_balance", run -> run.money().balance()),
            less("co2_kg", run -> run.money().co2Kg()),
            less("foam_m3", run -> run.bought().foamM3()),
            less("collector_m2", run -> run.bought().collectorM2()),
            less("outlay", run -> run.bought().outlay(run.design())));

    private static final List<More> USEFUL = List.of(
            more("worst_month_useful_net_kwh", run -> run.year().worstMonthUsefulNetKWh()),
            more(
                    "useful_net_energy_low_gas_kwh",
                    run -> run.end(ends -> ends.low().leadingKWh())),
            more(
                    "useful_net_energy_high_gas_kwh",
                    run -> run.end(ends -> ends.high().leadingKWh())));

    private final List<Line> lines;
    private final List<More> more;
    private final List<String> names;

    /** A figure beside those of the account. */
    private record More(String name, boolean betterHigh, ToDoubleFunction<Run> value) {}

    /** What figures are made of. */
    private record Run(Design design, BriefYear year, double equalGasNm3PerDay, Money money, Purchase bought) {
        boolean hasGas() {
            return design.gas().isPresent();
        }

        double volumeForEqualGasL() {
            return hasGas() ? GasByVolume.volumeForM3(design, equalGasNm3PerDay) * 1000 : Double.NaN;
        }

        double end(ToDoubleFunction<GasRange.Ends> figure) {
            return year.gas().map(range -> figure.applyAsDouble(range.whole())).orElse(Double.NaN);
        }
    }

    private static More more(String name, ToDoubleFunction<Run> value) {
        return new More(name, true, value);
    }

    private static More less(String name, ToDoubleFunction<Run> value) {
        return new More(name, false, value);
    }

    /** The outputs of a tank's account. */
    public Outputs(Books books) {
        lines = books.lines();
        more = Stream.concat(MORE.stream(), lines.contains(KeyFigures.USEFUL_NET) ? USEFUL.stream() : Stream.of())
                .toList();
        names = Stream.concat(lines.stream().map(Line::column), more.stream().map(More::name))
                .toList();
    }

    /** Which of some outputs runs are judged by: useful net energy where uses of gas are given, else net energy. */
    public static String leading(List<String> names) {
        return names.contains(KeyFigures.USEFUL_NET.column())
                ? KeyFigures.USEFUL_NET.column()
                : KeyFigures.NET.column();
    }

    /** Names of all outputs, in the order of their columns. */
    public List<String> names() {
        return names;
    }

    /** Whether more of it is better; of all others, less is. */
    public static boolean betterHigh(String name) {
        return BETTER_HIGH.contains(name)
                || Stream.concat(MORE.stream(), USEFUL.stream())
                        .anyMatch(one -> one.betterHigh() && one.name().equals(name));
    }

    /**
     * The outputs of a run; not a number where one means nothing for this design.
     *
     * @param design the design
     * @param run what its year added up to
     * @param equalGasNm3PerDay methane a day that the volume for equal gas is to make
     */
    public double[] of(Design design, BriefYear run, double equalGasNm3PerDay) {
        Run made = new Run(design, run, equalGasNm3PerDay, Money.of(design, run.year()), Purchase.of(design));
        return DoubleStream.concat(
                        lines.stream()
                                .mapToDouble(line ->
                                        run.year().has(line) ? run.year().of(line) : Double.NaN),
                        more.stream().mapToDouble(one -> one.value().applyAsDouble(made)))
                .toArray();
    }
}
