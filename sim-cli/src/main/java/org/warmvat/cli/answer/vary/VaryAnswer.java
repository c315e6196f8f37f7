package org.warmvat.cli.answer.vary;

import java.nio.file.Path;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.PartAnswer;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.vary.Sweep;

/** The answer to {@code vary}. */
public final class VaryAnswer {

    private static final String CSV = "vary.csv";
    private static final String PARETO_CSV = "pareto.csv";
    private static final int MOST_ROWS = 400;
    private static final List<String> SHOWN = List.of(
            "net_energy_kwh",
            "gas_energy_kwh",
            "solar_heat_kwh",
            "backup_bought_kwh",
            "electricity_total_kwh",
            "hours_below_floor",
            "slurry_least_c",
            "money_balance",
            "outlay");
    private static final List<String> OF_GAS = List.of("net_energy_kwh", "gas_energy_kwh", "money_balance");
    private static final List<String> MONEY = List.of("money_balance", "outlay");
    private static final List<String> WITH_SETPOINT =
            List.of("loading_kg_vs_m3_day", "retention_days", "volume_for_equal_gas_l");

    private final Sweep sweep;
    private final List<Front> fronts;
    private final String currency;
    private final String currencyOnce;
    /** Worked out once: it takes a look at all runs. */
    private final List<String> shown;

    private VaryAnswer(Sweep sweep, List<Front> fronts, Subject asked) {
        currency = asked.currency();
        currencyOnce = asked.currencyOnce();
        this.sweep = sweep;
        this.fronts = fronts;
        shown = shown(sweep);
    }

    /**
     * A whole sweep.
     *
     * @param sweep all runs
     * @param steadiness what it costs the design as drawn to be steady
     * @param asked what they are about
     * @param shown the output to draw
     * @param pareto two outputs of which none is to be beaten in both, or none
     */
    public static Document whole(
            Sweep sweep, Optional<Steadiness> steadiness, Subject asked, String shown, List<String> pareto) {
        List<Front> fronts = pareto.isEmpty() ? List.of() : List.of(Front.of(sweep, pareto.get(0), pareto.get(1)));
        Draft draft = new VaryAnswer(sweep, fronts, asked).told(asked, shown).warn(sweep.warnings());
        SteadyWords.tellAsDrawn(draft, steadiness, asked);
        return draft.done();
    }

    private Draft told(Subject asked, String shown) {
        VarySentences sentences = new VarySentences(sweep);
        List<String> best = sentences.best();
        Draft draft = Draft.of(asked, "varied")
                .verdict(best.get(0), sentences.but())
                .paragraph("What was varied?", sentences.varied(shown))
                .paragraph("Which is best?", best.subList(1, best.size()))
                .paragraph("What the set-point asks for", sentences.setpoint())
                .table(table())
                .figure("axes", sweep.keys())
                .figure("runs", rows())
                .csv(CSV, csv(List.of(sweep), true));
        for (Front front : fronts) {
            draft.paragraph("Which are the best compromises?", List.of(sentence(front)))
                    .csv(PARETO_CSV, marked(front.order()));
        }
        PaybackSentences payback = new PaybackSentences(sweep, asked.design().prices(), asked.currencyOfPayback());
        if (payback.apply()) {
            draft.paragraph(
                    "Does more of it pay?",
                    Stream.concat(payback.sentences().stream(), Stream.of(MoneySentences.whose(asked)))
                            .toList());
            payback.steps().ifPresent(steps -> draft.table(steps.table()).figure("payback", steps.figures()));
        }
        return draft.pictures(() -> SweepDrawing.of(sweep, shown, fronts));
    }

    /** An answer of several years with the runs of all of them in its table. */
    public static Document withRunsOf(List<Sweep> sweeps, Document told) {
        Document.Data data = told.data();
        Map<String, Csv> tables = new LinkedHashMap<>(data.csv());
        tables.put(CSV, csv(sweeps, true));
        return new Document(
                told.heading(),
                told.verdict(),
                told.body(),
                new Document.Data(data.figures(), tables, data.texts(), data.copied()),
                told.grounds());
    }

    /** A part of a sweep that runs elsewhere too, year by year. */
    public static Document part(List<Sweep> sweeps, Subject asked, int part, int parts, Optional<Path> journal) {
        int runs = sweeps.stream().mapToInt(Sweep::runs).sum();
        return PartAnswer.of(asked, "varied", part, parts, runs, journal)
                .csv(CSV, csv(sweeps, part == 1))
                .warn(Warnings.worst(sweeps.stream().map(Sweep::warnings).toList()))
                .done();
    }

