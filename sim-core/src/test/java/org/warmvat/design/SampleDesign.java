package org.warmvat.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.heating.PumpedLoop;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.heating.SolarLoop;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.sample.TankPlan;
import org.warmvat.sun.SkyModel;

/** A small valid design for tests, with parts to exchange. */
final class SampleDesign {

    static final CardinalTemperatures CARDINAL = new CardinalTemperatures(8, 38, 46);
    static final Feedstock SCRAPS = new Feedstock(
            Optional.empty(),
            "kitchen scraps",
            6,
            0.22,
            0.88,
            MethanePotential.ofNumber(0.42),
            DigestionRate.ofNumber(0.20));
    static final Feedstock GREENS = new Feedstock(
            Optional.empty(),
            "garden greens",
            4,
            0.20,
            0.85,
            MethanePotential.ofNumber(0.27),
            DigestionRate.ofNumber(0.07));
    static final Coil COIL = new Coil(1, 100, Optional.of(60.0), 0.0005);

    private SampleDesign() {}

    static Tank tank(Place place) {
        return new Tank(new Shape.UprightCylinder(1), 1.15, 0.25, StandsOn.LEGS, place);
    }

    static Place outdoors() {
        return new Place.Outdoors(Exposure.SHELTERED, Optional.of(0.4), 0.4);
    }

    static Feed feed(FeedTemperature temperature, Optional<DilutionWater> water, Feedstock... stocks) {
        return new Feed(
                List.of(stocks),
                temperature,
                water,
                new Feed.AllDay(),
                new FeedHandling(4, 10, 0, true, 2),
                Optional.empty());
    }

    static Feed usualFeed() {
        return feed(
                new FeedTemperature.Air(),
                Optional.of(new DilutionWater(10, new FeedTemperature.Fixed(10))),
                SCRAPS,
                GREENS);
    }

    static Optional<Gas> gas() {
        return Optional.of(
                new Gas(35, 0.58, CARDINAL, Optional.empty(), 0, 1440, Optional.empty(), List.of(), Optional.empty()));
    }

    static SolarCircuit solar(double tankHighLimitC) {
        return new SolarCircuit(
                new Collector(
                        2,
                        new Mounting(60, java.util.OptionalDouble.empty(), SkyModel.HAY_DAVIES),
                        0.78,
                        3.6,
                        0.012,
                        7000,
                        new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9)),
                        Reader.usual(WindAndSkyLoss.class),
                        new Shading.Own(Optional.empty(), Optional.empty())),
                new SolarLoop(new PumpedLoop(0.04, 12), 3700, -20, 9000, 0.8),
                new PumpControl(8, 1.5, new org.warmvat.design.heating.HighLimit.At(tankHighLimitC), 1, 95),
                COIL,
                110,
                55);
    }

    static BackupCircuit backup(BackupSource source) {
        return new BackupCircuit(source, 1, 500, DailySchedule.continuous(), new BackupCircuit.Immersed());
    }

    static Design design(Tank tank, Feed feed, Optional<Gas> gas, Contents contents) {
        return design(tank, feed, gas, contents, Optional.empty(), Optional.empty());
    }

    static Design design(
            Tank tank,
            Feed feed,
            Optional<Gas> gas,
            Contents contents,
            Optional<SolarCircuit> solar,
            Optional<BackupCircuit> backup) {
        TankPlan plan = new TankPlan().quiet();
        plan.wall = List.of(new Layer(TankPlan.STEEL, 0.002, 1));
        plan.lid = plan.wall;
        plan.floor = plan.wall;
        plan.mixer = new TankPlan().mixer;
        plan.gas = gas;
        plan.backup = backup;
        Design design = plan.build().with(tank).with(feed).with(contents);
        return solar.map(design::with).orElse(design);
    }
}
