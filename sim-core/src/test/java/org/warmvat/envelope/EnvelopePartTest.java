package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.meter.Around;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/**
 * The envelope by itself around a slurry held at 36 °C, settled in steady weather: every outer face loses its conductance times the
 * difference to what it meets (equations 2.3 to 2.5, 2.8). Air 5 °C, sky -20 °C, wind 2 m/s, even light of 400 W/m2.
 */
class EnvelopePartTest {
    private static final double HELD_J_PER_K = 1e14;
    private static final double AIR_C = 5;
    private static final double SKY_C = -20;
    private static final double LIGHT = 400;
    private static final double RADIATION = 4 * 0.9 * 5.670374419e-8 * Math.pow(278.15, 3);

    private static Weather weather() {
        Map<Quantity, double[]> columns = InventedWeather.columns(72, hour -> AIR_C);
        columns.put(Quantity.WIND, InventedWeather.filled(72, 2));
        columns.put(Quantity.LONGWAVE, InventedWeather.filled(72, InventedWeather.blackSkyWPerM2(SKY_C)));
        columns.put(Quantity.GLOBAL, InventedWeather.filled(72, LIGHT));
        columns.put(Quantity.DIFFUSE, InventedWeather.filled(72, LIGHT));
        columns.put(Quantity.BEAM, InventedWeather.filled(72, 0));
        return InventedWeather.of(columns);
    }

    /** Loss in the last hour, W. */
    private static double lossW(OnePart run, String meter) {
        return -run.byHour(meter)[71] / 3600;
    }

    private static OnePart run(TankPlan plan) {
        var design = plan.build();
        return OnePart.run(
                design,
                HELD_J_PER_K,
                weather(),
                36,
                (surroundings, around, assembly) -> new EnvelopePart(
                        design,
                        new TankSun(design, surroundings.weather()),
                        surroundings,
                        Around.uncounted(around),
                        assembly),
                new ExponentialEngine());
    }

    /** Film and equivalent temperature of a face: wind factor, sky view, sun on it. */
    private static double equivalentC(double windFactor, double skyView, double sun) {
        double hc = 4 + 4 * windFactor * 2;
        double radiantC = skyView * SKY_C + (1 - skyView) * AIR_C;
        return (hc * AIR_C + RADIATION * radiantC + 0.5 * sun) / (hc + RADIATION);
    }

    private static double film(double windFactor) {
        return 4 + 4 * windFactor * 2 + RADIATION;
    }

    private static double throughPlane(double innerFilm, double foamM, double areaM2, double outerFilm) {
        return areaM2 / (1 / innerFilm + 0.002 / 17 + foamM / 0.027 + 0.0008 / 160 + 1 / outerFilm);
    }

    private static double throughWall(double innerFilm, double heightM, double outerFilm) {
        double perHeight = 1 / (innerFilm * Math.PI)
                + Math.log(0.502 / 0.5) / (2 * Math.PI * 17)
                + Math.log(0.592 / 0.502) / (2 * Math.PI * 0.027)
                + Math.log(0.5928 / 0.592) / (2 * Math.PI * 160)
                + 1 / (outerFilm * 2 * Math.PI * 0.5928);
        return heightM / perHeight;
    }

    /** Walls see half the sky and half of the even light with a fifth of it from the ground: 200 + 40 W/m2; the floor nothing. */
    @Test
    void wallAndFloorOutOfDoors() {
        OnePart run = run(new TankPlan());
        double wallMeetsC = equivalentC(0.4, 0.5, 240);
        assertEquals(throughWall(100, 1.15, film(0.4)) * (36 - wallMeetsC), lossW(run, EnvelopePart.WALL), 1e-4);
        assertEquals(
                throughPlane(100, 0.09, Math.PI / 4, film(0.4)) * (36 - AIR_C), lossW(run, EnvelopePart.FLOOR), 1e-4);
    }