    /**
     * All runs; of several years each with the place of its year, counted from 1. Parts of a sweep laid end to end give the table of the
     * whole, byte for byte.
     */
    private static Csv csv(List<Sweep> sweeps, boolean headed) {
        boolean several = sweeps.size() > 1;
        List<String> headings = new ArrayList<>(several ? List.of("year") : List.of());
        headings.addAll(sweeps.get(0).keys());
        headings.addAll(sweeps.get(0).names());
        int runs = sweeps.stream().mapToInt(Sweep::runs).sum();
        return Csv.late(headed ? headings : List.of(), runs, row -> {
            int year = 0;
            int run = row;
            for (; run >= sweeps.get(year).runs(); year++) {
                run -= sweeps.get(year).runs();
            }
            DoubleStream place = several ? DoubleStream.of(year + 1) : DoubleStream.empty();
            return DoubleStream.concat(place, numbers(sweeps.get(year), run))
                    .boxed()
                    .toArray();
        });
    }

    /** Some of the runs. */
    private Csv marked(int... runs) {
        List<String> headings = new ArrayList<>(sweep.keys());
        headings.addAll(sweep.names());
        return Csv.late(
                headings, runs.length, row -> numbers(sweep, runs[row]).boxed().toArray());
    }

    private static DoubleStream numbers(Sweep sweep, int run) {
        return DoubleStream.concat(
                Arrays.stream(sweep.values().get(run)),
                Arrays.stream(sweep.outputs().get(run)));
    }

    private static String sentence(Front front) {
        if (front.order().length == 0) {
            return "None is marked: " + front.first() + " or " + front.second() + " means nothing for these designs.";
        }
        return front.order().length + " of " + front.stands().length
                + (front.order().length == 1 ? " is" : " are")
                + " best compromises: no other run does better in one and as well in the other of "
                + front.first() + " (" + sense(front.first()) + ") and " + front.second() + " ("
                + sense(front.second()) + "); marked, and in " + PARETO_CSV + ".";
    }

    private static String sense(String output) {
        return Outputs.betterHigh(output) ? "the more the better" : "the less the better";
    }

    private static List<String> shown(Sweep sweep) {
        List<String> shown = new ArrayList<>(SHOWN);
        if (new VarySentences(sweep).isUsed()) {
            shown.add(0, Outputs.leading(sweep.names()));
        }
        if (!SweepDrawing.hasNumbers(sweep, "net_energy_low_gas_kwh")) {
            shown.removeAll(OF_GAS);
        }
        if (sweep.keys().contains("control.setpoint_c")) {
            shown.addAll(WITH_SETPOINT);
        }
        return shown;
    }

    private Table table() {
        Columns<Integer> table = new Columns<>();
        for (int i = 0; i < sweep.keys().size(); i++) {
            int key = i;
            table.cell(
                    AxisWords.of(sweep.keys().get(i)),
                    run -> Numerals.exact(sweep.values().get(run)[key]));
        }
        for (String output : shown) {
            String money = MONEY.contains(output) ? ", " + (output.equals("outlay") ? currencyOnce : currency) : "";
            table.cell(SweepDrawing.words(output) + money, run -> Words.number(sweep.output(run, output)));
        }
        fronts.forEach(front -> table.cell("best compromise", run -> front.stands()[run] ? "*" : ""));
        String cut =
                sweep.runs() > MOST_ROWS ? ": the first " + MOST_ROWS + " of " + sweep.runs() + ", all in " + CSV : "";
        return table.table(
                "The runs" + cut,
                IntStream.range(0, Math.min(MOST_ROWS, sweep.runs())).boxed().toList());
    }

    /** A run as figures: its keys with their values, and some of its outputs. */
    private Map<String, Object> row(int run, List<String> shown) {
        Map<String, Object> row = Draft.row();
        for (int i = 0; i < sweep.keys().size(); i++) {
            row.put(sweep.keys().get(i), sweep.values().get(run)[i]);
        }
        shown.forEach(output -> row.putAll(Draft.row(output, sweep.output(run, output))));
        return row;
    }

    /** All runs as figures; each is made when it is written, since there may be very many. */
    private List<Object> rows() {
        return new AbstractList<>() {
            @Override
            public Object get(int run) {
                Map<String, Object> row = VaryAnswer.this.row(run, shown);
                fronts.forEach(front -> row.put("not_beaten", front.stands()[run]));
                return row;
            }

            @Override
            public int size() {
                return sweep.runs();
            }
        };
    }
}
