package org.warmvat.question.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;
import org.warmvat.log.Readings;
import org.warmvat.log.RealTankLog;
import org.warmvat.question.Parallel;
import org.warmvat.sample.TankPlan;

/**
 * Measured: nights of the tank of {@link RealTankLog} against loss coefficients computed from the same files as single exponentials from 19 to 6
 * o'clock with 627.6 kJ/K and the mean of T3 as surroundings (night_cooldowns.csv beside the data): 3.0 to 3.8 W/K from 20 to 26 May
 * and from 22 to 30 June (but 24 and 25 June 5.9 and 6.4), 5.7 to 7.7 W/K from 29 May to 16 June, 29 W/K on 1 June, when water was drawn.
 * One coefficient fitted to the whole log by its authors, 4.29 W/K, is neither. Skipped where {@code -Dreal.logs} names no folder.
 */
class RealNightsTest {

    private static final LocalDate DRAWN_OFF = LocalDate.of(2024, 6, 1);

    /** 150 litres of water in a cylinder of 0.4 m, insulated thinly, in a room as warm as T3; 628 kJ/K. */
    private static Design tank() {
        TankPlan plan = new TankPlan().quiet().indoors(20);
        plan.shape = new Shape.UprightCylinder(0.4);
        plan.depthM = 0.150 / (Math.PI * 0.04);
        plan.headspaceM = 0.02;
        List<Layer> thin = List.of(new Layer(TankPlan.PIR, 0.012, 1));
        plan.wall = thin;
        plan.lid = thin;
        plan.floor = thin;
        plan.contents = new Contents(1000, Optional.of(0.0), 1600, 0.6);
        return plan.build();
    }

    private static FitResult fit(Log log) throws Exception {
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            return FitStudy.run(
                    tank(), log, List.of(), List.of(), FitQuestion.USUAL, new ExponentialEngine(), parallel);
        }
    }

    /** Coefficients of the nights as single exponentials, where T3 was measured. */
    private static SortedMap<LocalDate, Double> computed() throws IOException {
        SortedMap<LocalDate, Double> nights = new TreeMap<>();
        for (String line : Files.readAllLines(RealTankLog.folder().resolve("night_cooldowns.csv"))) {
            String[] cells = line.split(",");
            if (line.startsWith("2024") && !cells[5].equals("nan")) {
                nights.put(LocalDate.parse(cells[0]), Double.parseDouble(cells[6]));
            }
        }
        return nights;
    }

    @Test
    void eachNightGivesTheLossOfItsState() throws Exception {
        SortedMap<LocalDate, Log> logs = RealTankLog.nights();
        List<Double> ratios = new ArrayList<>();
        // one exponential and an envelope that holds heat of its own differ most in the first hours of a night
        for (Map.Entry<LocalDate, Double> night : computed().entrySet()) {
            LocalDate date = night.getKey();
            if (logs.containsKey(date) && logs.get(date).readings(LogColumn.AIR).isPresent()) {
                double uaWPerK = fit(logs.get(date)).derived().uaWPerK().value();
                ratios.add(uaWPerK / night.getValue());
                if (date.equals(DRAWN_OFF)) {
                    assertTrue(uaWPerK > 20, date + ": " + uaWPerK);
                } else {
                    assertEquals(night.getValue(), uaWPerK, 0.10 * night.getValue(), date.toString());
                }
            }
        }
        double median = new Median()
                .evaluate(ratios.stream().mapToDouble(Double::doubleValue).toArray());
        assertEquals(1.02, median, 0.02);
        assertTrue(ratios.size() >= 34, "nights " + ratios.size());
    }

    @Test
    void allNightsTogetherFollowNoOneValueAndTheDrawnOffNightStandsApart() throws Exception {
        FitResult result = fit(together(RealTankLog.nights()));
        assertFalse(result.pieces().isOneValue());
        assertEquals(
                List.of(DRAWN_OFF),
                result.pieces().pieces().stream()
                        .filter(Pieces.Piece::isApart)
                        .map(piece -> piece.from().toLocalDate())
                        .toList());
        // over nights of both states the interval is wide, as it must be, and holds what the authors found: 4.29 W/K
        assertTrue(result.derived().uaWPerK().wider().orElseThrow().holds(4.29));
    }

    /**
     * Published: one coefficient for the whole log, 4.29 W/K for 628 kJ/K, with a gain of 0.9931 and an rms of 3.93 K that leaves the
     * drawn-off days out; here these are in.
     */
    @Test
    void theWholeLogWithItsSunGivesTheOneCoefficientOfItsAuthors() throws Exception {
        FitResult result = fit(RealTankLog.wholeWithSun());
        FittedFigure ua = result.derived().uaWPerK();
        assertTrue(result.doubts().toldApart());
        assertTrue(ua.wider().orElseThrow().holds(4.29), ua.toString());
        assertEquals(4.29, ua.value(), 0.10 * 4.29);
        assertTrue(
                result.factors()
                        .get(Factor.CAPACITY)
                        .estimate()
                        .wider()
                        .orElseThrow()
                        .holds(1),
                result.factors().toString());
        assertTrue(result.residuals().sdK() > 3.93, "residuals " + result.residuals());
    }

    private static Log together(SortedMap<LocalDate, Log> nights) {
        Log first = nights.get(nights.firstKey());
        List<Log> all = List.copyOf(nights.values());
        return new Log(
                first.start(),
                first.utcOffsetH(),
                joined(first, all, Log::slurryC),
                Map.of(LogColumn.AIR, first.readings(LogColumn.AIR).orElseThrow()),
                Map.of(),
                List.of());
    }

    private static Readings joined(Log first, List<Log> nights, Function<Log, Readings> line) {
        double[] times = nights.stream()
                .flatMapToDouble(night -> {
                    double sinceS =
                            Duration.between(first.start(), night.start()).toMillis() / 1000.0;
                    return Arrays.stream(line.apply(night).timesS()).map(t -> t + sinceS);
                })
                .toArray();
        double[] values = nights.stream()
                .flatMapToDouble(night -> DoubleStream.of(line.apply(night).values()))
                .toArray();
        return new Readings(times, values);
    }
}
