package org.warmvat.question.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.Prices;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Reader;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.question.Variations;
import org.warmvat.question.year.BriefYear;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.Money;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** A tank in a room of constant temperature: what foam saves is known in closed form. */
class PaybackStudyTest {

    /** A fifth of a year, each day like the other, so that it stands for a whole one. */
    private static final Weather FIFTH = StudyTank.from(LocalDateTime.of(2025, 1, 1, 0, 0), 73, 10, 300);

    private static final Weather YEAR = StudyTank.from(LocalDateTime.of(2025, 1, 1, 0, 0), 365, 10, 300);

    private static Design design(double foamPerM3, double collectorPerM2, double years) {
        Design plain = StudyTank.design(StudyTank.collector(1), StudyTank.element(1000));
        Prices.Outlay outlay =
                new Prices.Outlay(foamPerM3, collectorPerM2, Reader.usual(Prices.OutlayParts.class), years);
        Prices prices = new Prices(0.3, 0.09, 0.09, "EUR", new Prices.Carbon(0.25, 0.2), 2.5, outlay);
        return plain.with(prices);
    }

    private static PaybackStudy.Result payback(Design design, int threads) throws StudyRefused {
        return payback(FIFTH, design, threads);
    }

    private static PaybackStudy.Result payback(Weather weather, Design design, int threads) throws StudyRefused {
        Runner runner = new Runner(weather, new ExponentialEngine());
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            return PaybackStudy.run(design, List.of(runner), parallel);
        }
    }

    private static Payback.Step foam(PaybackStudy.Result result, double fromMm) {
        return result.foam().orElseThrow().steps().stream()
                .filter(step -> step.from() == fromMm)
                .findFirst()
                .orElseThrow();
    }

    /** Without sun a step of foam saves the difference of two conductances, held at the set-point for a year. */
    @Test
    void foamSavesWhatItsConductanceSays() throws StudyRefused {
        Design design = design(400, 300, 15).without(SolarCircuit.class);
        PaybackStudy.Result result = payback(YEAR, design, 2);
        Design more = Variations.withFoamThicker(design, PaybackStudy.FOAM_STEP_M);
        double lessWPerK = Conductances.of(design, 3, 10).totalWPerK()
                - Conductances.of(more, 3, 10).totalWPerK();
        double expected = lessWPerK * (36 - StudyTank.ROOM_C) * 8.76 * 0.3;
        Payback.Step step = foam(result, 50);
        assertEquals(60, step.to());
        // the band's mean is not quite the set-point, and the year need not end where it began: 2 %
        assertEquals(expected, step.savesAYear(), 0.02 * expected);
        double foamM3 = Purchase.of(more).foamM3() - Purchase.of(design).foamM3();
        assertEquals(400 * foamM3, step.costs(), 1e-9);
        assertEquals(step.costs() / step.savesAYear(), step.years());
        assertEquals(Optional.empty(), result.collector());
    }

    /** The step told as the first that does not pay is run again, and so is the one before it, each as two years of its own. */
    @Test
    void theLimitIsWhereItIsSaidToBe() throws StudyRefused {
        Design design = design(400, 300, 5);
        Payback foam = payback(design, 1).foam().orElseThrow();
        Payback.Step first = foam.firstBeyond(5).orElseThrow();
        assertTrue(first.from() > 60, "it pays for a while: " + first);
        assertTrue(years(design, first.from()) > 5);
        assertTrue(years(design, first.from() - 10) <= 5);
        for (int i = 1; i < foam.steps().size(); i++) {
            assertEquals(foam.steps().get(i - 1).to(), foam.steps().get(i).from());
        }
    }

    private static double years(Design design, double fromMm) throws StudyRefused {
        Runner runner = new Runner(FIFTH, new ExponentialEngine());
        Design thin = Variations.withFoamThicker(design, (fromMm - 50) / 1000);
        Design thick = Variations.withFoamThicker(design, (fromMm - 40) / 1000);
        double saved = 5
                * (Money.of(thick, BriefYear.run(thick, runner).year()).balance()
                        - Money.of(thin, BriefYear.run(thin, runner).year()).balance());
        return (Purchase.of(thick).outlay(thick) - Purchase.of(thin).outlay(thin)) / saved;
    }

    /** Foam so dear that 50 mm are too many already: the study looks below the design. */
    @Test
    void looksBelowADesignThatHasTooMuch() throws StudyRefused {
        Payback foam = payback(design(8000, 300, 10), 2).foam().orElseThrow();
        Payback.Step first = foam.firstBeyond(10).orElseThrow();
        assertTrue(first.from() < 50, "too much already: " + first);
        assertTrue(foam.steps().get(0).years() <= 10);
        assertEquals(foam.steps().get(0).to(), first.from());
    }

    @Test
    void nothingThatIsDearEnoughPaysAndAllThatIsFreeDoes() throws StudyRefused {
        PaybackStudy.Result dear = payback(design(1e6, 1e6, 10), 2);
        assertEquals(10, dear.foam().orElseThrow().steps().get(0).from());
        assertEquals(0, dear.collector().orElseThrow().steps().get(0).from());
        assertTrue(dear.foam().orElseThrow().steps().stream().allMatch(step -> step.years() > 10));
        PaybackStudy.Result free = payback(design(0, 1e6, 10), 2);
        // further on a step saves so little that a switching more or less can outweigh it
        assertTrue(free.foam()
                .orElseThrow()
                .firstBeyond(10)
                .map(step -> step.from() >= 200)
                .orElse(true));
    }

    @Test
    void doesNotDependOnThreads() throws StudyRefused {
        Design design = design(400, 300, 8);
        assertEquals(payback(design, 1), payback(design, 3));
    }
}
