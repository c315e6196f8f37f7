package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Ends;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.EngineFailure;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * Tanks with some numbers at an end of their range: an answer with closed balances, or a refusal in words, and nothing else. {@code
 * -Dextreme.tanks=N} draws N of them.
 */
class ExtremeTanksTest {

    private static final int USUAL = 40;
    private static final int MOST_EXTREMES = 5;

    @Test
    void everyExtremeTankIsAnsweredOrRefusedInWords() {
        int count = Integer.getInteger("extreme.tanks", USUAL);
        List<String> faults = new ArrayList<>();
        long answered =
                IntStream.range(0, count).filter(seed -> answered(seed, faults)).count();
        assertTrue(faults.isEmpty(), String.join("\n", faults));
        assertTrue(answered > count / 4, answered + " of " + count + " answered");
    }

    @Test
    void aJugOfThreeLitresAndATankOfSixtyCubicMetresAreAnswered() throws Exception {
        Weather weather = InventedWeather.days(40, 20);
        for (double[] diameterAndDepthM : new double[][] {{0.2, 0.1}, {5.6, 2.44}}) {
            TankPlan plan = new TankPlan();
            plan.shape = new Shape.UprightCylinder(diameterAndDepthM[0]);
            plan.depthM = diameterAndDepthM[1];
            YearResult run = YearStudy.run(plan.build(), new Runner(weather, new ExponentialEngine()), HourSink.IGNORE);
            assertTrue(Double.isFinite(run.whole().of(KeyFigures.MEAN_C)));
        }
    }

    private static boolean answered(int seed, List<String> faults) {
        Random random = new Random(7_368_787L * seed + 11);
        Optional<Map<String, Double>> drawn = Optional.empty();
        try {
            List<TankPlan> plans = List.copyOf(LifeDesigns.all().values());
            Design usual = plans.get(random.nextInt(plans.size())).build();
            Weather weather = InventedWeather.days(random.nextInt(350), 8);
            Map<String, Double> numbers = extremes(usual, random);
            drawn = Optional.of(numbers);
            YearResult run =
                    YearStudy.run(usual.with(numbers), new Runner(weather, new ExponentialEngine()), HourSink.IGNORE);
            for (double celsius : run.hourly().orZero("slurry_c")) {
                if (!Double.isFinite(celsius)) {
                    faults.add(seed + " " + drawn + ": " + celsius);
                }
            }
            return true;
        } catch (Refused | StudyRefused | EngineFailure inWords) {
            return false;
        } catch (RuntimeException fault) {
            faults.add(seed + " " + drawn + ": " + fault);
            return false;
        }
    }

    private static Map<String, Double> extremes(Design design, Random random) {
        List<Map.Entry<String, Ends>> all = Ends.of(design).entrySet().stream()
                .filter(entry -> Double.isFinite(entry.getValue().least())
                        && Double.isFinite(entry.getValue().most()))
                .toList();
        Map<String, Double> numbers = new LinkedHashMap<>();
        int count = 1 + random.nextInt(MOST_EXTREMES);
        for (int i = 0; i < count; i++) {
            Map.Entry<String, Ends> one = all.get(random.nextInt(all.size()));
            numbers.put(
                    one.getKey(),
                    random.nextBoolean()
                            ? one.getValue().least()
                            : one.getValue().most());
        }
        return numbers;
    }
}
