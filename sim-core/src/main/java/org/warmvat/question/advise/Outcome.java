package org.warmvat.question.advise;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.warmvat.account.Period;
import org.warmvat.account.Warnings;
import org.warmvat.design.Design;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Warning;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Money;

/**
 * What came of a design in all weather files: energies a year, hours a year, temperatures of all.
 *
 * @param energy energies a year
 * @param hours hours a year of what can hurt or is cold
 * @param highestC highest slurry temperature, °C
 * @param warnings the worst of each kind
 */
public record Outcome(Energies energy, Hours hours, double highestC, List<Warning> warnings) {

    private static final double YEAR_H = 8760;

    /** Methane may fall by so much where something else is gained, share. */
    private static final double LESS_METHANE = 0.02;

    /** Hours that come of other switchings alone. */
    private static final double SAME_H = 1;

    /**
     * Energies of a year, kWh.
     *
     * @param bought bought for the backup heater
     * @param electricity drawn by the machinery
     * @param methaneNm3 methane made, Nm3
     * @param net net energy, useful where uses are given; absent without gas
     * @param money money left at the design's prices
     */
    public record Energies(double bought, double electricity, double methaneNm3, OptionalDouble net, double money) {}

    /**
     * Hours of a year.
     *
     * @param below below the minimum temperature
     * @param tooHot above the feedstocks' highest temperature
     * @param stagnation collector standing hot
     * @param frozenPipe coldest end of a pipe below 0 °C
     * @param frozenLoop solar loop below its fluid's freezing point
     * @param air too much air in the gas
     * @param broken slurry below 0 °C or above 100 °C, where the model ends
     */
    public record Hours(
            double below,
            double tooHot,
            double stagnation,
            double frozenPipe,
            double frozenLoop,
            double air,
            double broken) {}

    static Outcome of(Design design, List<BriefYear> years) {
        Energies energy = new Energies(
                aYear(years, BackupPart.BOUGHT),
                aYear(years, Meter.ELECTRICITY),
                aYear(years, GasPart.METHANE_MADE),
                design.gas().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                aYear(years, Lines.leading(years.get(0).year().books()))),
                aYear(years, year -> Money.of(design, year).balance()));
        Hours hours = new Hours(
                aYear(years, KeyFigures.BELOW_FLOOR_HOURS),
                aYear(years, year -> year.watchHours(KeyFigures.TOO_HOT)),
                aYear(years, SolarPart.STAGNATION_HOURS),
                aYear(years, FittingsPart.COLD_PIPE_END_HOURS),
                aYear(years, SolarPart.FROZEN_HOURS),
                aYear(years, GasPart.AIR_SHARE_HOURS),
                aYear(years, year -> year.watchHours(KeyFigures.FREEZING) + year.watchHours(KeyFigures.BOILING)));
        return new Outcome(
                energy,
                hours,
                years.stream()
                        .mapToDouble(year -> year.year().of(KeyFigures.MOST_C))
                        .max()
                        .orElseThrow(),
                Warnings.worst(years.stream().map(BriefYear::warnings).toList()));
    }

    private static double aYear(List<BriefYear> years, Line line) {
        return aYear(years, year -> year.of(line));
    }

    private static double aYear(List<BriefYear> years, ToDoubleFunction<Period> value) {
        double sum = years.stream()
                .mapToDouble(year -> value.applyAsDouble(year.year()))
                .sum();
        double hours = years.stream().mapToDouble(year -> year.year().hours()).sum();
        return sum * YEAR_H / hours;
    }

    /** What there is to gain: net energy, without gas what need not be bought, kWh a year. */
    public double gainKWh() {
        return energy.net().orElse(-energy.bought() - energy.electricity());
    }

    /** Whether nothing that hurts or cools the tank is worse than before. */
    public boolean isHarmless(Outcome before) {
        return hours.below() <= before.hours.below() + SAME_H / 2
                && hours.tooHot() <= before.hours.tooHot()
                && hours.frozenPipe() <= before.hours.frozenPipe() + SAME_H
                && hours.frozenLoop() <= before.hours.frozenLoop() + SAME_H
                && hours.air() <= before.hours.air()
                && hours.broken() <= before.hours.broken()
                && (energy.methaneNm3() >= (1 - LESS_METHANE) * before.energy.methaneNm3()
                        || gainKWh() > before.gainKWh());
    }
}
