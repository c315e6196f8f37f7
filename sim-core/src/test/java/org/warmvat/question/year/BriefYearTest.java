package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.heating.SolarPart;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** A year of which only sums are kept has the same sums as one that is kept whole. */
class BriefYearTest {

    /** Twenty-five days across the end of January. */
    private static final Weather WEATHER = InventedWeather.days(20, 25);

    @Test
    void sumsAreThoseOfTheWholeYear() throws StudyRefused {
        Design design = new TankPlan().build();
        YearResult whole = YearStudy.run(design, new Runner(WEATHER, new ExponentialEngine()), HourSink.IGNORE);
        BriefYear brief = BriefYear.run(design, new Runner(WEATHER, new ExponentialEngine()));
        assertSame(whole.whole(), brief.year());
        assertEquals(2, brief.months().size());
        for (int month = 0; month < 2; month++) {
            assertSame(whole.months().get(month), brief.months().get(month));
        }
        assertEquals(
                Math.min(
                        brief.months().get(0).of(KeyFigures.NET),
                        brief.months().get(1).of(KeyFigures.NET)),
                brief.worstMonthNetKWh());
    }

    private static void assertSame(Period whole, Period brief) {
        assertEquals(whole.label(), brief.label());
        assertEquals(whole.figures(), brief.figures());
    }

    /** Held at one temperature, each 20 mm of foam saves loss; switching moves none of them by as much as they differ. */
    @Test
    void moreFoamNeverLosesMore() throws StudyRefused {
        Runner runner = new Runner(WEATHER, new ExponentialEngine());
        double before = Double.POSITIVE_INFINITY;
        for (double foamM : List.of(0.06, 0.08, 0.10, 0.12)) {
            TankPlan plan = new TankPlan();
            plan.wall = TankPlan.insulated(foamM);
            plan.lid = TankPlan.insulated(foamM);
            plan.floor = TankPlan.insulated(foamM);
            double lossKWh = Lines.lossKWh(BriefYear.run(plan.build(), runner).year());
            assertTrue(lossKWh < 0.99 * before, foamM + " m: " + lossKWh + " after " + before);
            before = lossKWh;
        }
    }

    @Test
    void noCollectorAreaGivesNoSolarHeat() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.collectorM2 = 0;
        Period year = BriefYear.run(plan.build(), new Runner(WEATHER, new ExponentialEngine()))
                .year();
        assertEquals(0, year.of(SolarPart.HEAT));
        assertEquals(0, year.of(SolarPart.ABSORBED_SUN));
    }
}
