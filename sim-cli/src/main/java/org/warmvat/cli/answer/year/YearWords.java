package org.warmvat.cli.answer.year;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.GasRange;
import org.warmvat.question.year.YearResult;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;

/** The answer to {@code year} in sentences; every number in them also stands in {@code summary.json}. */
final class YearWords {

    private final YearResult run;
    private final Period year;
    private final Design design;
    private final Findings findings;
    private final Span span;
    private final Subject asked;

    YearWords(YearResult run, Findings findings, Subject asked) {
        this.run = run;
        this.year = run.whole();
        this.design = run.design();
        this.findings = findings;
        this.span = Span.of(run);
        this.asked = asked;
    }

    /** The paragraphs in the order in which a builder asks. */
    void tell(Draft draft, Optional<YearPayback> payback) {
        LifeWords life = new LifeWords(design, year);
        new YearInShort(run).tell(draft);
        draft.paragraph("How warm was the slurry?", List.of(range()))
                .paragraph("What did the sun give, what the backup heater?", heat())
                .paragraph("What did it take, and where did the heat go?", List.of(electricity(), heatLost()))
                .paragraph("Does it return more than it takes?", netEnergy())
                .paragraph("What became of the gas?", life.gas())
                .paragraph("What did the seasons and the surroundings do?", life.seasons())
                .paragraph("What did it cost, and what is the gas worth?", MoneySentences.of(run, asked));
        payback.ifPresent(more -> draft.paragraph("Would more insulation or collector pay?", more.sentences()));
        draft.paragraph("The worst week", worstWeek());
    }

    private double bought() {
        return design.backup().isPresent() ? year.of(BackupPart.BOUGHT) : 0;
    }

    private double hygienised() {
        return design.feed().hygienisation().isPresent() ? year.of(FeedPart.HYGIENISATION_BOUGHT) : 0;
    }

    private Optional<String> solarFraction() {
        double share = year.of(KeyFigures.SOLAR_SHARE);
        return Double.isNaN(share) ? Optional.empty() : Optional.of(Words.solarFraction(share));
    }

    private String range() {
        return "The slurry averaged " + Words.celsius(year.of(KeyFigures.MEAN_C)) + "; it was coldest on "
                + span.day(findings.coldestDay()) + " with " + Words.celsius(year.of(KeyFigures.LEAST_C))
                + " and warmest on " + span.day(findings.warmestDay()) + " with "
                + Words.celsius(year.of(KeyFigures.MOST_C)) + ".";
    }

    private List<String> heat() {
        return new Telling()
                .say(total())
                .each(
                        design.solar().isPresent() || design.backup().isPresent() ? findings.seasons() : List.of(),
                        this::season)
                .say(design.backup().map(backup -> bought(backup.source())))
                .done();
    }

    private String total() {
        String over = Character.toUpperCase(span.over().charAt(0)) + span.over().substring(1);
        boolean sun = design.solar().isPresent();
        boolean backup = design.backup().isPresent();
        if (!sun && !backup) {
            return "There is neither a solar circuit nor a backup heater.";
        }
        String gave = Words.list(new Telling()
                .when(sun, () -> "the sun gave " + Words.kWh(year.of(SolarPart.HEAT)) + " of heat")
                .when(backup, () -> "the backup heater " + (sun ? "" : "gave ") + Words.kWh(year.of(BackupPart.HEAT)))
                .done());
        return over + " " + gave
                + (sun ? backup ? fraction() : "; there is no backup heater" : " of heat; there is no solar circuit")
                + ".";
    }

    private String fraction() {
        return solarFraction()
                .map(fraction -> "; the solar fraction was " + fraction)
                .orElse("");
    }

    private String season(Season season) {
        boolean sun = design.solar().isPresent();
        return "In " + season.when() + " "
                + Words.list(new Telling()
                        .when(sun, () -> "the sun gave " + Words.kWh(season.solarKWh()))
                        .when(
                                design.backup().isPresent(),
                                () -> "the backup heater " + (sun ? "" : "gave ") + Words.kWh(season.backupKWh()))
                        .done())
                + ".";
    }

