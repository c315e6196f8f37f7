package org.warmvat.cli.answer;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.design.Design;

/** Tells what a sweep found. */
public final class VaryTelling {

    /** The table of all runs. */
    public static final String CSV = "vary.csv";
    /** The table of those that are not beaten. */
    public static final String PARETO_CSV = "pareto.csv";

    private static final int MOST_ROWS = 400;
    private static final List<String> SHOWN = List.of(
            "net_energy_kwh",
            "gas_energy_kwh",
            "solar_heat_kwh",
            "backup_bought_kwh",
            "electricity_total_kwh",
            "hours_below_floor",
            "slurry_least_c",
            "money_balance");
    private static final List<String> WITH_SETPOINT =
            List.of("loading_kg_vs_m3_day", "retention_days", "volume_for_equal_gas_l");

    private VaryTelling() {}

    /**
     * Two outputs of which none is to be beaten in both.
     *
     * @param first name of the first
     * @param second name of the second
     * @param stands by run, whether it is not beaten
     * @param order the indices of those in order of the first
     */
    public record Front(String first, String second, boolean[] stands, int[] order) {}

    /** A caution where the loading is high for the temperature. */
    public static Optional<String> loadingCaution(Design design, String named) {
        return VarySentences.loadingCaution(design, named);
    }

    /** A whole sweep. */
    public static StudyResults whole(
            Design design, String weather, Sweep sweep, List<Front> fronts, List<String> cautions) {
        VarySentences sentences = new VarySentences(sweep);
        List<Paragraph> answer = new ArrayList<>();
        answer.add(new Paragraph("What was varied?", sentences.varied()));
        answer.add(new Paragraph("Which is best?", sentences.best()));
        if (!sentences.setpoint().isEmpty()) {
            answer.add(new Paragraph("What the set-point asks for", sentences.setpoint()));
        }
        List<Table> tables = new ArrayList<>(List.of(table(sweep, fronts)));
        PaybackSentences payback = new PaybackSentences(sweep, design.prices());
        if (payback.apply()) {
            answer.add(new Paragraph("Does more of it pay?", payback.sentences()));
            payback.steps().ifPresent(steps -> tables.add(steps.table()));
        }
        Map<String, byte[]> csv = new LinkedHashMap<>();
        csv.put(CSV, VaryCsv.of(sweep, true));
        for (Front front : fronts) {
            answer.add(new Paragraph("Which are not beaten?", List.of(front(front))));
            csv.put(PARETO_CSV, VaryCsv.of(sweep, front.order()));
        }
        return new StudyResults(
                "vary",
                design.title() + ": varied",
                weather,
                answer,
                tables,
                figures(sweep, fronts, payback.apply() ? payback.steps() : Optional.empty()),
                csv,
                List.of(),
                cautions,
                List.of());
    }

    /** A part of a sweep that runs elsewhere too. */
    public static StudyResults shard(Design design, String weather, Sweep sweep, int shard, int shards) {
        List<String> sentences = List.of(
                "Part " + shard + " of " + shards + " is done: " + sweep.runs() + " runs.",
                "Laid end to end in order, the files " + CSV + " of all parts are the file of the whole.");
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("shard", shard);
        figures.put("shards", shards);
        figures.put("runs_here", sweep.runs());
        return new StudyResults(
                "vary",
                design.title() + ": varied, in part",
                weather,
                List.of(new Paragraph("What was done?", sentences)),
                List.of(),
                figures,
                Map.of(CSV, VaryCsv.of(sweep, shard == 1)),
                List.of(),
                List.of(),
                List.of());
    }

    /** The same with pictures. */
    public static StudyResults with(StudyResults results, List<Drawing> pictures, List<String> assumed) {
        return new StudyResults(
                results.command(),
                results.title(),
                results.subtitle(),
                results.answer(),
                results.tables(),
                results.figures(),
                results.csv(),
                pictures,
                results.warnings(),
                assumed);
    }

    private static String front(Front front) {
        if (front.order().length == 0) {
            return "None is marked: " + front.first() + " or " + front.second() + " means nothing for these designs.";
        }
        return front.order().length + " of " + front.stands().length
                + (front.order().length == 1 ? " is" : " are") + " not beaten by any other in both "
                + front.first() + " (" + sense(front.first()) + ") and " + front.second() + " ("
                + sense(front.second()) + "); marked, and in " + PARETO_CSV + ".";
    }

    private static String sense(String output) {
        return Outputs.betterHigh(output) ? "the more the better" : "the less the better";
    }

    private static List<String> shown(Sweep sweep) {
        List<String> shown = new ArrayList<>(SHOWN);
        if (sweep.keys().contains("control.setpoint_c")) {
            shown.addAll(WITH_SETPOINT);
        }
        return shown;
    }

    private static Table table(Sweep sweep, List<Front> fronts) {
        List<String> shown = shown(sweep);
        List<String> header = new ArrayList<>(sweep.keys());
        header.addAll(shown);
        fronts.forEach(front -> header.add("not beaten"));
        List<List<String>> rows = new ArrayList<>();
        for (int run = 0; run < Math.min(MOST_ROWS, sweep.runs()); run++) {
            List<String> row = new ArrayList<>();
            for (double value : sweep.values().get(run)) {
                row.add(Sweep.shortest(value));
            }
            for (String output : shown) {
                double value = sweep.output(run, output);
                row.add(Double.isFinite(value) ? Words.number(value) : "-");
            }
            for (Front front : fronts) {
                row.add(front.stands()[run] ? "*" : "");
            }
            rows.add(row);
        }
        String cut =
                sweep.runs() > MOST_ROWS ? ": the first " + MOST_ROWS + " of " + sweep.runs() + ", all in " + CSV : "";
        return new Table("The runs" + cut, header, rows);
    }

    private static Map<String, Object> figures(Sweep sweep, List<Front> fronts, Optional<PaybackWords> payback) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("axes", sweep.keys());
        // each is made when it is written, since there may be very many
        List<Object> runs = new AbstractList<>() {
            @Override
            public Object get(int run) {
                return figure(sweep, fronts, run);
            }

            @Override
            public int size() {
                return sweep.runs();
            }
        };
        figures.put("runs", runs);
        payback.ifPresent(steps -> figures.put("payback", steps.figures()));
        return figures;
    }

    private static Map<String, Object> figure(Sweep sweep, List<Front> fronts, int run) {
        Map<String, Object> figure = new LinkedHashMap<>();
        for (int i = 0; i < sweep.keys().size(); i++) {
            figure.put(sweep.keys().get(i), sweep.values().get(run)[i]);
        }
        for (String output : shown(sweep)) {
            double value = sweep.output(run, output);
            figure.put(output, Double.isFinite(value) ? value : null);
        }
        for (Front front : fronts) {
            figure.put("not_beaten", front.stands()[run]);
        }
        return figure;
    }
}
