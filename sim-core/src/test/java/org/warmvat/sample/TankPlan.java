package org.warmvat.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.Adjust;
import org.warmvat.design.Design;
import org.warmvat.design.Plausible;
import org.warmvat.design.Prices;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.envelope.OuterFace;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
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
import org.warmvat.design.season.DailyWindow;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.season.SeasonCalendar;
import org.warmvat.design.surroundings.AssumedWeather;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.Outdoors;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.Sky;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.sun.SkyModel;

/** A design to be altered part by part; as it comes it is the demonstration's tank of 900 litres. */
public final class TankPlan {

    /** Materials as on the model page. */
    public static final Material STEEL = new Material("stainless_steel", 17, 7900, 460);

    /** Materials as on the model page. */
    public static final Material ALUMINIUM = new Material("aluminium_sheet", 160, 2800, 880);

    /** Materials as on the model page. */
    public static final Material PIR = new Material("pir_foam", 0.027, 32, 1400);

    /** Materials as on the model page. */
    public static final Material POLYETHYLENE = new Material("polyethylene_hd", 0.50, 980, 1800);

    /** Materials as on the model page. */
    public static final Material PVC = new Material("pvc_rigid", 0.17, 1390, 900);

    /** Inner plan. */
    public Shape shape = new Shape.UprightCylinder(1);

    /** Depth of the contents. */
    public double depthM = 1.15;

    /** Height of the gas space. */
    public double headspaceM = 0.25;

    /** What is under the floor. */
    public StandsOn standsOn = StandsOn.LEGS;

    /** Where the tank stands. */
    public Place place = new Place.Outdoors(Exposure.SHELTERED, Optional.of(0.4), 0.4);

    /** Layers of the wall. */
    public List<Layer> wall = insulated(0.090);

    /** Layers of the lid. */
    public List<Layer> lid = insulated(0.110);

    /** Layers of the floor. */
    public List<Layer> floor = insulated(0.090);

    /** Surface coefficients. */
    public Films films = new Films(100, 10, 6, 4, 4, 7.7, 10);

    /** Outermost face. */
    public OuterFace outerFace = new OuterFace(0.5, 0.9);

    /** Conventions of the envelope. */
    public EnvelopeRules rules = new EnvelopeRules(0.1, 3, 0.54, false, 0.5);

    /** Losses beside the envelope. */
    public List<Fitting> fittings = new ArrayList<>(List.of(
            new Fitting.Stated("gas neck", 0.25),
            new Fitting.Stated("auger inlet", 0.5),
            new Fitting.Stated("hatch", 0.2),
            new Fitting.Bar("legs", new Fitting.Bars(STEEL, 400e-6, 0.150, 4)),
            pipe()));

    /** What is fed. */
    public List<Feedstock> feedstocks = List.of(
            new Feedstock(
                    Optional.empty(),
                    "kitchen scraps",
                    6,
                    0.22,
                    0.88,
                    MethanePotential.ofNumber(0.42),
                    DigestionRate.ofNumber(0.20)),
            new Feedstock(
                    Optional.empty(),
                    "garden greens",
                    4,
                    0.20,
                    0.85,
                    MethanePotential.ofNumber(0.27),
                    DigestionRate.ofNumber(0.07)));

    /** How warm it is. */
    public FeedTemperature feedTemperature = new FeedTemperature.Air();

    /** Water fed with it. */
    public Optional<DilutionWater> water = Optional.of(new DilutionWater(10, new FeedTemperature.Fixed(10)));

    /** When it is fed. */
    public DailySchedule feedTimes = window(8, 3);

    /** How it is handled. */
    public FeedHandling handling = new FeedHandling(4, 10, 0, true, 2);

    /** The paddle. */
    public Mixer mixer = new Mixer(new Mixer.Turning(4, 60), 0.2, 6, 60);

    /** Area of the collector, when there is a solar circuit. */
    public double collectorM2 = 2;

    /** Where the collector faces, if stated. */
    public OptionalDouble azimuthDeg = OptionalDouble.empty();

    /** Model of diffuse light. */
    public SkyModel skyModel = SkyModel.HAY_DAVIES;

    /** Control of the solar pump. */
    public PumpControl pumpControl = new PumpControl(8, 1.5, new HighLimit.At(39.5), 1, 95);

    /** Coil of the solar circuit. */
    public Coil solarCoil = new Coil(1, 100, Optional.of(60.0), 0.0005);

    /** Whether there is a solar circuit. */
    public boolean solar = true;

    /** The other heat source. */
    public Optional<BackupCircuit> backup = Optional.of(circuit(BackupSource.ELECTRIC, 1, 500, 8));

    /** Set-point and band. */
    public Control control = new Control(36, 1, new Minimum.At(34), 3, new Control.DailyChange(1, 2), 10);

    /** The gas side. */
    public Optional<Gas> gas = Optional.of(new Gas(
            35,
            0.58,
            new CardinalTemperatures(8, 38, 46),
            Optional.of(new AirDosing(1, 1, 2, 0.06)),
            0,
            1440,
            Optional.empty(),
            List.of(),
            Optional.empty()));

    /** The contents. */
    public Contents contents = new Contents(1010, Optional.empty(), 1600, 0.6);

    /** The ground. */
    public Ground ground = new Ground(Optional.empty(), 0.05, 0.5, 0.2);

    /** The run-in. */
    public RunIn runIn = new RunIn.ByTimeConstants(10, 3, 90);

