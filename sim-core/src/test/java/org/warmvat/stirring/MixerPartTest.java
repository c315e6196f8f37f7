package org.warmvat.stirring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.design.tank.Mixer;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Surroundings;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;
import org.warmvat.weather.Weather;

/** Shaft heat and electricity of the paddle, minute for minute (equation 3.3). */
class MixerPartTest {
    private static final double CAPACITY = 1e6;

    private static Mixer mixer(double minutes) {
        return new Mixer(new Mixer.Turning(4, 60), 0.2, 6, minutes);
    }

    private static MixerPart part(Mixer mixer, Surroundings surroundings, Network.Assembly assembly) {
        TankPlan plan = new TankPlan();
        plan.mixer = mixer;
        return new MixerPart(mixer, surroundings, new InForce(plan.build(), surroundings, assembly), assembly);
    }

    /** 2 pi (4/3600) 60 = 0.41888 W at the shaft; 0.41888/0.2 + 6 W of electricity. */
    @Test
    void powerFollowsFromTorqueAndSpeed() {
        assertEquals(0.4188790, mixer(60).shaftW(), 5e-8);
        assertEquals(8.0943951, mixer(60).electricW(), 5e-8);
    }

    /** Whatever the minutes, a run has exactly its share of them, in either engine; nothing is stepped over. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 1, 15, 59.5, 60})
    void minutesOfEveryHourAreCountedExactly(double minutes) {
        Weather weather = InventedWeather.steady(10, 30);
        Mixer mixer = mixer(minutes);
        OnePart.Maker maker = (surroundings, around, assembly) -> part(mixer, surroundings, assembly);
        for (var engine : new Engine[] {new ReferenceEngine(), new ExponentialEngine()}) {
            OnePart run = OnePart.run(CAPACITY, weather, 20, maker, engine);
            double seconds = 30 * 60 * minutes;
            assertEquals(seconds * mixer.electricW(), run.total("mixer_electricity"), 1e-7);
            assertEquals(seconds * mixer.shaftW(), run.total(MixerPart.SHAFT_HEAT), 1e-7);
            // only the shaft's power warms the slurry, not the drive's losses
            assertEquals(20 + seconds * mixer.shaftW() / CAPACITY, run.slurryC(), 1e-9);
        }
    }

    /** Hours are those of the clock: a file that starts at half past runs its first minutes half an hour later. */
    @Test
    void minutesAreThoseOfTheClock() {
        Weather weather = InventedWeather.steadyFrom(LocalDateTime.of(2025, 3, 3, 7, 30), 10, 5);
        Network.Assembly assembly = new Network.Assembly(CAPACITY, 20);
        MixerPart part = part(mixer(10), new Surroundings(weather, timeS -> 8, assembly), assembly);
        assertEquals(1800, part.nextJumpS(0), 1e-9);
        assertEquals(2400, part.nextJumpS(1800), 1e-9);
        assertEquals(5400, part.nextJumpS(2400), 1e-9);
        part.enter(new Interval(0, 1800, 0));
        assertEquals(false, part.isRunning());
        part.enter(new Interval(1800, 2400, 0));
        assertEquals(true, part.isRunning());
        part.enter(new Interval(2400, 3600, 0));
        assertEquals(false, part.isRunning());
    }

    @Test
    void whatNeverChangesAnnouncesNothing() {
        Weather weather = InventedWeather.steady(10, 5);
        Network.Assembly assembly = new Network.Assembly(CAPACITY, 20);
        Surroundings surroundings = new Surroundings(weather, timeS -> 8, assembly);
        for (double minutes : new double[] {0, 60}) {
            MixerPart part = part(mixer(minutes), surroundings, assembly);
            assertEquals(Double.POSITIVE_INFINITY, part.nextJumpS(1234));
        }
    }
}
