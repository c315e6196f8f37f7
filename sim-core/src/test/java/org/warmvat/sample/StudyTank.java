package org.warmvat.sample;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.warmvat.design.Design;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.heating.PumpedLoop;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.heating.SolarLoop;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Mixer;
import org.warmvat.sun.SkyModel;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;

/** A tank in a room of constant temperature whose envelope holds next to no heat, and short invented weather. */
public final class StudyTank {

    public static final double ROOM_C = 10;
    private static final Coil COIL = new Coil(1, 100, Optional.of(100.0), 0);

    private StudyTank() {}

    public static Design design(Optional<SolarCircuit> solar, Optional<BackupCircuit> backup) {
        return design(1, solar, backup);
    }

    /** The same with its foam cut into three slices. */
    public static Design slicedDesign(Optional<SolarCircuit> solar, Optional<BackupCircuit> backup) {
        return design(3, solar, backup);
    }

    /** The same in open air, under a roof, so that the weather matters but neither sun nor sky. */
    public static Design outdoors(Optional<SolarCircuit> solar, Optional<BackupCircuit> backup) {
        return design(1, new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25), solar, backup);
    }

    private static Design design(int slices, Optional<SolarCircuit> solar, Optional<BackupCircuit> backup) {
        return design(slices, new Place.Indoors(ROOM_C), solar, backup);
    }

    private static Design design(
            int slices, Place place, Optional<SolarCircuit> solar, Optional<BackupCircuit> backup) {
        Feedstock none = new Feedstock(
                Optional.empty(), "nothing", 0, 0.2, 0.8, MethanePotential.ofNumber(0.4), DigestionRate.ofNumber(0.2));
        TankPlan plan = new TankPlan().quiet();
        plan.wall = List.of(new Layer(new Material("light_foam", 0.03, 1, 100), 0.05, slices));
        plan.lid = plan.wall;
        plan.floor = plan.wall;
        plan.depthM = 1;
        plan.headspaceM = 0.2;
        plan.place = place;
        plan.mixer = new Mixer(new Mixer.Given(0), 1, 0, 60);
        plan.backup = backup;
        plan.control = new Control(36, 1, new Minimum.At(34), 0, new Control.DailyChange(1, 2), 10);
        plan.contents = new Contents(1000, Optional.of(0.0), 1600, 0.6);
        plan.runIn = new RunIn.Days(1);
        Design design = plan.build()
                .with(new Feed(
                        List.of(none),
                        new FeedTemperature.Fixed(10),
                        Optional.empty(),
                        new Feed.AllDay(),
                        new FeedHandling(0, 0, 0, true, 2),
                        Optional.empty()));
        return solar.map(design::with).orElse(design);
    }

    public static Optional<SolarCircuit> collector(double areaM2) {
        Mounting plane = new Mounting(45, OptionalDouble.empty(), SkyModel.ISOTROPIC);
        return Optional.of(new SolarCircuit(
                new Collector(
                        areaM2,
                        plane,
                        0.78,
                        3.6,
                        0.012,
                        7000,
                        new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9)),
                        Reader.usual(WindAndSkyLoss.class),
                        new Shading.Own(Optional.empty(), Optional.empty())),
                new SolarLoop(new PumpedLoop(0.04, 12), 3700, -20, 9000, 0.8),
                new PumpControl(8, 1.5, new HighLimit.At(45), 1, 95),
                COIL,
                110,
                55));
    }

    public static Optional<BackupCircuit> element(double ratedW) {
        return Optional.of(new BackupCircuit(
                BackupSource.ELECTRIC, 1, ratedW, DailySchedule.continuous(), new BackupCircuit.Immersed()));
    }

    public static Optional<BackupCircuit> coil(double ratedW, double limitC, double areaM2) {
        return Optional.of(new BackupCircuit(
                BackupSource.ELECTRIC,
                1,
                ratedW,
                DailySchedule.continuous(),
                new BackupCircuit.Circuit(
                        new BackupCircuit.FlowTemperature(limitC, 5, 2),
                        8,
                        0,
                        new PumpedLoop(0.05, 15),
                        new Coil(areaM2, 100, Optional.of(100.0), 0),
                        55)));
    }

    /** Days from 1 April with the same sun from 8 to 16 h each day and cool air. */
    public static Weather april(int days, double airC, double peakWPerM2) {
        return from(LocalDateTime.of(2025, 4, 1, 0, 0), days, airC, peakWPerM2);
    }

    /** Hours from 1 April in air of one's own, without sun. */
    public static Weather aprilIn(int hours, IntToDoubleFunction airC) {
        double[] air = new double[hours];
        Arrays.setAll(air, airC);
        return of(LocalDateTime.of(2025, 4, 1, 0, 0), air, 0);
    }

    public static Weather from(LocalDateTime start, int days, double airC, double peakWPerM2) {
        double[] air = new double[24 * days];
        Arrays.fill(air, airC);
        return of(start, air, peakWPerM2);
    }

    private static Weather of(LocalDateTime start, double[] air, double peakWPerM2) {
        double[] global = new double[air.length];
        for (int hour = 0; hour < global.length; hour++) {
            double past = hour % 24 + 0.5 - 8;
            global[hour] = past > 0 && past < 8 ? peakWPerM2 * Math.sin(Math.PI * past / 8) : 0;
        }
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.AIR, air);
        columns.put(Quantity.GLOBAL, global);
        org.warmvat.weather.Site site = new org.warmvat.weather.Site("invented", 45, 0, 100, 0);
        return new Weather(new HourlyTable(site, start, Stamp.HOUR_END, columns));
    }
}
