package org.warmvat.question.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Shape;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.LifeDesigns;
import org.warmvat.sample.TankPlan;
import org.warmvat.sun.SkyModel;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** Designs and weathers across the whole range, on which both engines must agree: sizes, foam, every option on and off. */
final class EqualityCases {

    /** A design in a weather under a name; the weather is made when asked for. */
    record Case(String name, TankPlan plan, Supplier<Weather> weather) {}

    private final List<Case> cases = new ArrayList<>();

    private EqualityCases() {}

    /** All cases over whole years: the demonstration's, a colder with wider swings, a hotter, a southern. */
    static List<Case> full() {
        EqualityCases all = new EqualityCases();
        all.sizesAndFoam();
        all.places();
        all.bare();
        all.circuits();
        all.feedAndGas();
        all.climates();
        return all.cases;
    }

    /** Tanks with seasons, shelters, horizons, gas in use and hygienisation over the demonstration's year. */
    static List<Case> lives() {
        return LifeDesigns.all().entrySet().stream()
                .map(one -> new Case(one.getKey(), one.getValue(), WeatherFiles::demonstration))
                .toList();
    }

    /** A handful over some weeks, for every build. */
    static List<Case> handful() {
        return full().stream()
                .filter(one -> List.of(
                                "demonstration",
                                "box of 3 m3 on the ground",
                                "bare, in the open",
                                "element by night",
                                "mixer 15 min an hour",
                                "cold with wide swings")
                        .contains(one.name))
                .map(one -> new Case(one.name, groundGiven(one.plan), () -> weeks(one.weather.get())))
                .toList();
    }

    private static TankPlan groundGiven(TankPlan plan) {
        plan.ground = new Ground(Optional.of(new GroundWave(9, 7, 30)), 0.05, 0.5, 0.2);
        return plan;
    }

    /** The end of March and the beginning of April: both circuits have work. */
    private static Weather weeks(Weather year) {
        return new Weather(InventedWeather.days(year.table(), 85, 14));
    }

    private void add(String name, Supplier<Weather> weather, Consumer<TankPlan> change) {
        TankPlan plan = new TankPlan();
        // without a run-in both engines start from one state, and the first switching apart is seen wherever it comes
        plan.runIn = new RunIn.Days(0);
        change.accept(plan);
        cases.add(new Case(name, plan, weather));
    }

    private void usual(String name, Consumer<TankPlan> change) {
        add(name, WeatherFiles::demonstration, change);
    }

    private static void foam(TankPlan plan, double metres) {
        plan.wall = TankPlan.insulated(metres);
        plan.lid = TankPlan.insulated(metres);
        plan.floor = TankPlan.insulated(metres);
    }

