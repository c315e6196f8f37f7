package org.warmvat.cli.answer.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.choose.Aim;
import org.warmvat.question.choose.Candidate;
import org.warmvat.question.choose.ChooseResult;

/** What {@code choose} says, in sentences. */
final class ChooseWords {

    private static final Map<String, String> LIMITS = Map.of(
            "hours_below_floor", "hours below the minimum temperature",
            "warm_up_days", "days of a warm-up from 10 °C",
            "net_energy_kwh_least", "kWh of net energy",
            "net_energy_kwh_least_month", "kWh of net energy in the worst month",
            "budget", "to buy");

    private final ChooseResult result;
    private final String currency;
    private final String once;

    ChooseWords(ChooseResult result, String currency, String once) {
        this.result = result;
        this.currency = currency;
        this.once = once;
    }

    /** An aim as an axis or a column is named. */
    static String name(Aim aim, String currency) {
        return switch (aim) {
            case COST -> "yearly cost, " + currency;
            case NET -> "net energy, kWh";
            case BOUGHT -> "bought for heat, kWh";
        };
    }

    /** What is paid each year, at the design's prices of energy. */
    String aYear(double sum) {
        return MoneySentences.sum(sum, "a year", currency);
    }

    /** What is paid once, at the prices of the file of choices. */
    String money(double sum) {
        return Words.number(sum) + " " + once;
    }

    private String aim(Candidate one) {
        return switch (result.by()) {
            case COST -> "costs " + aYear(one.cost().perYear());
            case NET -> "gives a net energy of " + Words.kWh(one.yearly().net().meanKWh());
            case BOUGHT -> "buys " + Words.kWh(one.yearly().energy().boughtKWh()) + " for heat";
        };
    }

    private String difference(double worse) {
        String more = Words.number(Math.abs(worse));
        return switch (result.by()) {
            case COST -> MoneySentences.sum(Math.abs(worse), "a year " + (worse < 0 ? "less" : "more"), currency);
            case NET -> more + " kWh " + (worse < 0 ? "more" : "less") + " of net energy";
            case BOUGHT -> more + " kWh " + (worse < 0 ? "less" : "more") + " bought";
        };
    }

    /** An option in words: a number with its unit, any other by its label. */
    static String shown(String choice, Object value) {
        return value instanceof Double number ? AxisWords.value(choice, number) : String.valueOf(value);
    }

    /** A choice in words: that of a number in the trade's, any other by its own name. */
    static String named(String choice, Object value) {
        return value instanceof Double ? AxisWords.bare(choice) : choice;
    }

    static String chosen(Candidate one) {
        return Words.list(one.chosen().entrySet().stream()
                .map(entry -> named(entry.getKey(), entry.getValue()) + " " + shown(entry.getKey(), entry.getValue()))
                .toList());
    }

    String verdict() {
        Candidate best = result.best();
        if (!best.allowed()) {
            return "None of the " + result.effort().designs()
                    + " designs that were run keeps to the limits. What comes nearest is " + chosen(best) + ": it has "
                    + broken(best.broken()) + ".";
        }
        return "The best of what can be bought is " + chosen(best) + ": it " + aim(best)
                + (result.by() == Aim.COST ? ", " : " and costs ")
                + money(best.cost().outlay()) + " to buy.";
    }

    private String broken(List<Candidate.Broken> broken) {
        return Words.list(broken.stream()
                .map(one -> (one.key().equals("budget") ? money(one.found()) : Words.number(one.found())) + " "
                        + LIMITS.get(one.key()) + ", where "
                        + (one.key().equals("budget") ? money(one.allowed()) : Words.number(one.allowed()))
                        + (one.key().startsWith("net") ? " are the least" : " are the most"))
                .toList());
    }

    List<String> but(boolean exampleEnergyPrices) {
        return new Telling()
                .when(result.best().allowed(), this::againstDrawn)
                .say(
                        "The prices are those of the file of choices; labour and what it leaves out is not counted, and this is no advice to"
                                + " invest.")
                .when(
                        exampleEnergyPrices,
                        "What energy costs and gas is worth are examples of the program: the design states neither, and with the prices of"
                                + " your place another design may be best.")
                .done();
    }

