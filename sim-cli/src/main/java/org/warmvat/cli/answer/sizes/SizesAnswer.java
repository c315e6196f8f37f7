package org.warmvat.cli.answer.sizes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;
import org.warmvat.question.sizes.ScalingRule;
import org.warmvat.question.sizes.SizesResult;
import org.warmvat.question.sizes.SizesResult.Size;
import org.warmvat.question.vary.Outputs;

/** The answer to {@code sizes}. */
public final class SizesAnswer {

    private static final String ALL_GAS =
            "Net energy, which stands beside it, counts all gas made, surplus included, and is no return; what burns the gas stays"
                    + " as in the design at every size.";

    private final List<Size> sizes;
    private final List<ScalingRule> rules;
    private final boolean used;

    private SizesAnswer(SizesResult result) {
        sizes = result.sizes();
        rules = result.rules();
        used = sizes.get(0).isUsed();
    }

    /**
     * Tells what was found.
     *
     * @param result the sizes
     * @param steadiness what it costs to be steady
     * @param asked what they are about
     */
    public static Document of(SizesResult result, Optional<Steadiness> steadiness, Subject asked) {
        SizesAnswer answer = new SizesAnswer(result);
        List<Size> sizes = result.sizes();
        boolean gas = sizes.stream().allMatch(size -> gasKWh(size) > 0);
        String net = answer.net();
        String verdict = gas
                ? verdict("a positive " + net + " over the run", sizes, Size::leadingKWh, result.positiveFromL())
                : "No gas is computed for this design, so that no size can be said to pay its way.";
        SeasonSentences.Apart apart = SeasonSentences.Apart.of(asked);
        Draft draft = Draft.of(asked, "at other sizes");
        apart.figures(draft, asked.design());
        draft.verdict(verdict, gas && answer.used ? List.of(ALL_GAS) : List.of())
                .paragraph(
                        "Which size pays its way in every month?",
                        gas
                                ? List.of(verdict(
                                        "a positive " + net + " in every month",
                                        sizes,
                                        Size::worstMonthKWh,
                                        result.everyMonthFromL()))
                                : List.of())
                .paragraph(
                        "What does each size return?",
                        Stream.concat(answer.returns().stream(), apart.sentence().stream())
                                .toList())
                .paragraph("How was it scaled?", answer.scaled())
                .table(answer.results())
                .table(answer.scaledKeys())
                .figure("judged_by", Outputs.leading(sizes.get(0).names()))
                .figure("smallest_positive_net_l", first(sizes, Size::leadingKWh))
                .figure("smallest_positive_worst_month_l", first(sizes, Size::worstMonthKWh))
                .figure("net_changes_sign_at_l", result.positiveFromL())
                .figure("worst_month_changes_sign_at_l", result.everyMonthFromL())
                .figure("sizes", answer.columns(true).rows(sizes))
                .csv("sizes.csv", answer.columns(false).csv(sizes))
                .pictures(() -> SizesPictures.of(result.drawn(), gas))
                .warn(Warnings.worst(sizes.stream().map(Size::warnings).toList()));
        SteadyWords.tellAsDrawn(draft, steadiness, asked);
        return draft.done();
    }

    static double perLitre(Size size) {
        return size.leadingKWh() / size.litres();
    }

    private String net() {
        return net(used);
    }

    static String net(boolean used) {
        return used ? "useful net energy" : "net energy";
    }

    static double gasKWh(Size size) {
        return size.output("gas_energy_kwh");
    }

    static double boughtKWh(Size size) {
        double bought = size.output("backup_bought_kwh");
        return Double.isNaN(bought) ? 0 : bought;
    }

    private static String verdict(
            String what, List<Size> sizes, ToDoubleFunction<Size> value, Optional<Double> threshold) {
        Optional<Double> first = first(sizes, value);
        if (first.isEmpty()) {
            return "None of these sizes has " + what + ".";
        }
        String smallest = "The smallest of these sizes with " + what + " is " + litres(first.get());
        return threshold
                .map(found -> smallest + "; between the sizes run the change comes at about " + litres(found) + ".")
                .orElse(smallest + ", the smallest that was run.");
    }

    private static Optional<Double> first(List<Size> sizes, ToDoubleFunction<Size> value) {
        return sizes.stream()
                .filter(size -> value.applyAsDouble(size) > 0)
                .findFirst()
                .map(Size::litres);
    }

