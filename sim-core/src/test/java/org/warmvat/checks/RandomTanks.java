package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Shape;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.Weather;

/** Tanks as chance makes them, always the same ones; {@code -Dproperties.designs=N} makes N of them instead of a few. */
public final class RandomTanks {

    private static final int USUAL = 30;

    private RandomTanks() {}

    /** How many tanks a property is tried on. */
    static int count() {
        return Integer.getInteger("properties.designs", USUAL);
    }

    /** Tries a property on every tank, several at a time; the tanks do not know of each other. */
    static void each(Consumer<Integer> property) {
        IntStream.range(0, count()).parallel().forEach(property::accept);
    }

    /** Six days of the demonstration's year. */
    static Weather weather(int seed) {
        return InventedWeather.days(new Random(7919L * seed + 3).nextInt(358), 6);
    }

    /** The tank of a number. */
    public static TankPlan plan(int seed) {
        Random random = new Random(104_729L * seed + 1);
        TankPlan plan = new TankPlan();
        plan.shape = random.nextBoolean()
                ? new Shape.UprightCylinder(between(random, 0.5, 2))
                : new Shape.Box(between(random, 0.5, 2), between(random, 0.5, 2), between(random, 0, 90));
        plan.depthM = between(random, 0.5, 2);
        plan.headspaceM = between(random, 0.05, 0.5);
        plan.standsOn = random.nextBoolean() ? StandsOn.LEGS : StandsOn.GROUND;
        plan.place = place(random);
        plan.wall = TankPlan.insulated(between(random, 0.005, 0.2));
        plan.lid = TankPlan.insulated(between(random, 0.005, 0.2));
        plan.floor = TankPlan.insulated(between(random, 0.005, 0.2));
        plan.fittings = List.of(new Fitting.Stated("all", between(random, 0, 2)), TankPlan.pipe());
        plan.ground = new Ground(Optional.of(new GroundWave(9, 6, 30)), 0.05, 0.5, 0.2);
        plan.runIn = new RunIn.Days(1);
        feed(plan, random);
        heat(plan, random);
        return plan;
    }

    private static Place place(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> new Place.Indoors(between(random, 0, 20));
            case 1 -> new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25);
            case 2 -> new Place.Outdoors(Exposure.OPEN, Optional.of(0.7), 0.4);
            default -> new Place.Outdoors(Exposure.SHELTERED, Optional.of(0.4), 0.4);
        };
    }

    private static void feed(TankPlan plan, Random random) {
        plan.feedstocks = List.of(new Feedstock(
                Optional.empty(),
                "mixture",
                between(random, 0, 30),
                between(random, 0.05, 0.4),
                0.85,
                MethanePotential.ofNumber(between(random, 0.1, 0.5)),
                DigestionRate.ofNumber(between(random, 0.03, 0.3))));
        plan.feedTemperature = random.nextBoolean() ? new FeedTemperature.Air() : new FeedTemperature.Ground();
        plan.feedTimes = TankPlan.window(between(random, 0, 23), between(random, 0.2, 20));
        plan.mixer = new Mixer(new Mixer.Given(between(random, 0, 60)), 0.5, 2, between(random, 0, 60));
    }

    private static void heat(TankPlan plan, Random random) {
        double setpointC = between(random, 25, 55);
        plan.control = new Control(
                setpointC, between(random, 0.2, 3), new Minimum.At(20), 3, new Control.DailyChange(1, 2), 10);
        plan.pumpControl = new PumpControl(between(random, 4, 10), 2, new HighLimit.At(setpointC + 3), 1, 95);
        plan.solar = random.nextInt(3) > 0;
        plan.collectorM2 = between(random, 0.5, 6);
        plan.backup = switch (random.nextInt(3)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(TankPlan.immersed(between(random, 200, 2000), DailySchedule.continuous()));
            default ->
                Optional.of(
                        TankPlan.circuit(BackupSource.FUEL, 0.8, between(random, 200, 2000), between(random, 5, 50)));
        };
        plan.gas = random.nextInt(3) > 0 ? plan.gas : Optional.empty();
    }

    static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
