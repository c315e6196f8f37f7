package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Hourly;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.heating.ShadingLoss;
import org.warmvat.question.Steadiness;
import org.warmvat.question.sensitive.SensitiveResult;
import org.warmvat.question.year.YearResult;

/** The answer to {@code year}. */
public final class YearAnswer {

    private final YearResult run;
    private final Findings findings;
    private final Subject asked;

    private YearAnswer(YearResult run, Subject asked) {
        this.run = run;
        this.findings = Findings.of(run);
        this.asked = asked;
    }

    /**
     * What is told beside a run, each empty where it was not asked.
     *
     * @param payback whether more insulation or collector would pay
     * @param sensitive what numbers that are not known well do to it
     * @param steadiness what it costs to be steady
     */
    public record Beside(
            Optional<YearPayback> payback, Optional<SensitiveResult> sensitive, Optional<Steadiness> steadiness) {

        /** Nothing. */
        public static final Beside NOTHING = new Beside(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Tells what was found.
     *
     * @param run the run
     * @param beside what was asked beside it
     * @param asked what it is about
     */
    public static Document of(YearResult run, Beside beside, Subject asked) {
        YearAnswer answer = new YearAnswer(run, asked);
        Draft draft = answer.told(beside.payback())
                .csv("hourly.csv", Csv.hourly(run.hourly().start(), hourly(run.hourly())))
                .csv("daily.csv", csv("day", run.days()))
                .csv("monthly.csv", csv("month", run.months()))
                .pictures(() -> YearPictures.of(run))
                .pictures(answer::sunPaths);
        SteadyWords.tell(draft, beside.steadiness(), asked);
        beside.sensitive()
                .map(SensitiveWords::new)
                .ifPresent(words ->
                        draft.weighty(words.weighty()).table(words.table()).figure("sensitive", words.figures()));
        return draft.done();
    }

    /** The verdict with its "but", the figures beside it and what it stands on, and no more: for who shows a year at each move of a hand. */
    public static Document inShort(YearResult run, Subject asked) {
        Draft draft = Draft.of(asked, "");
        new YearInShort(run).tell(draft);
        return draft.warn(run.warnings()).inWords();
    }

    private Draft told(Optional<YearPayback> payback) {
        Draft draft = Draft.of(asked, "");
        new YearWords(run, findings, asked).tell(draft, payback);
        draft.table(MonthlyTable.of(run));
        run.gas().ifPresent(range -> draft.table(GasWords.table(range, run.whole())));
        payback.ifPresent(more -> more.tables().forEach(draft::table));
        BalanceTables.of(run).forEach(draft::table);
        starts().ifPresent(draft::table);
        draft.tables(InspectorTables.of(run));
        new YearFigures(run, findings).tell(draft, payback);
        return draft.warn(run.warnings()).assume(runIn());
    }

    /** The sun's paths over what stands in the collector's sky, where anything does. */
    private List<Drawing> sunPaths() {
        Design design = run.design();
        return design.solar().stream()
                .map(SolarCircuit::collector)
                .filter(collector -> !design.collectorShading().isNone())
                .map(collector -> SolarChart.of(
                        asked.weather(),
                        design.collectorShading(),
                        ShadingLoss.of(
                                asked.weather(),
                                collector,
                                design.collectorShading(),
                                design.site().ground().reflectance())))
                .toList();
    }

    private String runIn() {
        return String.format(
                Locale.ROOT,
                "Before the first hour the tank was run in for %d days over the %s days of the weather file.",
                run.runInDays(),
                asked.weather().isWholeYear() ? "last" : "first");
    }

    /** Starts of pumps and heater, to see that they do not start too often. */
    private Optional<Table> starts() {
        Map<String, Starts> counted = new LinkedHashMap<>();
        findings.solarPump().ifPresent(starts -> counted.put("solar pump", starts));
        findings.backup().ifPresent(starts -> counted.put("backup heater", starts));
        Columns<Starts> columns = new Columns<Starts>()
                .cell("starts", starts -> Integer.toString(starts.total()))
                .cell("a day, on average", starts -> Words.tenth(starts.perDay()))
                .cell("most in a day", starts -> Integer.toString(starts.most()))
                .cell("on", starts -> Span.of(run).day(LocalDate.parse(starts.mostOn())));
        return counted.isEmpty()
                ? Optional.empty()
                : Optional.of(columns.named("", "How often pump and heater start", counted));
    }

    /** The columns of a circuit that is not there are empty. */
    private static Map<String, double[]> hourly(Hourly hourly) {
        double[] none = {};
        Map<String, double[]> columns = new LinkedHashMap<>();
        hourly.names().forEach(name -> columns.put(name, hourly.column(name).orElse(none)));
        return columns;
    }

    private static Csv csv(String label, List<Period> periods) {
        Columns<Period> columns = new Columns<Period>().value(label, Period::label);
        periods.get(0)
                .books()
                .lines()
                .forEach(line -> columns.value(line.column(), period -> period.has(line) ? period.of(line) : null));
        return columns.csv(periods);
    }
}