    private List<String> returns() {
        return sizes.stream().map(SizesAnswer::returned).toList();
    }

    private static String returned(Size size) {
        String taken = gasKWh(size) > 0
                ? (size.isUsed() ? "useful net " : "net ") + Words.kWh(size.leadingKWh()) + ", "
                        + Words.number(perLitre(size))
                        + " kWh a litre; heating takes "
                        + Words.percent(boughtKWh(size) / gasKWh(size)) + " of the gas, electricity "
                        + Words.percent(size.output("electricity_total_kwh") / gasKWh(size))
                : "heater and machinery take " + Words.kWh(-size.netKWh());
        double hours = size.output("hours_below_floor");
        String net = Outputs.leading(size.names()).replace("_kwh", "");
        String three = gasKWh(size) > 0
                ? "; " + net(size.isUsed()) + " is "
                        + GasWords.three(
                                size.output(net + "_low_gas_kwh"),
                                size.leadingKWh(),
                                size.output(net + "_high_gas_kwh"))
                        + (size.isUsed() ? "; net energy " + Words.kWh(size.netKWh()) : "")
                : "";
        return litres(size.litres()) + ": " + taken + three
                + (hours > 0 ? "; below its minimum for " + Words.hours(hours) + " hours" : "") + ".";
    }

    private List<String> scaled() {
        Map<String, List<String>> byRule = rules.stream()
                .collect(Collectors.groupingBy(
                        ScalingRule::words,
                        LinkedHashMap::new,
                        Collectors.mapping(ScalingRule::key, Collectors.toList())));
        return new Telling()
                .each(byRule.entrySet(), rule -> "Scaled " + rule.getKey() + ": " + Words.list(rule.getValue()) + ".")
                .when(
                        byRule.containsKey("with the need of heat"),
                        "The need of heat is the steady loss and the feed at the mean air of the coldest 24 hours.")
                .say(
                        "All else stays as in the design: thickness of insulation and shell, fittings with their bores, idle power,"
                                + " pumps, electronics. Another rule for a number: --scale key=power, key=need or key=fixed.")
                .done();
    }

    private Table results() {
        String net = used ? "useful net, kWh" : "net, kWh";
        Columns<Size> columns = new Columns<Size>()
                .cell("litres", size -> Words.number(size.litres()))
                .cell("gas, kWh", size -> Words.number(gasKWh(size)))
                .cell("backup bought, kWh", size -> Words.number(size.output("backup_bought_kwh")))
                .cell("electricity, kWh", size -> Words.number(size.output("electricity_total_kwh")))
                .cell(net, size -> Words.number(size.leadingKWh()))
                .cell(net + "/l", size -> Words.number(perLitre(size)))
                .cell("worst month, kWh", size -> Words.number(size.worstMonthKWh()))
                .cell("money balance", size -> Words.number(size.output("money_balance")))
                .cell("hours short", size -> Words.hours(size.output("hours_below_floor")));
        if (used) {
            columns.cell("net, kWh", size -> Words.number(size.netKWh()));
        }
        return columns.table("Sizes", sizes);
    }

    private Table scaledKeys() {
        Columns<Integer> columns =
                new Columns<Integer>().cell("scaled key", i -> rules.get(i).key());
        sizes.forEach(size -> columns.cell(
                litres(size.litres()), i -> Words.number(size.scaled().get(i))));
        return columns.table(
                "The scaled numbers of each size",
                IntStream.range(0, rules.size()).boxed().toList());
    }

    static String litres(double litres) {
        return Words.number(litres) + " litres";
    }

    /** The sizes as figures, with the quotient that the CSV leaves to its reader or without. */
    private Columns<Size> columns(boolean perLitre) {
        Columns<Size> columns = new Columns<Size>().value("size_l", Size::litres);
        for (int i = 0; i < rules.size(); i++) {
            int rule = i;
            columns.value(rules.get(i).key(), size -> size.scaled().get(rule));
        }
        if (perLitre) {
            columns.value("net_kwh_per_l", size -> size.netKWh() / size.litres());
        }
        if (perLitre && used) {
            columns.value("useful_net_kwh_per_l", SizesAnswer::perLitre);
        }
        sizes.get(0).names().forEach(output -> columns.value(output, size -> size.output(output)));
        return columns;
    }
}