    /** Lid, dry wall and edge share one headspace: its temperature from the star of four conductances. */
    @Test
    void lidDryWallAndEdgesMeetInTheHeadspace() {
        OnePart run = run(new TankPlan());
        double surface = 10 * Math.PI / 4;
        double lid = throughPlane(6, 0.11, Math.PI / 4, film(0.4));
        double lidMeetsC = equivalentC(0.4, 1, LIGHT);
        double dryWall = throughWall(6, 0.25, film(0.4));
        double wallMeetsC = equivalentC(0.4, 0.5, 240);
        double edge = 0.54 * 0.027 * Math.PI;
        double headspaceC =
                (surface * 36 + lid * lidMeetsC + (dryWall + edge) * wallMeetsC) / (surface + lid + dryWall + edge);
        assertEquals(lid * (headspaceC - lidMeetsC), lossW(run, EnvelopePart.LID), 1e-4);
        assertEquals(dryWall * (headspaceC - wallMeetsC), lossW(run, EnvelopePart.DRY_WALL), 1e-4);
        assertEquals(edge * (36 - wallMeetsC) + edge * (headspaceC - wallMeetsC), lossW(run, EnvelopePart.EDGES), 1e-4);
    }

    @Test
    void underARoofThereIsNeitherSunNorSky() {
        TankPlan plan = new TankPlan();
        plan.place = new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25);
        OnePart run = run(plan);
        assertEquals(throughWall(100, 1.15, film(0.25)) * (36 - AIR_C), lossW(run, EnvelopePart.WALL), 1e-4);
        assertEquals(
                throughPlane(100, 0.09, Math.PI / 4, film(0.25)) * (36 - AIR_C), lossW(run, EnvelopePart.FLOOR), 1e-4);
    }

    @Test
    void aRoomIsAllThatAnIndoorTankMeets() {
        TankPlan plan = new TankPlan().indoors(14);
        OnePart run = run(plan);
        assertEquals(throughWall(100, 1.15, 7.7) * (36 - 14), lossW(run, EnvelopePart.WALL), 1e-4);
        assertEquals(throughPlane(100, 0.09, Math.PI / 4, 7.7) * (36 - 14), lossW(run, EnvelopePart.FLOOR), 1e-4);
    }

    /** On the ground (8 °C here) the floor's outer resistance is that of the soil, 0.5 m2K/W, with or without walls in a room. */
    @Test
    void aFloorOnTheGroundMeetsTheSoil() {
        TankPlan plan = new TankPlan();
        plan.standsOn = StandsOn.GROUND;
        assertEquals(throughPlane(100, 0.09, Math.PI / 4, 2) * (36 - 8), lossW(run(plan), EnvelopePart.FLOOR), 1e-4);
        plan.indoors(14);
        assertEquals(throughPlane(100, 0.09, Math.PI / 4, 2) * (36 - 8), lossW(run(plan), EnvelopePart.FLOOR), 1e-4);
    }

    /** A box has plane walls of its perimeter times the height. */
    @Test
    void aBoxHasPlaneWalls() {
        TankPlan plan = new TankPlan();
        plan.shape = new Shape.Box(1.2, 0.8, 30);
        assertEquals(
                throughPlane(100, 0.09, 4 * 1.15, film(0.4)) * (36 - equivalentC(0.4, 0.5, 240)),
                lossW(run(plan), EnvelopePart.WALL),
                1e-4);
    }

    /** As warm outside as inside nothing flows at all. */
    @Test
    void withoutADifferenceNothingFlows() {
        var design = new TankPlan().build();
        OnePart run = OnePart.run(
                HELD_J_PER_K,
                InventedWeather.steady(36, 30),
                36,
                (surroundings, around, assembly) -> new EnvelopePart(
                        design,
                        new TankSun(design, surroundings.weather()),
                        surroundings,
                        Around.uncounted(around),
                        assembly),
                new ReferenceEngine());
        assertEquals(0, run.total(EnvelopePart.WALL), 1e-3);
        assertEquals(0, run.total(EnvelopePart.LID), 1e-3);
    }
}