    private static void size(TankPlan plan, double diameterM, double depthM, double share) {
        plan.shape = new Shape.UprightCylinder(diameterM);
        plan.depthM = depthM;
        plan.feedstocks = List.of(
                new Feedstock(
                        Optional.empty(),
                        "kitchen scraps",
                        6 * share,
                        0.22,
                        0.88,
                        MethanePotential.ofNumber(0.42),
                        DigestionRate.ofNumber(0.20)),
                new Feedstock(
                        Optional.empty(),
                        "garden greens",
                        4 * share,
                        0.20,
                        0.85,
                        MethanePotential.ofNumber(0.27),
                        DigestionRate.ofNumber(0.07)));
        plan.water = Optional.of(new DilutionWater(10 * share, new FeedTemperature.Fixed(10)));
        plan.collectorM2 = 2 * share;
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, Math.max(200, 500 * share), 8));
    }

    private void sizesAndFoam() {
        usual("demonstration", plan -> {});
        usual("100 litres", plan -> size(plan, 0.5, 0.51, 0.12));
        usual("300 litres, 50 mm", plan -> {
            size(plan, 0.7, 0.78, 0.35);
            foam(plan, 0.05);
        });
        usual("3 m3, 150 mm", plan -> {
            size(plan, 1.5, 1.7, 3);
            foam(plan, 0.15);
        });
        usual("10 m3, 200 mm", plan -> {
            size(plan, 2.3, 2.4, 8);
            foam(plan, 0.2);
        });
        usual("foam in ten slices, sheets merged", plan -> {
            plan.wall = List.of(
                    new Layer(TankPlan.STEEL, 0.002, 1),
                    new Layer(TankPlan.ALUMINIUM, 0.001, 1),
                    new Layer(TankPlan.PIR, 0.1, 10));
            plan.rules = new EnvelopeRules(0.1, 3, 0.54, true, 0.5);
        });
    }

    private void places() {
        usual("box of 3 m3 on the ground", plan -> {
            size(plan, 1, 1.3, 2.5);
            plan.shape = new Shape.Box(1.8, 1.3, 25);
            plan.standsOn = StandsOn.GROUND;
        });
        usual("in the open", plan -> plan.place = new Place.Outdoors(Exposure.OPEN, Optional.of(0.7), 0.4));
        usual("under a roof", plan -> plan.place = new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25));
        usual("in a room of 14 °C", plan -> plan.indoors(14));
        usual("in a room, element, feed from the room", plan -> {
            plan.indoors(16);
            plan.solar = false;
            plan.feedTemperature = new FeedTemperature.Room();
            plan.backup = Optional.of(TankPlan.immersed(400, DailySchedule.continuous()));
        });
        usual("buried box, feed from the ground", plan -> {
            plan.shape = new Shape.Box(1, 1, 0);
            plan.standsOn = StandsOn.GROUND;
            plan.feedTemperature = new FeedTemperature.Ground();
        });
    }

    private void bare() {
        usual("bare, in the open", plan -> {
            plan.uninsulated();
            plan.place = new Place.Outdoors(Exposure.OPEN, Optional.of(0.7), 0.4);
            plan.backup = Optional.of(TankPlan.circuit(BackupSource.FUEL, 0.85, 3000, 20));
        });
        usual("bare, sheltered, no backup", plan -> {
            plan.uninsulated();
            plan.backup = Optional.empty();
        });
        usual("bare box on the ground", plan -> {
            plan.uninsulated();
            plan.shape = new Shape.Box(1, 0.9, 0);
            plan.standsOn = StandsOn.GROUND;
        });
        usual("bare in a room", plan -> {
            plan.uninsulated();
            plan.indoors(20);
        });
        usual("bare, 100 litres, element", plan -> {
            plan.uninsulated();
            plan.shape = new Shape.UprightCylinder(0.5);
            plan.depthM = 0.5;
            plan.backup = Optional.of(TankPlan.immersed(1500, DailySchedule.continuous()));
        });
        add("bare in the hot year", EqualityCases::hot, TankPlan::uninsulated);
    }

    private void circuits() {
        usual("no solar", plan -> plan.solar = false);
        usual("no backup", plan -> plan.backup = Optional.empty());
        usual("neither", plan -> {
            plan.solar = false;
            plan.backup = Optional.empty();
        });
        usual("4 m2, Perez, pump at 5 and 1 K", plan -> {
            plan.collectorM2 = 4;
            plan.skyModel = SkyModel.PEREZ;
            plan.pumpControl = new PumpControl(5, 1, new HighLimit.At(38), 0.5, 95);
        });
        usual("1 m2 on a large coil, isotropic", plan -> {
            plan.collectorM2 = 1;
            plan.skyModel = SkyModel.ISOTROPIC;
            plan.solarCoil = new Coil(3, 300, Optional.of(150.0), 0);
        });
        usual("element by night", plan -> plan.backup = Optional.of(TankPlan.immersed(900, TankPlan.window(22, 8))));
        usual("own gas in two windows, flow limit", plan -> {
            BackupCircuit circuit = TankPlan.circuit(BackupSource.OWN_GAS, 0.8, 3000, 5);
            DailySchedule hours = DailySchedule.of(
                    List.of(new DailyWindow(5 * 3600, 2 * 3600), new DailyWindow(17 * 3600, 4 * 3600)));
            plan.backup = Optional.of(new BackupCircuit(BackupSource.OWN_GAS, 0.8, 3000, hours, circuit.through()));
        });
        usual(
                "narrow band",
                plan -> plan.control = new Control(38, 0.3, new Minimum.At(36), 3, new Control.DailyChange(1, 2), 10));
        usual(
                "heater too small",
                plan -> plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, 60, 40)));
    }

    private void feedAndGas() {
        usual("mixer 15 min an hour", plan -> plan.mixer = new Mixer(new Mixer.Given(20), 0.4, 5, 15));
        usual("fed day and night", plan -> plan.feedTimes = DailySchedule.continuous());
        usual("fed across midnight, exchanger", plan -> {
            plan.feedTimes = TankPlan.window(23.5, 1);
            plan.handling = new FeedHandling(4, 10, 0.6, true, 2);
        });
        usual("ten minutes a day, no water", plan -> {
            plan.feedTimes = TankPlan.window(9, 1.0 / 6);
            plan.water = Optional.empty();
        });
        usual("no gas", plan -> plan.gas = Optional.empty());
        usual("hot digestion, heat of reaction", plan -> {
            plan.control = new Control(52, 1, new Minimum.At(50), 3, new Control.DailyChange(1, 2), 10);
            plan.pumpControl = new PumpControl(8, 1.5, new HighLimit.At(55.5), 1, 95);
            plan.backup = Optional.of(TankPlan.immersed(900, DailySchedule.continuous()));
            plan.gas = Optional.of(new Gas(
                    52,
                    0.55,
                    new CardinalTemperatures(25, 54, 66),
                    Optional.empty(),
                    300,
                    1440,
                    Optional.empty(),
                    List.of(),
                    Optional.empty()));
        });
    }

    private void climates() {
        add(
                "cold with wide swings",
                EqualityCases::cold,
                plan -> plan.backup = Optional.of(TankPlan.circuit(BackupSource.FUEL, 0.85, 1500, 10)));
        add("cold, no solar, feed kept from frost", EqualityCases::cold, plan -> {
            plan.solar = false;
            plan.handling = new FeedHandling(4, 10, 0, false, 2);
            plan.backup = Optional.of(TankPlan.circuit(BackupSource.FUEL, 0.85, 1500, 10));
        });
        add("hot", EqualityCases::hot, plan -> {});
        add("hot, 4 m2, no backup", EqualityCases::hot, plan -> {
            plan.collectorM2 = 4;
            plan.backup = Optional.empty();
        });
        add("southern", EqualityCases::southern, plan -> {});
    }

    private static Weather cold() {
        return new Weather(InventedWeather.warmer(WeatherFiles.demonstration().table(), -9, 2));
    }

    private static Weather hot() {
        return new Weather(InventedWeather.warmer(WeatherFiles.demonstration().table(), 12, 1.2));
    }

    private static Weather southern() {
        HourlyTable north = WeatherFiles.demonstration().table();
        Site site = north.site();
        Site mirrored = new Site(
                "Mirror (invented)", -site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.utcOffsetH());
        // half a year on and still a whole year, from 1 July to 30 June
        return new Weather(InventedWeather.moved(north, mirrored, north.start().plusDays(181)));
    }
}