    /** The saving against the design as drawn. */
    private String againstDrawn() {
        ChooseResult.Drawn drawn = result.drawn();
        String breaks = (drawn.broken().isEmpty() ? "" : "; as drawn it has " + broken(drawn.broken())) + ".";
        return switch (result.by()) {
            case COST -> costs(drawn, result.best()) + breaks;
            case NET ->
                "The design as drawn gives " + Words.kWh(drawn.yearly().net().meanKWh()) + breaks;
            case BOUGHT ->
                "The design as drawn buys " + Words.kWh(drawn.yearly().energy().boughtKWh()) + " for heat" + breaks;
        };
    }

    private String costs(ChooseResult.Drawn drawn, Candidate best) {
        return Double.isNaN(drawn.perYear())
                ? "What the design as drawn costs to buy is not told by these prices: in energy and electricity less the worth of the"
                        + " gas it costs " + aYear(running(drawn.yearly())) + ", the best "
                        + Words.number(running(best.yearly()))
                : "Against the design as drawn, which costs " + aYear(drawn.perYear()) + " and "
                        + money(drawn.outlay()) + " to buy, it "
                        + saves(drawn.perYear() - best.cost().perYear());
    }

    private String saves(double sum) {
        return sum < 0 ? "costs " + MoneySentences.sum(-sum, "a year more", currency) : "saves " + aYear(sum);
    }

    private static double running(org.warmvat.question.choose.Yearly yearly) {
        return yearly.money().energy() - yearly.money().gasWorth();
    }

    List<String> effort() {
        ChooseResult.Effort effort = result.effort();
        return new Telling()
                .say(tried(effort))
                .when(
                        effort.skipped() > 0,
                        effort.skipped()
                                + " were passed over: with less insulation or a smaller heater they cannot do what the same with more cannot.")
                .say(
                        "All neighbours of the designs named, one step away in each choice, were run too: none is better placed.")
                .each(
                        effort.barredBy().entrySet(),
                        barred -> barred.getValue()
                                + (barred.getValue() == 1 ? " of the designs run breaks" : " of the designs run break")
                                + " the limit " + barred.getKey() + ".")
                .done();
    }

    private static String tried(ChooseResult.Effort effort) {
        return "There are " + effort.points() + " combinations. "
                + (effort.exhaustive()
                        ? "All were looked at"
                        : "They were searched along each choice and among neighbours, from several starts")
                + ": " + effort.designs() + " designs were run in full, in " + effort.runs()
                + " runs through the weather with the design as drawn"
                + (effort.exhaustive() && effort.designs() + effort.skipped() < effort.points()
                        ? "; combinations that differ only in parts of a circuit that is left out are one design."
                        : ".");
    }

    List<String> others() {
        List<Candidate> named = result.named();
        List<Candidate> ties = result.ties();
        return new Telling()
                .when(
                        named.size() > 1 && result.best().allowed(),
                        () -> "The runner-up has " + instead(named.get(1)) + ": "
                                + difference(named.get(1).aim(result.by())
                                        - result.best().aim(result.by())) + ".")
                .when(
                        !ties.isEmpty(),
                        () -> ties.size() + " other" + (ties.size() == 1 ? " does" : "s do")
                                + " exactly as well, among them " + chosen(ties.get(0))
                                + "; named as best is the one with the earlier options.")
                .done();
    }

    /** How a design differs from the best. */
    String instead(Candidate other) {
        List<String> differences = new ArrayList<>();
        other.chosen().forEach((choice, value) -> {
            Object best = result.best().chosen().get(choice);
            if (!Objects.equals(best, value)) {
                differences.add(named(choice, value) + " " + shown(choice, value)
                        + (best == null ? "" : " instead of " + shown(choice, best)));
            }
        });
        return differences.isEmpty() ? "nothing else" : Words.list(differences);
    }

    List<String> influence() {
        ChooseResult.Influence most = result.mattersMost();
        return new Telling()
                .say(
                        most.change() > 0
                                ? "The choice that matters most is " + named(most.choice(), most.worst()) + ": with "
                                        + shown(most.choice(), most.worst())
                                        + ", all else as in the best, it is " + difference(most.change()) + "."
                                : "No choice alone can be made worse within the limits.")
                .each(
                        result.influence().stream()
                                .filter(one -> one.barred() > 0)
                                .toList(),
                        one -> named(one.choice(), one.worst()) + ": " + one.barred() + " of its " + one.options()
                                + " options " + (one.barred() == 1 ? "breaks" : "break")
                                + " a limit, all else as in the best.")
                .done();
    }
}
