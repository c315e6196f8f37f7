package org.warmvat.question.choose;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Energy;
import org.warmvat.question.Figures;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Money;

/**
 * What a design does in all weather files: energies and money are means of the files, what is limited is that of the worst.
 *
 * @param net net energy
 * @param energy energy gained and bought
 * @param money money a year
 * @param hoursBelowMinimum hours below the minimum temperature in the worst file
 * @param leastC lowest slurry temperature of all files, °C
 * @param warmUpDays days of the slowest warm-up; infinite when it is not warm within the time looked at, empty where no limit asks
 * @param years each of the files alone
 */
public record Yearly(
        Net net,
        Gained energy,
        Cost money,
        double hoursBelowMinimum,
        double leastC,
        OptionalDouble warmUpDays,
        List<Year> years) {

    private static final double YEAR_H = 8760;
    private static final double LEAP_YEAR_H = 8784;
    private static final int WARM_UP = 12;

    /**
     * Net energy.
     *
     * @param meanKWh mean of the files, kWh
     * @param worstKWh least of the files, kWh
     * @param worstMonthKWh least of all months, kWh
     */
    public record Net(double meanKWh, double worstKWh, double worstMonthKWh) {}

    /**
     * Energy, means of the files.
     *
     * @param boughtKWh bought for heat, hygienisation included; the tank's own gas is not bought
     * @param backupKWh what the backup heater took, own gas included
     * @param electricityKWh electricity of the machinery
     * @param gasKWh energy of the gas made
     * @param solarKWh heat from the sun
     */
    public record Gained(double boughtKWh, double backupKWh, double electricityKWh, double gasKWh, double solarKWh) {}

    /**
     * Money a year; a file shorter than a year is taken for a piece of one.
     *
     * @param energy what is bought for heat and machinery costs
     * @param gasWorth what the gas is worth
     */
    public record Cost(double energy, double gasWorth) {}

    /** The numbers of a run through one file. */
    static double[] numbers(Design design, BriefYear run, double warmUpDays) {
        Period year = run.year();
        Money money = Money.of(design, year);
        double perYear = year.hours() >= YEAR_H && year.hours() <= LEAP_YEAR_H ? 1 : YEAR_H / year.hours();
        return new double[] {
            year.of(KeyFigures.NET),
            run.worstMonthNetKWh(),
            year.kWh(Energy.FUEL) + year.kWh(Energy.HEATING_ELECTRICITY),
            year.kWh(Energy.MACHINERY),
            year.of(GasPart.GAS_ENERGY),
            year.of(SolarPart.HEAT),
            perYear * money.cost(),
            perYear * money.gasWorth(),
            year.of(KeyFigures.BELOW_FLOOR_HOURS),
            year.of(KeyFigures.LEAST_C),
            year.hours(),
            year.of(BackupPart.BOUGHT),
            warmUpDays
        };
    }

    /**
     * One of the years.
     *
     * @param netKWh net energy; not a number where no gas is computed
     * @param boughtKWh bought for heat
     * @param hoursBelowMinimum hours below the minimum temperature
     */
    public record Year(double netKWh, double boughtKWh, double hoursBelowMinimum) {}

    /** Puts the runs of all files together. */
    static Yearly of(List<Figures> files) {
        double warmUp = over(files, WARM_UP, Math::max);
        return new Yearly(
                new Net(mean(files, 0), over(files, 0, Math::min), over(files, 1, Math::min)),
                new Gained(mean(files, 2), mean(files, 11), mean(files, 3), mean(files, 4), mean(files, 5)),
                new Cost(mean(files, 6), mean(files, 7)),
                over(files, 8, Math::max),
                over(files, 9, Math::min),
                Double.isNaN(warmUp) ? OptionalDouble.empty() : OptionalDouble.of(warmUp),
                files.stream()
                        .map(Figures::numbers)
                        .map(of -> new Year(of[0], of[2], of[8]))
                        .toList());
    }

    private static double mean(List<Figures> files, int number) {
        return over(files, number, Double::sum) / files.size();
    }

    private static double over(List<Figures> files, int number, DoubleBinaryOperator operator) {
        return files.stream()
                .mapToDouble(file -> file.numbers()[number])
                .reduce(operator)
                .orElseThrow();
    }
}
