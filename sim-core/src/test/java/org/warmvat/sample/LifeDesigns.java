package org.warmvat.sample;

import java.time.MonthDay;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.warmvat.design.RunIn;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Condensate;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.design.gas.GasPipe;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.season.SeasonCalendar;
import org.warmvat.design.season.Spell;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.HorizonPoint;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.ShelterKind;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;

/** Designs with seasons, surroundings, gas in use and hygienisation, each block alone and together. */
public final class LifeDesigns {

    private static final List<Integer> ALL_YEAR = List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);

    private final Map<String, TankPlan> plans = new LinkedHashMap<>();

    private LifeDesigns() {}

    /** All of them by name. */
    public static Map<String, TankPlan> all() {
        LifeDesigns designs = new LifeDesigns();
        designs.surroundings();
        designs.seasons();
        designs.gas();
        designs.hygienisation();
        return designs.plans;
    }

    private void add(String name, Consumer<TankPlan> change) {
        TankPlan plan = new TankPlan();
        plan.runIn = new RunIn.Days(0);
        plan.ground = new Ground(Optional.of(new GroundWave(9, 7, 30)), 0.05, 0.5, 0.2);
        change.accept(plan);
        plans.put(name, plan);
    }

    /** A tunnel of one film, opened above 30 °C. */
    public static Shelter tunnel() {
        return new Shelter(
                ShelterKind.POLYTUNNEL_SINGLE,
                new Shelter.Size(16, 42, 32),
                new Shelter.Cover(6.5, 0.75, 0),
                new Shelter.Airing(1, 0.2, 0.4, 30, 20),
                0.5,
                Optional.of(640.0));
    }

    /** A shed of boards. */
    public static Shelter shed() {
        return new Shelter(
                ShelterKind.TIMBER,
                new Shelter.Size(6, 30, 15),
                new Shelter.Cover(2.5, 0, 0.6),
                new Shelter.Airing(1, 0.2, 0.4, Double.POSITIVE_INFINITY, 20),
                0.5,
                Optional.of(240.0));
    }

    /** A hill to the south, lower ones beside it, and trees. */
    public static Shading hill(double trees) {
        return new Shading(
                List.of(new HorizonPoint(90, 5), new HorizonPoint(185, 24), new HorizonPoint(280, 6)),
                Collections.nCopies(12, trees));
    }

    private static void in(TankPlan plan, Shelter shelter) {
        plan.place = new Place.InShelter();
        plan.shelter = Optional.of(shelter);
    }

    private void surroundings() {
        add("in a tunnel", plan -> in(plan, tunnel()));
        add("box in a shed on the ground behind a hill, feed from the shed", plan -> {
            in(plan, shed());
            plan.standsOn = StandsOn.GROUND;
            plan.feedTemperature = new FeedTemperature.Room();
            plan.shape = new Shape.Box(0.9, 0.8, 20);
            plan.surroundings = hill(0.2);
            plan.collectorShading = hill(0.1);
        });
        add("behind a hill and trees", plan -> {
            plan.surroundings = hill(0.3);
            plan.collectorShading = hill(0.3);
        });
        add("tubes in wind under a clear sky", plan -> {
            plan.incidence = new Collector.Incidence(
                    new BeamModifier.Tabled(new BeamModifier.Biaxial(
                            List.of(0.0, 30.0, 60.0, 90.0),
                            List.of(1.0, 1.08, 1.37, 0.0),
                            List.of(1.0, 0.99, 0.88, 0.0),
                            BeamModifier.Tubes.ALONG_SLOPE)),
                    OptionalDouble.empty());
            plan.windAndSky = new WindAndSkyLoss(
                    0.3, 0.4, 0.01, 0.5, new WindAndSkyLoss.Omitted(Optional.empty(), Optional.empty()));
        });
    }

    /** A spell that states nothing but its days; its numbers follow. */
    private static Spell spell(
            String from,
            String to,
            int rampDays,
            Spell.HeldAt held,
            Spell.Fed fed,
            OptionalDouble mixer,
            Spell.Runs runs) {
        return new Spell(
                Optional.of(from + " to " + to),
                MonthDay.parse("--" + from),
                MonthDay.parse("--" + to),
                rampDays,
                held,
                fed,
                mixer,
                runs);
    }

    private static Spell.HeldAt held(double setpointC) {
        return new Spell.HeldAt(OptionalDouble.of(setpointC), OptionalDouble.empty(), Optional.empty());
    }

    private static Spell.Fed fed(double factor) {
        return new Spell.Fed(OptionalDouble.of(factor), Map.of());
    }

    private static Spell.Runs runs(Boolean solar, Boolean backup, Boolean exchanger) {
        return new Spell.Runs(Optional.ofNullable(solar), Optional.ofNullable(backup), Optional.ofNullable(exchanger));
    }

    /** Two weeks of April and the winter with everything that a calendar can change. */
    public static SeasonCalendar calendar() {
        Spell.HeldAt withoutMinimum =
                new Spell.HeldAt(OptionalDouble.of(30), OptionalDouble.empty(), Optional.of(new Minimum.None()));
        Spell.HeldAt wide = new Spell.HeldAt(OptionalDouble.of(38), OptionalDouble.of(2), Optional.empty());
        return new SeasonCalendar(
                List.of(
                        spell("11-16", "03-10", 0, held(15), fed(0), OptionalDouble.of(5), runs(true, false, null)),
                        spell("03-11", "03-30", 20, held(36), fed(1), OptionalDouble.empty(), runs(null, null, null)),
                        spell(
                                "04-02",
                                "04-03",
                                0,
                                withoutMinimum,
                                fed(0),
                                OptionalDouble.of(5),
                                runs(false, null, null)),
                        spell(
                                "04-04",
                                "04-10",
                                3,
                                wide,
                                new Spell.Fed(OptionalDouble.of(2), Map.of("garden greens", 0.5)),
                                OptionalDouble.empty(),
                                runs(null, null, false))),
                5);
    }

    private void seasons() {
        add("calendar", plan -> {
            plan.calendar = calendar();
            plan.control = new org.warmvat.design.heating.Control(
                    36,
                    1,
                    new Minimum.BelowSetpoint(2),
                    3,
                    new org.warmvat.design.heating.Control.DailyChange(1, 2),
                    10);
            plan.pumpControl =
                    new PumpControl(8, 1.5, new org.warmvat.design.heating.HighLimit.AboveSetpoint(3.5), 1, 95);
            plan.handling = new FeedHandling(4, 10, 0.5, true, 2);
        });
        add("calendar in a tunnel, element", plan -> {
            plan.calendar = calendar();
            in(plan, tunnel());
            plan.backup = Optional.of(TankPlan.immersed(400, org.warmvat.design.season.DailySchedule.continuous()));
        });
    }

    private static Optional<Gas> holder(double m3, double reserve, Condensate condensate, GasUse... uses) {
        return Optional.of(new Gas(
                35,
                0.58,
                new CardinalTemperatures(8, 38, 46),
                Optional.of(new AirDosing(1, 1, 2, 0.06)),
                0,
                1440,
                Optional.of(new GasHolder(m3, 0.5, 0.05, reserve, 2)),
                List.of(uses),
                Optional.ofNullable(condensate).map(GasPipe::new)));
    }

    /** A use in a window of each day. */
    public static GasUse use(String name, double kw, double startH, double hours) {
        return new GasUse(
                name, GasUse.Kind.BURNER, kw, new GasUse.Whole(0.55), TankPlan.window(startH, hours), ALL_YEAR);
    }

    private void gas() {
        add("holder, uses and own gas with its reserve", plan -> {
            plan.gas = holder(0.8, 0.2, new Condensate.Air(), use("cooker", 1.8, 18, 1.5), use("lamp", 0.2, 20, 10));
            plan.backup = Optional.of(TankPlan.circuit(BackupSource.OWN_GAS, 0.8, 500, 8));
        });
        add("own gas without solar, element", plan -> {
            plan.solar = false;
            plan.gas = holder(1.2, 0.3, null, use("cooker", 2.5, 17, 3));
            plan.backup = Optional.of(new org.warmvat.design.heating.BackupCircuit(
                    BackupSource.OWN_GAS,
                    0.85,
                    600,
                    TankPlan.window(20, 16),
                    new org.warmvat.design.heating.BackupCircuit.Immersed()));
        });
        add(
                "small holder, a use day and night",
                plan -> plan.gas = holder(0.4, 0, new Condensate.Fixed(4), use("cooker", 0.5, 0, 24)));
        add(
                "large holder that overflows",
                plan -> plan.gas = holder(0.5, 0, new Condensate.Ground(), use("lamp", 0.05, 18, 6)));
    }

    private static Optional<Hygienisation> hygienisation(BackupSource source, OptionalDouble coolToC) {
        return Optional.of(new Hygienisation(
                new Hygienisation.Heat(70, 1, 1, coolToC),
                0.4,
                source,
                0.7,
                1.5,
                Optional.of(List.of("kitchen scraps"))));
    }

    private void hygienisation() {
        add("hygienisation by own gas", plan -> {
            plan.gas = holder(0.6, 0.1, new Condensate.Ground(), use("cooker", 0.3, 6, 12));
            plan.hygienisation = hygienisation(BackupSource.OWN_GAS, OptionalDouble.of(45));
            plan.handling = new FeedHandling(4, 10, 0.5, true, 2);
        });
        add("hygienisation by electricity in a shed", plan -> {
            in(plan, shed());
            plan.hygienisation = hygienisation(BackupSource.ELECTRIC, OptionalDouble.empty());
        });
    }
}
