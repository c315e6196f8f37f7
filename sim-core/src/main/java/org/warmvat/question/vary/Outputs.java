package org.warmvat.question.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.warmvat.account.Books;
import org.warmvat.design.Design;
import org.warmvat.network.meter.Line;
import org.warmvat.question.GasRange;
import org.warmvat.question.payback.Bought;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Housekeeping;
import org.warmvat.tank.Money;

/** The figures of one run among many, each under the name of its column: all lines of the tank's account, and some more. */
public final class Outputs {

    private static final List<String> MORE = List.of(
            "degree_hours_short",
            "worst_month_net_kwh",
            "gas_energy_low_kwh",
            "gas_energy_high_kwh",
            "net_energy_low_gas_kwh",
            "net_energy_high_gas_kwh",
            "litres",
            "retention_days",
            "loading_kg_vs_m3_day",
            "volume_for_equal_gas_l",
            "energy_cost",
            "gas_worth",
            "money_balance",
            "co2_kg",
            "foam_m3",
            "collector_m2",
            "outlay");
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
            "slurry_mean_c",
            "worst_month_net_kwh",
            "worst_month_useful_net_kwh",
            "gas_energy_low_kwh",
            "gas_energy_high_kwh",
            "net_energy_low_gas_kwh",
            "net_energy_high_gas_kwh",
            "useful_net_energy_low_gas_kwh",
            "useful_net_energy_high_gas_kwh",
            "gas_worth",
            "money_balance");

    private static final List<String> USEFUL =
            List.of("worst_month_useful_net_kwh", "useful_net_energy_low_gas_kwh", "useful_net_energy_high_gas_kwh");

    private final List<Line> lines;
    private final boolean used;
    private final List<String> names = new ArrayList<>();

    /** The outputs of a tank's account. */
    public Outputs(Books books) {
        lines = books.lines();
        lines.forEach(line -> names.add(line.column()));
        names.addAll(MORE);
        used = lines.contains(Housekeeping.USEFUL_NET);
        if (used) {
            names.addAll(USEFUL);
        }
    }

    /** Which of some outputs runs are judged by: useful net energy where uses of gas are given, else net energy. */
    public static String leading(List<String> names) {
        return names.contains(Housekeeping.USEFUL_NET.column())
                ? Housekeeping.USEFUL_NET.column()
                : Housekeeping.NET.column();
    }

    /** Names of all outputs, in the order of their columns. */
    public List<String> names() {
        return names;
    }

    /** Whether more of it is better; of all others, less is. */
    public static boolean betterHigh(String name) {
        return BETTER_HIGH.contains(name);
    }

    /**
     * The outputs of a run; not a number where one means nothing for this design.
     *
     * @param design the design
     * @param run what its year added up to
     * @param equalGasNm3PerDay methane a day that the volume for equal gas is to make
     */
    public double[] of(Design design, BriefYear run, double equalGasNm3PerDay) {
        double[] values = new double[names.size()];
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            values[i] = run.year().has(line) ? run.year().of(line) : Double.NaN;
        }
        Money money = Money.of(design, run.year());
        Bought bought = Bought.of(design);
        boolean gas = design.gas().isPresent();
        double[] more = {
            run.degreeHoursShort(),
            run.worstMonthNetKWh(),
            end(run, ends -> ends.low().gasKWh()),
            end(run, ends -> ends.high().gasKWh()),
            end(run, ends -> ends.low().netKWh()),
            end(run, ends -> ends.high().netKWh()),
            design.tank().liquidVolumeM3() * 1000,
            design.retentionDays(),
            GasByVolume.loading(design),
            gas ? GasByVolume.volumeForM3(design, equalGasNm3PerDay) * 1000 : Double.NaN,
            money.cost(),
            gas ? money.gasWorth() : Double.NaN,
            money.balance(),
            money.co2Kg(),
            bought.foamM3(),
            bought.collectorM2(),
            bought.outlay(design)
        };
        System.arraycopy(more, 0, values, lines.size(), more.length);
        if (used) {
            int at = lines.size() + more.length;
            values[at] = run.worstMonthUsefulNetKWh();
            values[at + 1] = end(run, ends -> ends.low().leadingKWh());
            values[at + 2] = end(run, ends -> ends.high().leadingKWh());
        }
        return values;
    }

    private static double end(BriefYear run, ToDoubleFunction<GasRange.Ends> figure) {
        return run.gas().map(range -> figure.applyAsDouble(range.whole())).orElse(Double.NaN);
    }
}
