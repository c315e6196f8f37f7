package org.warmvat.question.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** When to start a cold tank: a warm-up by hand, seasons in their order, and what is refused (equation 12.6). */
class SpringStudyTest {

    private static final List<MonthDay> DATES = List.of(MonthDay.of(1, 1), MonthDay.of(5, 15), MonthDay.of(11, 1));

    private static SpringStudy.Result run(TankPlan plan, Weather weather, List<MonthDay> dates) throws StudyRefused {
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            return SpringStudy.run(plan.build(), weather, new ExponentialEngine(), dates, parallel);
        }
    }

    /** Without any loss or feed 500 W warm C_s from 9 to 36 °C in C_s x 27/500 seconds, and buy just that. */
    @Test
    void aWarmUpByHand() throws Exception {
        TankPlan plan = new TankPlan().quiet();
        plan.indoors(9);
        plan.wall = TankPlan.insulated(1.9);
        plan.lid = TankPlan.insulated(1.9);
        plan.floor = TankPlan.insulated(1.9);
        plan.backup = Optional.of(TankPlan.immersed(2000, org.warmvat.design.season.DailySchedule.continuous()));
        plan.ground = new Ground(Optional.of(new GroundWave(9, 0, 30)), 0.05, 0.5, 0.2);
        SpringStudy.Start start =
                run(plan, year(), List.of(MonthDay.of(4, 1))).starts().get(0);
        double capacity = plan.build().contentsHeatCapacityJPerK();
        assertEquals(capacity * 27 / 2000 / 86_400, start.daysBackup().orElseThrow(), 0.03);
        assertEquals(capacity * 27 / 3.6e6, start.boughtKWh().orElseThrow(), 0.8);
        assertEquals(start.heatKWh().orElseThrow(), start.boughtKWh().orElseThrow(), 1e-6);
        assertTrue(start.daysSun().isEmpty());
        assertTrue(start.netKWh() < 0);
    }

    private static Weather year() {
        return InventedWeather.steadyFrom(java.time.LocalDateTime.of(2025, 1, 1, 0, 0), 9, 8760);
    }

    /** Spring needs less bought heat than winter, and the sun alone does it in May and not in November. */
    @Test
    void mayIsBetterThanJanuary() throws Exception {
        SpringStudy.Result result = run(new TankPlan(), WeatherFiles.demonstration(), DATES);
        SpringStudy.Start january = result.starts().get(0);
        SpringStudy.Start may = result.starts().get(1);
        SpringStudy.Start november = result.starts().get(2);
        assertTrue(may.boughtKWh().orElseThrow() < 0.8 * january.boughtKWh().orElseThrow());
        assertTrue(may.daysSun().orElse(999) < november.daysSun().orElse(999));
        assertTrue(may.daysBackup().orElseThrow() < january.daysBackup().orElseThrow());
        assertEquals(24, SpringStudy.usualDates().size());
    }

    @Test
    void aFileShorterThanAYearIsRefused() {
        assertThrows(StudyRefused.class, () -> run(new TankPlan(), InventedWeather.days(0, 100), DATES));
    }
}
