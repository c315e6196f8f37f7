package org.warmvat.question.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.question.Variations;
import org.warmvat.question.compare.CompareResult.Judgement;
import org.warmvat.question.year.BriefYear;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Designs side by side: each column is the year of its own, and who is better follows from it. */
class CompareStudyTest {

    private static final LocalDateTime START = LocalDateTime.of(2025, 1, 1, 0, 0);
    private static final Weather COLD = StudyTank.from(START, 20, 0, 300);
    private static final Weather MILD = StudyTank.from(START, 20, 15, 300);
    private static final Engine ENGINE = new ExponentialEngine();
    private static final Design PLAIN = StudyTank.design(StudyTank.collector(1), StudyTank.element(1000));
    private static final Design WARMER = Variations.withFoamThicker(PLAIN, 0.05);

    private static CompareResult compare(List<Design> designs, List<Weather> files, int threads) throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            return CompareStudy.run(designs, files, ENGINE, parallel);
        }
    }

    private static Judgement judgement(CompareResult result, Merit merit) {
        return result.judgements().stream()
                .filter(one -> one.merit() == merit)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyColumnIsTheYearOfItsDesignInItsFile() throws StudyRefused {
        CompareResult result = compare(List.of(PLAIN, WARMER), List.of(COLD, MILD), 2);
        List<Design> designs = List.of(PLAIN, PLAIN, WARMER, WARMER);
        List<Weather> files = List.of(COLD, MILD, COLD, MILD);
        for (int i = 0; i < 4; i++) {
            Period own = BriefYear.run(designs.get(i), new Runner(files.get(i), ENGINE))
                    .year();
            assertEquals(own.figures(), result.columns().get(i).year().figures());
        }
    }

    @Test
    void whatDiffersIsTheKeyThatWasChanged() throws StudyRefused {
        CompareResult result = compare(List.of(PLAIN, WARMER), List.of(COLD), 1);
        assertTrue(
                result.differences().stream()
                        .allMatch(difference ->
                                difference.key().matches("envelope\\.(wall|lid|floor)\\[.*]\\.thickness_mm")),
                result.differences().toString());
        assertEquals(3, result.differences().size());
        assertEquals(List.of(), compare(List.of(PLAIN), List.of(COLD, MILD), 1).differences());
    }

    @Test
    void aKeyThatOneDesignLacksIsTold() throws StudyRefused {
        CompareResult result = compare(List.of(PLAIN, PLAIN.without(SolarCircuit.class)), List.of(COLD), 1);
        CompareResult.Difference area = result.differences().stream()
                .filter(difference -> difference.key().equals("solar.area_m2"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(Optional.of("1"), Optional.empty()), area.values());
    }

    @Test
    void theBetterInsulatedBuysLessInEachFileAndTheMilderYearLessOfOneDesign() throws StudyRefused {
        List<Judgement> bought = compare(List.of(PLAIN, WARMER), List.of(COLD, MILD), 2).judgements().stream()
                .filter(one -> one.merit() == Merit.BOUGHT)
                .toList();
        assertEquals(
                List.of(
                        new Judgement(Merit.BOUGHT, List.of(0, 2), List.of(2)),
                        new Judgement(Merit.BOUGHT, List.of(1, 3), List.of(3))),
                bought);
        assertEquals(
                new Judgement(Merit.BOUGHT, List.of(0, 1), List.of(1)),
                judgement(compare(List.of(PLAIN), List.of(COLD, MILD), 1), Merit.BOUGHT));
    }

    @Test
    void theSameTwiceIsAlikeInAll() throws StudyRefused {
        CompareResult result = compare(List.of(PLAIN, PLAIN), List.of(COLD), 2);
        assertTrue(result.judgements().size() > 3);
        assertTrue(result.judgements().stream().allMatch(Judgement::alike));
    }

    /** Without gas nothing is said of net energy, and of useful net energy only where uses are given. */
    @Test
    void netEnergyIsJudgedOnlyWhereAllMakeGas() throws StudyRefused {
        CompareResult result = compare(List.of(PLAIN, WARMER), List.of(COLD), 1);
        boolean gas = PLAIN.gas().isPresent();
        assertEquals(gas, result.judgements().stream().anyMatch(one -> one.merit() == Merit.NET_ENERGY));
        assertTrue(result.judgements().stream().noneMatch(one -> one.merit() == Merit.USEFUL_NET_ENERGY));
        Design making = PLAIN.with(Design.usual().gas().orElseThrow());
        assertTrue(compare(List.of(making, making), List.of(COLD), 1).judgements().stream()
                .anyMatch(one -> one.merit() == Merit.NET_ENERGY));
        assertTrue(
                compare(List.of(making, making.without(org.warmvat.design.gas.Gas.class)), List.of(COLD), 1)
                        .judgements()
                        .stream()
                        .noneMatch(one -> one.merit() == Merit.NET_ENERGY));
    }

    @Test
    void oneColumnIsNothingToCompare() {
        assertThrows(IllegalArgumentException.class, () -> compare(List.of(PLAIN), List.of(COLD), 1));
    }
}
