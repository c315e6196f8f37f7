package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of record refuses what is out of range and says what, how much and what is allowed. */
class RefusalsTest {

    private static final Material FOAM = new Material("foam", 0.03, 30, 1400);
    private static final FeedTemperature AIR = new FeedTemperature.Air();

    static Stream<Arguments> refusals() {
        return Stream.of(envelope(), feeding(), heating(), rest()).flatMap(s -> s);
    }

    private static Stream<Arguments> envelope() {
        return Stream.of(
                of("inner diameter in m 0.1, expected 0.2 to 20", () -> new Shape.UprightCylinder(0.1)),
                of("inner width in m NaN, expected 0.2 to 20", () -> new Shape.Box(1, Double.NaN, 0)),
                of("azimuth of the box in degrees 400, expected -360 to 360", () -> new Shape.Box(1, 1, 400)),
                of(
                        "liquid depth in m 0, expected 0.1 to 20",
                        () -> new Tank(new Shape.UprightCylinder(1), 0, 0.2, StandsOn.LEGS, SampleDesign.outdoors())),
                of("exposure factor 2, expected 0 to 1.5", () -> new Place.Outdoors(Exposure.OPEN, 2, 0.4)),
                of("room temperature in C 60, expected -30 to 50", () -> new Place.Indoors(60)),
                of("conductivity of foam in W/mK 0, expected 0.002 to 500", () -> new Material("foam", 0, 30, 1400)),
                of("material is blank, expected a name", () -> new Material(" ", 1, 30, 1400)),
                of("thickness of foam in m 0, expected above 0 and up to 2", () -> new Layer(FOAM, 0, 1)),
                of("sub-nodes of foam 0, expected 1 to 50", () -> new Layer(FOAM, 0.1, 0)),
                of("wet film in W/m2K 0, expected 1 to 5000", () -> new Films(0, 10, 6, 4, 4, 7.7)),
                of("outer emissivity 1.1, expected 0 to 1", () -> new OuterFace(0.5, 1.1)),
                of("edge shape factor -1, expected 0 to 5", () -> new EnvelopeRules(0.1, -1, false, 0.5)),
                of(
                        "lid has no entry, expected at least one",
                        () -> new Envelope(
                                List.of(new Layer(FOAM, 0.1, 1)),
                                List.of(),
                                List.of(),
                                new OuterFace(0.5, 0.9),
                                new Films(100, 10, 6, 4, 4, 7.7),
                                new EnvelopeRules(0.1, 0.54, false, 0.5))),
                of("conductance of neck in W/K -1, expected 0 to 1000", () -> new Fitting.Stated("neck", -1)),
                of(
                        "section of legs in m2 0, expected above 0 and up to 1",
                        () -> new Fitting.Bar("legs", FOAM, 0, 1, 1)),
                of("count of legs 0, expected 1 to 1000", () -> new Fitting.Bar("legs", FOAM, 0.001, 1, 0)),
                of("pipe wall in m 0, expected above 0 and up to 0.2", () -> new Fitting.PipeWall(FOAM, 0)),
                of("pipe insulation in m -1, expected 0 to 1", () -> new Fitting.PipeInsulation(-1, 0.03)),
                of("outer film of a pipe in W/m2K 0, expected 0.1 to 100", () -> new Fitting.PipeFilm(0.6, 0)));
    }

    private static Stream<Arguments> feeding() {
        return Stream.of(
                of("total solids of x 1.2, expected 0 to 1", () -> new Feedstock("x", 1, 1.2, 0.8, 0.4, 0.2)),
                of("fixed temperature in C -50, expected -40 to 100", () -> new FeedTemperature.Fixed(-50)),
                of("daily dilution water in kg -1, expected 0 to 100000", () -> new DilutionWater(-1, AIR)),
                of("length of a window in s 0, expected above 0 and up to 86400", () -> new DailyWindow(0, 0)),
                of("start of a window in s 86400, expected 0 to 86399.99999999999", () -> new DailyWindow(86_400, 1)),
                of(
                        "effectiveness of the effluent exchanger 1.01, expected 0 to 1",
                        () -> new FeedHandling(4, 10, 1.01, true, 2)),
                of("freezing range in K 0, expected above 0 and up to 20", () -> new FeedHandling(4, 10, 0, true, 0)),
                of("feedstocks has no entry, expected at least one", () -> SampleDesign.feed(AIR, Optional.empty())),
                of("drive efficiency 0, expected above 0 and up to 1", () -> new Mixer(new Mixer.Given(1), 0, 0, 60)),
                of("mixer minutes per hour 61, expected 0 to 60", () -> new Mixer(new Mixer.Given(1), 1, 0, 61)),
                of("torque in N m -1, expected 0 to 100000", () -> new Mixer.Turning(1, -1)));
    }

