package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.tank.GroundTemperature;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;

/**
 * Both engines on designs with every block of seasons, surroundings, gas and hygienisation, against explicit steps written apart from
 * them. Tolerances: the steps of ten seconds lose some hundredths of a kelvin on the mean,
 * and a pump that starts a step later makes a tenth for some hours; sums within a per cent.
 */
class LifeBlocksTest {

    private static final int DAYS = 5;
    private static final double STEP_S = 10;
    private static final double SLURRY_K = 0.1;
    private static final double MEAN_SLURRY_K = 0.01;
    private static final double SHARE = 0.01;
    /** What the steps sum under one name and the engines under another, with what is small. */
    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("backup_power", "backup_power"),
            Map.entry("solar", "solar_heat"),
            Map.entry("feed", "feed_heat"),
            Map.entry("methane", "methane"),
            Map.entry("shelter_sun", "shelter_sun"),
            Map.entry("surplus", "gas_surplus"),
            Map.entry("met_cooker", "gas_use_met_cooker"),
            Map.entry("unmet_cooker", "gas_use_unmet_cooker"),
            Map.entry("met_lamp", "gas_use_met_lamp"),
            Map.entry("condensate", "condensate"),
            Map.entry("hygiene_heat", "hygienisation_heat"),
            Map.entry("hygiene_recovered", "hygienisation_recovered"),
            Map.entry("hygiene_loss", "hygienisation_loss"),
            Map.entry("hygiene_bought", "hygienisation_bought"));

    static Stream<String> names() {
        return LifeDesigns.all().keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void enginesFollowTheExplicitSteps(String name) {
        Design design = LifeDesigns.all().get(name).build();
        Weather weather = InventedWeather.days(90, DAYS + 1);
        SecondBySecond steps = new SecondBySecond(design, weather, GroundTemperature.of(design, weather), STEP_S);
        steps.over(24 * DAYS);
        for (Engine engine : List.of(new ReferenceEngine(), new ExponentialEngine())) {
            Account account =
                    new Runner(weather, engine).start(design, 0).account(new Hours(0, 24 * DAYS), Account.Keep.HOURS);
            compare(name + ", " + engine.name(), steps, account);
        }
    }

    private static void compare(String name, SecondBySecond steps, Account account) {
        double[] slurryC = account.hourly().orZero("slurry_c");
        double apart = 0;
        for (int hour = 0; hour < slurryC.length; hour++) {
            assertEquals(steps.slurryC.get(hour), slurryC[hour], SLURRY_K, name + ", hour " + hour);
            apart += Math.abs(steps.slurryC.get(hour) - slurryC[hour]) / slurryC.length;
        }
        assertTrue(apart < MEAN_SLURRY_K, name + ": mean difference of the slurry " + apart);
        // throws when a balance does not close
        Period whole = account.whole();
        SAME.forEach((ours, theirs) -> {
            double expected = steps.sums.getOrDefault(ours, 0.0);
            double allowed = Math.max(SHARE * Math.abs(expected), small(ours));
            assertEquals(expected, whole.counted(theirs), allowed, name + ": " + ours);
        });
        account.hourly().column("shelter_c").ifPresent(shelterC -> {
            double sum = 0;
            for (int hour = 0; hour < shelterC.length; hour++) {
                sum += Math.abs(steps.shelterC.get(hour) - shelterC[hour]);
            }
            assertTrue(sum / shelterC.length < 0.1, name + ": shelter " + sum / shelterC.length);
        });
        account.hourly()
                .column("gas_holder_nm3")
                .ifPresent(nm3 -> assertEquals(
                        steps.holderNm3.get(nm3.length - 1), nm3[nm3.length - 1], 0.02, name + ": holder"));
        for (String watch : List.of("below_floor", "warming_up", "short_of_own_gas")) {
            String theirs = watch.equals("below_floor") ? "below_s" : watch + "_s";
            double expectedH = steps.sums.getOrDefault(theirs, 0.0) / 3600;
            assertEquals(expectedH, whole.watchHours(watch), 0.3, name + ": " + watch);
        }
    }

    /** A tenth of a kilowatt-hour, some litres of gas, a glass of water. */
    private static double small(String sum) {
        return switch (sum) {
            case "methane", "surplus" -> 0.01;
            case "condensate" -> 0.005;
            default -> 3.6e5;
        };
    }
}
