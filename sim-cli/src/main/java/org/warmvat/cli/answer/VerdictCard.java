package org.warmvat.cli.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.GasRange;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Money;
import org.warmvat.tank.PartLoss;
import org.warmvat.weather.Weather;

/**
 * A year of a tank in five lines that fit a telephone.
 *
 * @param warm was it warm?
 * @param netEnergy net energy with low, middle and high gas
 * @param solarFraction what the sun gave of the heat
 * @param money what is left, by the design's own prices
 * @param mendFirst what to mend first
 */
public record VerdictCard(String warm, String netEnergy, String solarFraction, String money, String mendFirst) {

    /** What hurts before what leaves the tank cold; the first that a run warns of is mended first. */
    private static final List<Map.Entry<String, String>> REMEDIES = List.of(
            Map.entry("not_plausible", "the design: a number of it is not credible"),
            Map.entry("weather", "the weather file: it is doubted"),
            Map.entry(KeyFigures.BOILING, "the heat: the slurry boils"),
            Map.entry(KeyFigures.FREEZING, "the cold: the slurry freezes"),
            Map.entry("air_share", "the air dosing: it goes on where gas is short"),
            Map.entry("cold_pipe_end", "the slurry pipe whose end freezes"),
            Map.entry("loop_frozen", "the solar loop, which freezes"),
            Map.entry("too_hot_to_digest", "the heat: the slurry is too hot to digest"),
            Map.entry("own_gas_short", "the burner, which runs short of own gas"),
            Map.entry("below_floor", "the heating: the tank is below its minimum"),
            Map.entry("too_cold_to_digest", "the heating: the slurry is too cold to digest"));

    /**
     * The card of a run through a weather file.
     *
     * @param run the whole run
     * @param gas low and high gas, where gas is computed
     * @param warnings what the run, the design and the weather warn of
     * @param asked what it is about
     */
    public static VerdictCard of(Period run, Optional<GasRange> gas, List<Warning> warnings, Subject asked) {
        return new VerdictCard(
                warm(run, asked.design()),
                gas.map(range ->
                                (run.has(KeyFigures.USEFUL_NET) ? "useful: " : "") + GasWords.three(range.whole(), run))
                        .orElse("not judged: no gas is computed"),
                sun(run, asked.design()),
                money(run, asked),
                mend(warnings, asked.design(), asked.weather()));
    }

    private static String warm(Period run, Design design) {
        double below = run.of(KeyFigures.BELOW_FLOOR_HOURS);
        if (Double.isInfinite(design.control().minimumC())) {
            return "not judged: no minimum is stated";
        }
        String minimum =
                design.spells().isEmpty() ? Words.celsius(design.control().minimumC()) : "the minimum in force";
        return below == 0
                ? "never below " + minimum
                : "below " + minimum + " for " + Words.hours(below) + " of " + Words.hours(run.hours()) + " hours";
    }

    private static String sun(Period run, Design design) {
        double share = run.of(KeyFigures.SOLAR_SHARE);
        return design.solar().isEmpty()
                ? "no solar circuit"
                : Double.isNaN(share) ? "no heat from sun or heater" : Words.solarFraction(share);
    }

    private static String money(Period run, Subject asked) {
        if (asked.pricesAreExamples()) {
            return "not judged: the design states no prices";
        }
        Money money = Money.of(asked.design(), run);
        String currency = asked.design().prices().currency();
        return asked.design().gas().isPresent()
                ? MoneySentences.left(money.balance(), currency)
                : "energy for about " + Words.number(money.cost()) + " " + currency;
    }

    private static String mend(List<Warning> warnings, Design design, Weather weather) {
        return REMEDIES.stream()
                .filter(remedy ->
                        warnings.stream().anyMatch(warning -> warning.key().equals(remedy.getKey())))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> largest(PartLoss.of(design, weather.meanWindMPerS(), weather.meanAirC())));
    }

    private static String largest(List<PartLoss> parts) {
        double all = parts.stream().mapToDouble(PartLoss::watts).sum();
        return parts.isEmpty() || !(all > 0)
                ? "nothing: no heat is lost"
                : "the largest loss: " + parts.get(0).part() + ", "
                        + Words.percent(parts.get(0).watts() / all) + " of all";
    }

    /** The lines in order. */
    List<Document.KeyFigure> lines() {
        return List.of(
                new Document.KeyFigure("Warm?", warm),
                new Document.KeyFigure("Net energy", netEnergy),
                new Document.KeyFigure("Solar fraction", solarFraction),
                new Document.KeyFigure("Money", money),
                new Document.KeyFigure("Mend first", mendFirst));
    }

    /** The lines for {@code summary.json}. */
    Map<String, Object> figures() {
        return Draft.row(
                "warm", warm,
                "net_energy", netEnergy,
                "solar_fraction", solarFraction,
                "money", money,
                "mend_first", mendFirst);
    }
}
