package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.result.Money;
import org.warmvat.study.Bought;
import org.warmvat.study.BriefYear;
import org.warmvat.study.GasByVolume;
import org.warmvat.study.Tariffs;

/** The figures of one run among many, each under the name of its column. */
public final class Outputs {

    private static final List<String> MORE = List.of(
            "degree_hours_short",
            "worst_month_net_kwh",
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
            "net_energy_weighted_kwh",
            "slurry_least_c",
            "slurry_mean_c",
            "worst_month_net_kwh",
            "gas_worth",
            "money_balance");

    /** Names of all outputs, in the order of their columns. */
    public static final List<String> NAMES = names();

    private Outputs() {}

    private static List<String> names() {
        List<String> names = new ArrayList<>();
        Figures.ALL.forEach(figure -> names.add(figure.column()));
        names.addAll(MORE);
        return List.copyOf(names);
    }

    /** Index of an output. */
    public static int index(String name) {
        return NAMES.indexOf(name);
    }

    /** Whether more of it is better; of all others, less is. */
    public static boolean betterHigh(String name) {
        return BETTER_HIGH.contains(name);
    }

    /**
     * The outputs of a run; not a number where one means nothing for this design.
     *
     * @param design the design
     * @param sums what its year added up to
     * @param equalGasNm3PerDay methane a day that the volume for equal gas is to make
     */
    public static double[] of(Design design, BriefYear.Sums sums, double equalGasNm3PerDay) {
        double[] values = new double[NAMES.size()];
        int next = 0;
        for (Figure figure : Figures.ALL) {
            OptionalDouble value = needed(figure, design) ? figure.value().apply(sums.year()) : OptionalDouble.empty();
            values[next++] = value.orElse(Double.NaN);
        }
        Money money = Tariffs.money(design, sums.year());
        Bought bought = Bought.of(design);
        boolean gas = design.gas().isPresent();
        double[] more = {
            sums.degreeHoursShort(),
            sums.worstMonthNetKWh(),
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
        System.arraycopy(more, 0, values, next, more.length);
        return values;
    }

    private static boolean needed(Figure figure, Design design) {
        return switch (figure.circuit()) {
            case NOTHING -> true;
            case SOLAR -> design.solar().isPresent();
            case BACKUP -> design.backup().isPresent();
            case GAS -> design.gas().isPresent();
        };
    }
}
