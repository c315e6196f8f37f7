package org.warmvat.cli.answer;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import org.warmvat.cli.plot.Picture;
import org.warmvat.network.Warning;
import org.warmvat.question.year.YearResult;

/**
 * All that stands in {@code report.html}, in words; the page's template only sets it.
 *
 * @param heading title of the design and what the run was
 * @param answer the answer
 * @param pictures pictures, none where they could not be drawn
 * @param tables monthly figures, starts, and the three balances
 * @param notes warnings, assumptions, cautions
 * @param origin program and inputs
 */
public record ReportPage(
        Heading heading, List<Paragraph> answer, List<Picture> pictures, Tables tables, Notes notes, Origin origin) {

    /**
     * Head of the page.
     *
     * @param title title of the design
     * @param subtitle tank, site, span, engine
     */
    public record Heading(String title, String subtitle) {}

    /**
     * Tables of the page.
     *
     * @param monthly figures by month
     * @param payback steps of foam and collector, none where they were not asked for
     * @param starts starts of pumps and heater
     * @param balances the three balances by month and in all
     * @param ledger how well they close
     */
    public record Tables(Table monthly, List<Table> payback, Table starts, List<Table> balances, String ledger) {}

    /**
     * Lists of the page.
     *
     * @param warnings what the user must know
     * @param assumed every default and assumption used
     * @param cautions the usual cautions
     */
    public record Notes(List<String> warnings, List<String> assumed, List<String> cautions) {}

    static ReportPage of(YearResult run, Findings findings, Origin origin, List<Picture> pictures) {
        return new ReportPage(
                new Heading(run.design().title(), subtitle(run)),
                Answer.of(run, findings),
                pictures,
                new Tables(
                        MonthlyTable.of(run),
                        findings.payback().map(YearPayback::tables).orElse(List.of()),
                        StartsTable.of(findings, Span.of(run)),
                        BalanceTables.of(run),
                        BalanceTables.closing(run)),
                new Notes(
                        run.warnings().stream().map(Warning::sentence).toList(),
                        run.assumed(),
                        Cautions.of(java.util.Optional.empty())),
                origin);
    }

    private static String subtitle(YearResult run) {
        return Words.fixed(run.design().tank().liquidVolumeM3() * 1000, 0) + " litres of slurry, set-point "
                + Words.celsius(run.design().control().setpointC()) + ", floor "
                + Words.celsius(run.design().control().minimumC()) + "; weather of "
                + run.site().name() + ", "
                + Words.fixed(run.whole().hours(), 0) + " hours from "
                + Words.day(run.hourly().start().toLocalDate(), true) + "; " + run.engine() + " engine, "
                + run.runInDays() + " days of run-in";
    }

    /** Sets the page. */
    String html() {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render("report.jte", Map.of("page", this), html);
        return html.toString();
    }
}