    private static Stream<Arguments> heating() {
        return Stream.of(
                of("coil area in m2 0, expected above 0 and up to 100", () -> new Coil(0, 100, 60, 0)),
                of(
                        "eta0 1.2, expected 0 to 1",
                        () -> new Collector(1, plane(), 1.2, 3, 0, 7000, new Collector.Incidence(0.1, 0.9, 85))),
                of("incidence limit in degrees 91, expected 30 to 90", () -> new Collector.Incidence(0.1, 0.9, 91)),
                of("tilt in degrees 91, expected 0 to 90", () -> new Plane(91, OptionalDouble.empty(), SkyModel.PEREZ)),
                of(
                        "solar loop flow in kg/s 0, expected above 0 and up to 10",
                        () -> new SolarLoop(0, 3700, -20, 9000, 0.8, 12)),
                of(
                        "start difference 2 K, expected above the stop difference 2 K",
                        () -> new PumpControl(2, 2, 40, 1, 95)),
                of(
                        "heat capacity of collector and loop 0 J/K, expected at least 1 J/K",
                        () -> new SolarCircuit(
                                new Collector(0, plane(), 0.8, 3, 0, 7000, new Collector.Incidence(0.1, 0.9, 85)),
                                new SolarLoop(0.04, 3700, -20, 0, 0.8, 12),
                                new PumpControl(8, 2, 40, 1, 95),
                                SampleDesign.COIL,
                                110,
                                55)),
                of(
                        "backup efficiency 0, expected above 0 and up to 6",
                        () -> new BackupCircuit(
                                BackupSource.FUEL, 0, 1, DailySchedule.continuous(), new BackupCircuit.Immersed())),
                of("flow limit in C 99, expected 20 to 95", () -> new BackupCircuit.FlowTemperature(99, 5, 2)),
                of("backup pump in W -1, expected 0 to 5000", () -> new BackupCircuit.WaterLoop(0.05, -1)),
                of(
                        "water in the backup circuit in kg 0, expected 0.1 to 10000",
                        () -> new BackupCircuit.Circuit(
                                new BackupCircuit.FlowTemperature(50, 5, 2),
                                0,
                                0.3,
                                new BackupCircuit.WaterLoop(0.05, 15),
                                SampleDesign.COIL,
                                55)));
    }

    private static Stream<Arguments> rest() {
        return Stream.of(
                of(
                        "floor temperature in C 40, expected -10 to 36",
                        () -> new Control(36, 1, 40, 3, new Control.DailyChange(1, 2))),
                of("daily change to warn of in K 0.5, expected 1 to 20", () -> new Control.DailyChange(1, 0.5)),
                of(
                        "reference temperature 46 C, expected between 8 and 46 C",
                        () -> new Gas(46, 0.58, SampleDesign.CARDINAL, Optional.empty(), 0, 1440)),
                of("duty of air dosing 2, expected 0 to 1", () -> new AirDosing(1, 2, 2, 0.06)),
                of(
                        "density of the contents in kg/m3 100, expected 900 to 1300",
                        () -> new Contents(100, Optional.empty(), 1600)),
                of(
                        "total solids of the contents 0.6, expected 0 to 0.5",
                        () -> new Contents(1010, Optional.of(0.6), 1600)),
                of("amplitude of the ground in K -1, expected 0 to 50", () -> new GroundWave(10, -1, 20)),
                of("reflectance of the ground 2, expected 0 to 1", () -> new Ground(Optional.empty(), 0.05, 0.5, 2)),
                of("cloud factor 2, expected 0 to 1", () -> new Sky(1, 2, 10)),
                of("assumed relative humidity 0, expected 0.01 to 1", () -> new AssumedWeather(3, 0, 0.5)),
                of(
                        "most run-in in days 5, expected 10 to 3660",
                        () -> new RunIn(java.util.OptionalInt.empty(), 10, 3, 5)),
                of(
                        "currency is blank, expected a name",
                        () -> new Prices(0.3, 0.1, 0.1, "", new Prices.Carbon(0, 0), 2.5, new Prices.Outlay(0, 0, 15))),
                of("CO2 of fuel in kg/kWh 6, expected 0 to 5", () -> new Prices.Carbon(0, 6)));
    }

    private static Plane plane() {
        return new Plane(60, OptionalDouble.empty(), SkyModel.ISOTROPIC);
    }

    private static Arguments of(String message, Executable birth) {
        return Arguments.of(message, birth);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void saysWhatItRefuses(String message, Executable birth) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, birth).getMessage());
    }
}