    private String bought(BackupSource source) {
        return "For its heat the backup heater "
                + switch (source) {
                    case ELECTRIC -> "drew " + Words.kWh(bought()) + " of electricity.";
                    case OWN_GAS -> "burned " + Words.kWh(bought()) + " of the tank's own gas.";
                    case FUEL -> "burned " + Words.kWh(bought()) + " of bought fuel.";
                };
    }

    private String electricity() {
        List<String> rest = year.books().lines().stream()
                .filter(line -> Meter.isConsumer(line) && !line.equals(Lines.MIXER) && !line.equals(Lines.AUGER))
                .filter(line -> year.of(line) > 0)
                .map(line -> line.name() + " " + Words.kWh(year.of(line)))
                .toList();
        double total = year.of(Meter.ELECTRICITY);
        double restKWh = total - year.of(Lines.MIXER) - year.of(Lines.AUGER);
        return "The mixer took " + Words.kWh(year.of(Lines.MIXER)) + " of electricity, the feed auger "
                + Words.kWh(year.of(Lines.AUGER)) + " and the rest "
                + Words.kWh(rest.isEmpty() ? 0 : restKWh)
                + (rest.isEmpty() ? "" : " (" + Words.list(rest) + ")") + ": "
                + Words.kWh(total) + " together.";
    }

    private String heatLost() {
        String byGas = design.gas().isPresent() ? ", " + Words.kWh(year.of(GasPart.GAS_LOSS)) + " with the gas" : "";
        return "Heat went out through envelope and fittings ("
                + Words.kWh(Lines.lossKWh(year))
                + ") and into warming the feed (" + Words.kWh(year.of(FeedPart.FEED)) + ")" + byGas
                + "; the mixer's shaft gave back " + Words.kWh(year.of(MixerPart.SHAFT)) + " as heat.";
    }

    private List<String> netEnergy() {
        String taken = Words.list(new Telling()
                .when(design.backup().isPresent(), () -> Words.kWh(bought()) + " for the backup heater")
                .when(design.feed().hygienisation().isPresent(), () -> Words.kWh(hygienised()) + " for hygienisation")
                .say(Words.kWh(year.of(Meter.ELECTRICITY)) + " of electricity")
                .done());
        return run.gas()
                .map(range -> returned(taken, range))
                .orElse(List.of("It takes " + taken + "; no gas is computed for this design."));
    }

    private List<String> returned(String taken, GasRange range) {
        double net = year.of(KeyFigures.NET);
        return List.of(
                "The gas, about " + Words.number(year.of(GasPart.METHANE_MADE)) + " Nm³ of methane, holds about "
                        + Words.kWh(year.of(GasPart.GAS_ENERGY)) + "; less " + taken + ", the net energy is "
                        + signed(net)
                        + ".",
                "It is "
                        + GasWords.three(
                                range.whole().low().netKWh(),
                                net,
                                range.whole().high().netKWh())
                        + ".",
                GasWords.how(range),
                "With all electricity weighted by a primary-energy factor of "
                        + Words.number(design.prices().primaryEnergyFactor()) + " the net energy is "
                        + signed(year.of(KeyFigures.NET_WEIGHTED)) + ".",
                "All gas made is counted here; what is flared, or lost in starting up, is not taken off.");
    }

    private static String signed(double kWh) {
        String sign = kWh > 0 ? "positive" : kWh < 0 ? "negative" : "nil";
        return sign + " at about " + Words.kWh(kWh);
    }

    private List<String> worstWeek() {
        return findings.worstWeek()
                .map(week -> List.of(when(week), howBad(week)))
                .orElse(List.of("The weather file is shorter than a week."));
    }

    private String when(WorstWeek week) {
        return "The seven days in a row with " + week.mark().words() + " were " + span.day(week.firstDay()) + " to "
                + span.day(week.lastDay()) + ".";
    }

    private String howBad(WorstWeek week) {
        return "In them "
                + Words.list(new Telling()
                        .when(
                                design.backup().isPresent(),
                                () -> "the backup heater gave " + Words.kWh(week.backupKWh()))
                        .when(design.solar().isPresent(), () -> "the sun gave " + Words.kWh(week.solarKWh()))
                        .say("the slurry averaged " + Words.celsius(week.meanC()) + " with a lowest of "
                                + Words.celsius(week.leastC()))
                        .say("was below its minimum for " + Words.hours(week.belowFloorHours()) + " hours")
                        .done())
                + ".";
    }
}
