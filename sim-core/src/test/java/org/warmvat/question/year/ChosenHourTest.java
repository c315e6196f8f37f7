package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.account.ChosenHour;
import org.warmvat.account.Hourly;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.weather.file.WeatherFiles;

/** An hour that is chosen is told line by line as the hours of the run are told all together. */
class ChosenHourTest {

    private static YearResult run(ChosenHour chosen) throws Exception {
        return YearStudy.run(Design.usual(), new Runner(WeatherFiles.demonstration(), new ExponentialEngine()), chosen);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3500, 8759})
    void itsFlowsAreThoseOfTheHour(int hour) throws Exception {
        ChosenHour chosen = new ChosenHour(hour);
        YearResult run = run(chosen);
        Period flows = chosen.flows(run.whole().books()).orElseThrow();
        Hourly hourly = run.hourly();
        assertEquals(1, flows.hours());
        assertEquals(hourly.orZero("loss_w")[hour], 1000 * (Lines.lossKWh(flows) + flows.of(GasPart.GAS_LOSS)), 1e-9);
        assertEquals(hourly.orZero("feed_w")[hour], 1000 * flows.of(FeedPart.FEED), 1e-9);
    }

    @Test
    void anHourThatNeverRanHasNone() throws Exception {
        ChosenHour never = new ChosenHour(-1);
        assertTrue(never.flows(run(never).whole().books()).isEmpty());
    }
}