    /** Spells of the year. */
    public SeasonCalendar calendar = new SeasonCalendar(List.of(), 10);

    /** What stands in the tank's sky. */
    public Shading surroundings = Shading.NONE;

    /** What stands in the collector's sky. */
    public Shading collectorShading = Shading.NONE;

    /** Shelter, for a place in one. */
    public Optional<Shelter> shelter = Optional.empty();

    /** Factors on what is drawn. */
    public Adjust adjust = Reader.usual(Adjust.class);

    /** How the collector takes slanting light. */
    public Collector.Incidence incidence =
            new Collector.Incidence(new BeamModifier.Formula(0.14, 85), OptionalDouble.of(0.9));

    /** What wind and sky take from the collector. */
    public WindAndSkyLoss windAndSky = Reader.usual(WindAndSkyLoss.class);

    /** Heating of feed before it is fed. */
    public Optional<Hygienisation> hygienisation = Optional.empty();

    /** Steel inside, foam, aluminium outside. */
    public static List<Layer> insulated(double foamM) {
        return List.of(new Layer(STEEL, 0.002, 1), new Layer(PIR, foamM, 3), new Layer(ALUMINIUM, 0.0008, 1));
    }

    /** One layer of plastic and nothing else. */
    public static List<Layer> bare() {
        return List.of(new Layer(POLYETHYLENE, 0.008, 1));
    }

    /** A daily window in hours. */
    public static DailySchedule window(double startH, double hours) {
        return DailySchedule.of(List.of(new DailyWindow(3600 * startH, 3600 * hours)));
    }

    /** Feed that enters in the open time of a schedule. */
    public static Feed.Entry entry(DailySchedule schedule) {
        return new Feed.InWindows(schedule.spans().stream()
                .map(span -> new DailyWindow(span.startS(), span.endS() - span.startS()))
                .toList());
    }

    /** The demonstration's outlet pipe. */
    public static Fitting.Pipe pipe() {
        return new Fitting.Pipe("outlet", new Fitting.Stub(0.110, PVC, 0.0032, 0.6, 0.050, 0.027));
    }

    /** A water circuit with its coil. */
    public static BackupCircuit circuit(BackupSource source, double efficiency, double ratedW, double waterKg) {
        return new BackupCircuit(
                source,
                efficiency,
                ratedW,
                DailySchedule.continuous(),
                new BackupCircuit.Circuit(
                        new BackupCircuit.FlowTemperature(50, 5, 2),
                        waterKg,
                        0.3,
                        new PumpedLoop(0.05, 15),
                        new Coil(0.8, 100, Optional.of(60.0), 0.0005),
                        55));
    }

    /** An element in the contents. */
    public static BackupCircuit immersed(double ratedW, DailySchedule allowed) {
        return new BackupCircuit(BackupSource.ELECTRIC, 1, ratedW, allowed, new BackupCircuit.Immersed());
    }

    /** No solar, no backup, no gas, no feed, no fittings, a mixer that stands still. */
    public TankPlan quiet() {
        solar = false;
        backup = Optional.empty();
        gas = Optional.empty();
        fittings = List.of();
        feedstocks = List.of(new Feedstock(
                Optional.empty(), "nothing", 0, 0, 0, MethanePotential.ofNumber(0), DigestionRate.ofNumber(0)));
        water = Optional.empty();
        mixer = new Mixer(new Mixer.Given(0), 1, 0, 0);
        return this;
    }

    /** No foam anywhere. */
    public TankPlan uninsulated() {
        wall = bare();
        lid = bare();
        floor = bare();
        return this;
    }

    /** In a room. */
    public TankPlan indoors(double roomC) {
        place = new Place.Indoors(roomC);
        return this;
    }

    /** The solar circuit as a record. */
    public SolarCircuit solarCircuit() {
        return new SolarCircuit(
                new Collector(
                        collectorM2,
                        new Mounting(60, azimuthDeg, skyModel),
                        0.78,
                        3.6,
                        0.012,
                        7000,
                        incidence,
                        windAndSky,
                        new Shading.Own(
                                Optional.of(collectorShading.points()), Optional.of(collectorShading.shadeByMonth()))),
                new SolarLoop(new PumpedLoop(0.04, 12), 3700, -20, 9000, 0.8),
                pumpControl,
                solarCoil,
                110,
                55);
    }

    /** The design as it now stands. */
    public Design build() {
        return new Design(
                "sample",
                new Tank(shape, depthM, headspaceM, standsOn, place),
                new Envelope(wall, lid, floor, outerFace, films, rules),
                Map.of(),
                fittings,
                new Feed(feedstocks, feedTemperature, water, entry(feedTimes), handling, hygienisation),
                mixer,
                solar ? Optional.of(solarCircuit()) : Optional.empty(),
                backup,
                control,
                gas,
                contents,
                new Outdoors(ground, new Sky(1, 0.8, 10), new AssumedWeather(3, 0.75, 0.5), surroundings),
                runIn,
                new Prices(
                        0.3,
                        0.09,
                        0.09,
                        "EUR",
                        new Prices.Carbon(0.25, 0.2),
                        2.5,
                        new Prices.Outlay(250, 300, Reader.usual(Prices.OutlayParts.class), 15)),
                calendar.spells(),
                shelter,
                Optional.empty(),
                adjust,
                Optional.empty(),
                Reader.usual(Plausible.class));
    }
}
