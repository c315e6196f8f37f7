package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Page;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.RankedBars;
import org.warmvat.question.year.YearResult;

class ReportPageTest {

    private static final Picture PICTURE = new Picture(
            RankedBars.of("tank_temperature", "Tank & temperature")
                    .caption("How to <read> it.")
                    .bar("<wall>", Look.SLURRY, 1, "1 W"),
            "<svg/>".getBytes(StandardCharsets.UTF_8),
            "<svg >".getBytes(StandardCharsets.UTF_8),
            new byte[] {1, 2});

    @Test
    void aTitleCannotInjectMarkup() {
        String html = html(titled("<script>alert('1')</script> & \"more\""), List.of(PICTURE));
        assertFalse(html.contains("<script"), "markup of the title");
        assertTrue(
                html.contains("<h1>&lt;script&gt;alert('1')&lt;/script&gt; &amp; \"more\"</h1>"),
                html.substring(0, 300));
        assertTrue(html.contains("How to &lt;read&gt; it."));
        assertTrue(html.contains("alt=\"Tank &amp; temperature. &lt;wall>: 1 W.\""));
    }

    @Test
    void thePageNeedsNothingElse() {
        String html = html(SyntheticRun.usual(), List.of(PICTURE));
        List<String> addresses = new ArrayList<>();
        Matcher matcher = Pattern.compile("(?:src|href|url)\\s*[=(]\\s*[\"']?([^\"' >)]*)")
                .matcher(html);
        while (matcher.find()) {
            addresses.add(matcher.group(1));
        }
        assertEquals(
                List.of("#warnings", "data:image/svg+xml;base64,PHN2Zy8+", "data:image/svg+xml;base64,PHN2ZyA+"),
                addresses);
        assertFalse(html.contains("http"), "an address on the network");
    }

    @Test
    void partsStandInTheirOrder() {
        String html = html(SyntheticRun.usual(), List.of(PICTURE));
        int at = -1;
        for (String part : List.of(
                "The tank was ",
                "<dt>Net energy</dt>",
                "The worst week",
                "Warnings to read: ",
                ">Pictures<",
                ">Warnings<",
                ">Cautions<",
                "Local codes",
                "Biogas burns",
                "scald",
                "class=\"annex\"",
                "Month by month",
                "Slurry with envelope, kWh",
                "Solar circuit, kWh",
                "Backup circuit, kWh",
                "How often pump and heater start",
                ">Assumed<",
                "key not given: 1",
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")) {
            int next = html.indexOf(part, at + 1);
            assertTrue(next > at, part + " is missing or out of order");
            at = next;
        }
    }

    @Test
    void withoutPicturesThePageSaysSo() {
        String html = html(SyntheticRun.usual(), List.of());
        assertTrue(html.contains("The pictures could not be drawn."));
        assertFalse(html.contains("<img"));
    }

    @Test
    void tablesOfAbsentCircuitsAreLeftOut() {
        YearResult bare = SyntheticRun.of(
                new SyntheticRun.Case("Bare", SyntheticRun.at(2025, 1), 240, 53, false, Optional.empty()));
        String html = html(bare, List.of());
        assertFalse(html.contains("Solar circuit, kWh"));
        assertFalse(html.contains("Backup circuit, kWh"));
        assertFalse(html.contains("How often pump and heater start"));
    }

    @Test
    void theMonthlyTableHasARowForEachMonthAndOneForAll() {
        Table table = MonthlyTable.of(SyntheticRun.usual());
        assertEquals(13, table.rows().size());
        assertEquals("Jan 2025", table.rows().get(0).get(0));
        assertEquals("all", table.rows().get(12).get(0));
        table.rows().forEach(row -> assertEquals(table.header().size(), row.size()));
    }

    @Test
    void balancesPrintedWithSignsAddUpToTheirResidual() {
        for (Table balance : BalanceTables.of(SyntheticRun.usual())) {
            for (List<String> row : balance.rows()) {
                double sum = 0;
                for (String cell : row.subList(1, row.size() - 1)) {
                    sum += Double.parseDouble(cell);
                }
                // fourteen terms, of which the largest are printed without decimals
                assertEquals(
                        Double.parseDouble(row.get(row.size() - 1)),
                        sum,
                        0.02 * Math.max(1, sumOfSizes(row)),
                        balance.caption());
            }
        }
    }

    private static double sumOfSizes(List<String> row) {
        return row.subList(1, row.size() - 1).stream()
                .mapToDouble(cell -> Math.abs(Double.parseDouble(cell)))
                .sum();
    }

    private static YearResult titled(String title) {
        return SyntheticRun.of(new SyntheticRun.Case(title, SyntheticRun.at(2025, 1), 240, 53, true, Optional.empty()));
    }

    private static String html(YearResult run, List<Picture> pictures) {
        Document document = Summary.document(run);
        Document.Body body = document.body();
        Document drawn = new Document(
                document.heading(),
                document.verdict(),
                new Document.Body(
                        body.keyFigures(),
                        body.paragraphs(),
                        body.tables(),
                        pictures,
                        pictures.isEmpty() ? Optional.of("The pictures could not be drawn.") : Optional.empty()),
                document.data(),
                document.grounds());
        return new String(Page.bytes(drawn), StandardCharsets.UTF_8);
    }
}
