package org.warmvat.feeding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Supply;
import org.warmvat.network.meter.Around;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;
import org.warmvat.weather.Weather;

/** Heat and electricity of the feed, day for day (equations 3.1 to 3.3). */
class FeedPartTest {
    /** So large that the slurry keeps its temperature to 1e-6 K: heat is then the flow times the enthalpies. */
    private static final double HELD_J_PER_K = 1e14;

    static List<DailySchedule> schedules() {
        return List.of(
                DailySchedule.continuous(),
                TankPlan.window(8, 3),
                TankPlan.window(22, 5),
                TankPlan.window(7.5, 1.0 / 60),
                DailySchedule.of(List.of(
                        new DailyWindow(3600 * 7, 5400),
                        new DailyWindow(3600 * 8, 3600),
                        new DailyWindow(84_000, 3000))));
    }

    private static OnePart run(Design design, Weather weather, double capacity, Engine engine) {
        OnePart.Maker maker = (surroundings, around, assembly) -> new FeedPart(
                design,
                surroundings,
                new InForce(design, surroundings, assembly),
                Around.uncounted(around),
                Supply.BOUGHT,
                assembly);
        return OnePart.run(design, capacity, weather, 36, maker, engine);
    }

    private static double heatKJ(TankPlan plan, Weather weather) {
        return run(plan.build(), weather, HELD_J_PER_K, new ReferenceEngine()).total(FeedPart.FEED_HEAT) / -1000;
    }

    private static TankPlan scrapsOnly(double feedC) {
        TankPlan plan = new TankPlan();
        plan.feedstocks = List.of(new Feedstock(
                Optional.empty(), "scraps", 10, 0.2, 0.9, MethanePotential.ofNumber(0.4), DigestionRate.ofNumber(0.2)));
        plan.feedTemperature = new FeedTemperature.Fixed(feedC);
        plan.water = Optional.empty();
        return plan;
    }

    /** Auger 4 and shredder 10 Wh/kg on 10 kg of feedstock a day, water left out: the same total whatever the windows. */
    @ParameterizedTest
    @MethodSource("schedules")
    void electricityOfADayIsExact(DailySchedule schedule) {
        TankPlan plan = new TankPlan();
        plan.feedTimes = schedule;
        for (Engine engine : new Engine[] {new ReferenceEngine(), new ExponentialEngine()}) {
            OnePart run = run(plan.build(), InventedWeather.steady(10, 72), 4e6, engine);
            assertEquals(3 * 40 * 3600.0, run.total("auger_electricity"), 1e-5);
            assertEquals(3 * 100 * 3600.0, run.total("shredder_electricity"), 1e-5);
        }
    }

    /** Into slurry held at 36 °C the heat of a day is mass x (h_s - h_f), whatever the windows. */
    @ParameterizedTest
    @MethodSource("schedules")
    void heatOfADayIsExact(DailySchedule schedule) {
        TankPlan plan = scrapsOnly(6);
        plan.feedTimes = schedule;
        // 2 days of 10 kg x 3668.8 J/kgK x 30 K
        assertEquals(2 * 10 * 3.6688 * 30, heatKJ(plan, InventedWeather.steady(10, 48)), 1e-4);
    }

    /** Frozen through at -10 °C: 10 kg x (3.6688 x 36 + 267.2 + 20) kJ. Kept from frost: as at 0 °C. */
    @Test
    void frozenFeedTakesTheHeatOfMelting() {
        TankPlan plan = scrapsOnly(-10);
        assertEquals(10 * (3.6688 * 36 + 287.2), heatKJ(plan, InventedWeather.steady(10, 24)), 1e-4);
        plan.handling = new FeedHandling(4, 10, 0, false, 2);
        assertEquals(10 * 3.6688 * 36, heatKJ(plan, InventedWeather.steady(10, 24)), 1e-4);
    }

