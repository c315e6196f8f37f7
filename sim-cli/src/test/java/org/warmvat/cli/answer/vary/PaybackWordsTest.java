package org.warmvat.cli.answer.vary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.answer.payback.PaybackWords;
import org.warmvat.design.Prices;
import org.warmvat.design.keys.Reader;
import org.warmvat.question.payback.Payback;
import org.warmvat.question.vary.Sweep;

class PaybackWordsTest {

    private static final PaybackWords.Amounts FOAM =
            new PaybackWords.Amounts("foam in the wall, mm", "", " mm of foam in the wall", " mm");
    private static final Payback STEPS = new Payback(List.of(
            new Payback.Step(60, 70, 20, 10), new Payback.Step(70, 80, 21, 3), new Payback.Step(80, 90, 22, -1)));

    private static Prices within(double years) {
        return new Prices(
                0.3,
                0.09,
                0.09,
                "EUR",
                new Prices.Carbon(0.25, 0.2),
                2.5,
                new Prices.Outlay(250, 300, Reader.usual(Prices.OutlayParts.class), years));
    }

    private static String limit(double years) {
        return new PaybackWords(STEPS, FOAM, within(years), "EUR").limit();
    }

    @Test
    void tellsFromWhereOnTheNextStepNoLongerPays() {
        assertEquals(
                "Beyond 70 mm of foam in the wall the next step, to 80 mm, no longer pays for itself within 5 years: it"
                        + " costs 21 EUR more and saves 3 EUR a year, so that it takes 7 years.",
                limit(5));
        assertEquals(
                "Beyond 80 mm of foam in the wall the next step, to 90 mm, no longer pays for itself within 100 years: it"
                        + " costs 22 EUR more and saves nothing.",
                limit(100));
        assertEquals(
                "Already the step from 60 mm of foam in the wall to 70 mm does not pay for itself within 1 years: it costs"
                        + " 20 EUR more and saves 10 EUR a year, so that it takes 2 years.",
                limit(1));
        Payback two = new Payback(STEPS.steps().subList(0, 2));
        assertEquals(
                "Each step from 60 mm of foam in the wall to 80 mm pays for itself within 7 years at these prices.",
                new PaybackWords(two, FOAM, within(7), "EUR").limit());
    }

    /** Example prices are in nobody's money. */
    @Test
    void examplesAreNotCalledMoney() {
        PaybackWords words = new PaybackWords(STEPS, FOAM, within(5), "at example prices");
        assertTrue(
                words.limit()
                        .endsWith(
                                "it costs 21 more at example prices and saves 3 a year at example prices, so that it takes"
                                        + " 7 years."),
                words.limit());
        assertEquals("costs more, at example prices", words.table().header().get(1));
        assertTrue(
                words.counted().startsWith("Only what is bought once is counted, at example prices: "),
                words.counted());
    }

    @Test
    void aPaybackThatNeverComesIsSaidInTheTableAndNullInTheFigures() {
        PaybackWords words = new PaybackWords(STEPS, FOAM, within(15), "EUR");
        assertEquals(
                List.of("80 to 90", "22", "-1", "never"), words.table().rows().get(2));
        assertNull(words.figures().get(2).get("payback_years"));
        assertEquals(7.0, words.figures().get(1).get("payback_years"));
    }

    /** Runs along one axis; each costs its value and leaves what is given, over so many hours. */
    private static PaybackSentences along(String key, double hours, double[] values, double[] balances) {
        List<double[]> keys = new ArrayList<>();
        List<double[]> outputs = new ArrayList<>();
        for (int run = 0; run < values.length; run++) {
            keys.add(new double[] {values[run]});
            outputs.add(new double[] {hours, values[run], balances[run]});
        }
        Sweep sweep = new Sweep(
                List.of(key),
                new int[] {values.length},
                keys,
                List.of("hours", "outlay", "money_balance"),
                outputs,
                List.of());
        return new PaybackSentences(sweep, within(15), "EUR");
    }

    @Test
    void aSweepDownwardsTellsTheSameAsOneUpwards() {
        double[] up = {60, 70, 80};
        double[] down = {80, 70, 60};
        List<String> sentences = along("envelope.insulation_mm", 8760, up, new double[] {0, 5, 5.5})
                .sentences();
        assertEquals(
                sentences,
                along("envelope.insulation_mm", 8760, down, new double[] {5.5, 5, 0})
                        .sentences());
        assertTrue(
                sentences.get(0).startsWith("Beyond envelope.insulation_mm = 70 the next step, to 80, no longer pays"),
                sentences.get(0));
    }

    @Test
    void twoYearsCountAsTwo() {
        PaybackSentences years = along("solar.area_m2", 17_520, new double[] {1, 2}, new double[] {0, 1});
        assertEquals(0.5, years.steps().orElseThrow().figures().get(0).get("saves_a_year"));
    }

    @Test
    void onlyWhatHasAPriceOfItsOwnPaysBack() {
        double[] values = {1, 2};
        double[] balances = {0, 1};
        assertTrue(along("solar.area_m2", 8760, values, balances).apply());
        assertTrue(along("envelope.wall.pir_foam.thickness_mm", 8760, values, balances)
                .apply());
        assertTrue(along("solar.coil.area_m2", 8760, values, balances).apply());
        assertTrue(along("backup.rated_w", 8760, values, balances).apply());
        assertFalse(along("tank.inner_diameter_m", 8760, values, balances).apply());
        assertFalse(
                along("solar.area_m2", 8760, new double[] {1, 1}, balances).apply(), "no step between equal values");
        assertFalse(along("solar.area_m2", 8760, new double[] {1}, balances).apply(), "no step at one point");
    }

    @Test
    void weatherShorterThanAYearTellsNone() {
        PaybackSentences brief = along("solar.area_m2", 504, new double[] {1, 2}, new double[] {0, 1});
        assertEquals(
                List.of("The weather file covers 504 hours, less than a year, so that no payback is told."),
                brief.sentences());
        assertEquals(Optional.empty(), brief.steps());
    }
}
