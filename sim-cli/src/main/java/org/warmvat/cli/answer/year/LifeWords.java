package org.warmvat.cli.answer.year;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.season.Spell;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.CondensatePart;
import org.warmvat.gas.GasHolderPart;
import org.warmvat.gas.GasUsePart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Unit;
import org.warmvat.shelter.ShelterPart;
import org.warmvat.tank.KeyFigures;

/** What a year tells of seasons, shelter, gas in use and hygienisation, where a design has them. */
final class LifeWords {

    private final Design design;
    private final Period year;

    LifeWords(Design design, Period year) {
        this.design = design;
        this.year = year;
    }

    private List<GasUse> uses() {
        return design.gas().map(Gas::uses).orElse(List.of());
    }

    /** How warm a tank with a calendar was, held against the minimum of each day. */
    String warmth() {
        double below = year.of(KeyFigures.BELOW_FLOOR_HOURS);
        double warming = year.of(KeyFigures.WARMING_UP_HOURS);
        long without = IntStream.range(0, SeasonTable.DAYS)
                .filter(day -> Double.isInfinite(design.season().on(day).minimumC()))
                .count();
        List<String> apart = new Telling()
                .when(without > 0, "no minimum holds on " + without + " days of the year")
                .when(warming > 0, Words.hours(warming) + " h of warming up are counted apart")
                .done();
        return (below == 0
                        ? "The tank was warm whenever it was to be: the slurry was never below the minimum in force"
                        : "The tank was not always warm when it was to be: the slurry was below the minimum in force for "
                                + Words.hours(below) + " of " + Words.hours(year.hours()) + " hours")
                + (apart.isEmpty() ? "" : " (" + Words.list(apart) + ")") + ".";
    }

    /** The verdict on energy where uses are given: only gas that is put to use counts. */
    Optional<String> verdict() {
        if (uses().isEmpty()) {
            return Optional.empty();
        }
        double useful = year.of(KeyFigures.USEFUL_NET);
        return Optional.of(
                useful > 0
                        ? "What its gas is used for is more than all that is bought: about " + Words.kWh(useful)
                                + " are left."
                        : "What its gas is used for is less than all that is bought: about " + Words.kWh(-useful)
                                + " are missing.");
    }

    /** What belongs beside the verdict. */
    List<String> but() {
        double surplus = year.of(GasHolderPart.SURPLUS);
        return new Telling()
                .when(
                        !uses().isEmpty(),
                        () -> "The net energy of " + Words.kWh(year.of(KeyFigures.NET))
                                + " counts all gas made, surplus included, and is no return.")
                .when(
                        surplus > 0,
                        () -> Words.number(surplus)
                                + " Nm³ of biogas find no room in the holder: surplus goes to a flare, never to open air.")
                .when(
                        some(BackupPart.SHORT_OF_OWN_GAS_HOURS),
                        () -> "For " + Words.hours(year.of(BackupPart.SHORT_OF_OWN_GAS_HOURS))
                                + " h the backup heater was wanted and the holder was empty: another fuel must stand ready, or the tank cools.")
                .when(
                        some(FeedPart.HYGIENISATION_SHORT),
                        () -> "For hygienisation " + Words.kWh(year.of(FeedPart.HYGIENISATION_SHORT))
                                + " of own gas were lacking and are counted as bought.")
                .done();
    }

    private boolean some(Line line) {
        return year.has(line) && year.of(line) > 0;
    }

    /** Sentences on gas in use. */
    List<String> gas() {
        return new Telling()
                .each(
                        uses(),
                        use -> "The " + use.name() + " got " + Words.kWh(year.of(GasUsePart.met(use)))
                                + " of gas and went short of " + Words.kWh(year.of(GasUsePart.unmet(use))) + ".")
                .when(
                        year.has(GasHolderPart.FULL_HOURS),
                        () -> "The holder was full for " + Words.hours(year.of(GasHolderPart.FULL_HOURS))
                                + " h and empty for " + Words.hours(year.of(GasHolderPart.EMPTY_HOURS)) + " h.")
                .when(
                        year.has(BackupPart.SHORT_OF_OWN_GAS_HOURS),
                        () -> "The backup heater was short of own gas for "
                                + Words.hours(year.of(BackupPart.SHORT_OF_OWN_GAS_HOURS)) + " h.")
                .when(
                        year.has(CondensatePart.LITRES),
                        () -> "In the gas pipe " + Words.number(year.of(CondensatePart.LITRES))
                                + " litres of water fall out, at most "
                                + Words.number(year.of(CondensatePart.MOST_LITRES_DAY))
                                + " in a day: lay it with a fall to a water trap.")
                .done();
    }

    /** Sentences on seasons, shelter and hygienisation. */
    List<String> seasons() {
        return new Telling()
                .when(year.has(FeedPart.DAYS_FED), this::fed)
                .each(design.spells(), this::spell)
                .when(year.has(ShelterPart.MEAN_C), this::shelter)
                .when(
                        year.has(FeedPart.HYGIENISATION_BOUGHT),
                        () -> "Hygienisation takes " + Words.kWh(year.of(FeedPart.HYGIENISATION_BOUGHT))
                                + ". Which wastes must be heated, how, and who approves it is for the authority; particle size 12 mm and 70 °C for 1 h"
                                + " is what the European rule for kitchen waste names (Regulation (EU) 142/2011, annex V).")
                .done();
    }

    private String spell(Spell spell) {
        return "In " + spell.name() + " gas of " + Words.kWh(year.of(line(spell.name(), "gas_energy_kwh")))
                + " is made, and the backup heater takes "
                + Words.kWh(year.of(line(spell.name(), "backup_bought_kwh"))) + ".";
    }

    private String fed() {
        return String.format(
                Locale.ROOT,
                "The tank is fed on %.0f days and rests on %.0f; warming up after a rest it is below its minimum for %s h, which"
                        + " do not count as short.",
                year.of(FeedPart.DAYS_FED),
                year.of(FeedPart.DAYS_IDLE),
                Words.hours(year.of(KeyFigures.WARMING_UP_HOURS)));
    }

    private String shelter() {
        return "The shelter stands at " + Words.celsius(year.of(ShelterPart.MEAN_C)) + " on the mean, between "
                + Words.celsius(year.of(ShelterPart.LEAST_C)) + " and "
                + Words.celsius(year.of(ShelterPart.MOST_C)) + "; the tank gives it "
                + Words.kWh(year.of(ShelterPart.FROM_TANK)) + ", the sun " + Words.kWh(year.of(ShelterPart.SUN))
                + ".";
    }

    private static Line line(String spell, String key) {
        return new Line("spells/" + spell + "/" + key, key, Unit.KWH);
    }
}