    /** The exchanger gives back e_r min(c_f, c_s) (T_s - max(T_f, 0)): nothing towards melting. */
    @Test
    void theExchangerGivesBackNoMoreThanTheEffluentHolds() {
        TankPlan plan = scrapsOnly(6);
        plan.handling = new FeedHandling(4, 10, 0.5, true, 2);
        double contents = plan.build().contentsSpecificHeatJPerKgK() / 1000;
        assertTrue(contents > 3.6688);
        assertEquals(10 * 3.6688 * 15, heatKJ(plan, InventedWeather.steady(10, 24)), 1e-4);
        TankPlan frozen = scrapsOnly(-10);
        frozen.handling = plan.handling;
        assertEquals(
                10 * (3.6688 * 36 + 287.2 - 0.5 * 3.6688 * 36), heatKJ(frozen, InventedWeather.steady(10, 24)), 1e-4);
        TankPlan watered = scrapsOnly(36);
        watered.handling = plan.handling;
        watered.water = Optional.of(new DilutionWater(5, new FeedTemperature.Fixed(6)));
        double thinner = watered.build().contentsSpecificHeatJPerKgK() / 1000;
        assertTrue(thinner < 4.186);
        assertEquals(5 * (4.186 - 0.5 * thinner) * 30, heatKJ(watered, InventedWeather.steady(10, 24)), 1e-4);
    }

    /** Feed as warm as the air is as warm as the mean of the 24 h before, renewed hourly; on the first day, of that day. */
    @Test
    void feedFromTheAirLagsByADay() {
        Weather weather = InventedWeather.varying(72, hour -> hour < 24 ? 10 : 20);
        TankPlan plan = scrapsOnly(0);
        plan.feedTemperature = new FeedTemperature.Air();
        plan.feedTimes = DailySchedule.continuous();
        double[] heat =
                run(plan.build(), weather, HELD_J_PER_K, new ReferenceEngine()).byHour(FeedPart.FEED_HEAT);
        double perKelvin = 10.0 / 24 * 3668.8;
        // hour 30 begins with 24 h before it: 18 h at 10, half an hour's slope from 10 to 20, 5 h at 20 and its stamp
        double mean = (18 * 10 + 15 + 5 * 20) / 24.0;
        assertEquals(-perKelvin * 26, heat[5], perKelvin * 1e-6);
        assertEquals(-perKelvin * 26, heat[24], perKelvin * 1e-6);
        assertEquals(-perKelvin * (36 - mean), heat[30], perKelvin * 1e-6);
        assertEquals(-perKelvin * 16, heat[60], perKelvin * 1e-6);
    }

    @Test
    void feedFromGroundAndRoomAreAsWarmAsThose() {
        TankPlan plan = scrapsOnly(0);
        plan.feedTemperature = new FeedTemperature.Ground();
        assertEquals(10 * 3.6688 * (36 - 8), heatKJ(plan, InventedWeather.steady(-5, 24)), 1e-4);
        plan.feedTemperature = new FeedTemperature.Room();
        plan.indoors(15);
        assertEquals(10 * 3.6688 * (36 - 15), heatKJ(plan, InventedWeather.steady(-5, 24)), 1e-4);
    }

    /** An open window feeds a store as a conductance m_f c_f against the feed's temperature: {@code exp(-m c t/C)}. */
    @Test
    void feedAloneCoolsTheSlurryExponentially() {
        TankPlan plan = scrapsOnly(6);
        plan.feedTimes = TankPlan.window(0, 2);
        OnePart run = run(plan.build(), InventedWeather.steady(10, 24), 1e5, new ReferenceEngine());
        assertEquals(6 + 30 * Math.exp(-10 * 3668.8 / 1e5), run.slurryC(), 1e-6);
        assertEquals(0, run.byHour(FeedPart.FEED_HEAT)[2]);
    }

    @Test
    void theFlowIsTheDaysMassOverTheOpenTime() {
        Design design = scrapsOnly(6).build();
        FeedFlow flow = new FeedFlow(design.feed(), null);
        assertEquals(10 / 10_800.0, flow.whileOpenKgPerS(10), 1e-18);
    }
}
