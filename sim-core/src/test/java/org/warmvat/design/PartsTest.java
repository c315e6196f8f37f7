package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Parts;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;
import org.warmvat.sun.SkyModel;

/** What the parts derive, against hand calculations. */
class PartsTest {

    @Test
    void cylinderAndBox() {
        Shape cylinder = new Shape.UprightCylinder(2);
        assertEquals(Math.PI, cylinder.planAreaM2(), 1e-15);
        assertEquals(2 * Math.PI, cylinder.perimeterM(), 1e-15);
        Shape box = new Shape.Box(3, 2, 0);
        assertEquals(6, box.planAreaM2());
        assertEquals(10, box.perimeterM());
        Tank tank = new Tank(box, 1.5, 0.5, StandsOn.GROUND, new Place.Indoors(12));
        assertEquals(9, tank.liquidVolumeM3());
        assertEquals(3, tank.headspaceVolumeM3());
        assertEquals(6, tank.innerPlanAreaM2());
        assertEquals(10, tank.innerPerimeterM());
    }

    @Test
    void onlyTheOpenAndTheShelteredSeeSky() {
        assertTrue(new Place.Outdoors(Exposure.OPEN, Optional.of(0.7), 0.4).seesSky());
        assertTrue(new Place.Outdoors(Exposure.SHELTERED, Optional.of(0.4), 0.4).seesSky());
        assertFalse(new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25).seesSky());
        assertEquals(0.25, Exposure.UNDER_ROOF.usualWindFactor());
    }

    /** 4 turns an hour at 60 N m: 2 pi x 4/3600 x 60 = 0.41888 W. */
    @Test
    void mixerPowerFromTorque() {
        Mixer mixer = new Mixer(new Mixer.Turning(4, 60), 0.2, 6, 15);
        assertEquals(0.41887902047863906, mixer.shaftW(), 1e-15);
        assertEquals(0.41887902047863906 / 0.2 + 6, mixer.electricW(), 1e-14);
        assertEquals(30, new Mixer(new Mixer.Given(30), 0.5, 0, 60).shaftW());
    }

    /** 100 W/m2K on 1 m2 with 0.0005 m2K/W: 100/1.05; standing still 60/1.03. */
    @Test
    void coilConductanceWithFouling() {
        assertEquals(100 / 1.05, SampleDesign.COIL.uaWPerK(true), 1e-12);
        assertEquals(60 / 1.03, SampleDesign.COIL.uaWPerK(false), 1e-12);
    }

    @Test
    void collectorFacesTheEquatorUnlessItSays() {
        Mounting plane = new Mounting(60, OptionalDouble.empty(), SkyModel.PEREZ);
        assertEquals(180, plane.azimuthDegAt(53));
        assertEquals(0, plane.azimuthDegAt(-42));
        assertEquals(95, new Mounting(60, OptionalDouble.of(95), SkyModel.PEREZ).azimuthDegAt(-42));
    }

    @Test
    void solarCircuitCapacities() {
        SolarCircuit solar = SampleDesign.solar(39.5);
        assertEquals(2 * 7000 + 9000, solar.capacityJPerK());
        assertEquals(0.04 * 3700, solar.loop().capacityRateWPerK());
    }

    @Test
    void feedAsOneStream() {
        Feed feed = SampleDesign.usualFeed();
        assertEquals(10, feed.feedstockKgPerDay());
        assertEquals(10, feed.waterKgPerDay());
        assertEquals(20, feed.totalKgPerDay());
        assertEquals((6 * 0.22 + 4 * 0.20) / 10, feed.feedstockTotalSolidsFraction(), 1e-15);
        assertEquals(6 * 0.22 * 0.88, SampleDesign.SCRAPS.volatileSolidsKgPerDay(), 1e-15);
        assertEquals(
                0,
                SampleDesign.feed(new FeedTemperature.Air(), Optional.empty(), SampleDesign.SCRAPS)
                        .waterKgPerDay());
    }

    @Test
    void mixturesOfWaterSolidsAndIce() {
        Contents contents = new Contents(1010, Optional.empty(), 1600, 0.6);
        assertEquals(4186, contents.specificHeatJPerKgK(0));
        assertEquals(1600, contents.specificHeatJPerKgK(1));
        assertEquals(0.9 * 2100 + 0.1 * 1600, contents.frozenSpecificHeatJPerKgK(0.1), 1e-12);
    }

    @Test
    void runInFollowsTheTimeConstantWithinItsBounds() {
        RunIn usual = new RunIn.ByTimeConstants(10, 3, 90);
        double day = DailyWindow.DAY_S;
        assertEquals(10, usual.daysFor(1 * day));
        assertEquals(31, usual.daysFor(10.1 * day), "30.3 days are rounded up");
        assertEquals(90, usual.daysFor(100 * day));
        assertEquals(0, new RunIn.Days(0).daysFor(100 * day));
        assertEquals(200, new RunIn.Days(200).daysFor(day));
    }

    @Test
    void layersKnowTheirResistanceAndWhetherTheyInsulate() {
        Layer foam = new Layer(new Material("pir_foam", 0.027, 32, 1400), 0.09, 3);
        Layer timber = new Layer(new Material("timber", 0.13, 500, 1600), 0.02, 1);
        EnvelopeRules rules = new EnvelopeRules(0.1, 3, 0.54, false, 0.5);
        assertEquals(0.09 / 0.027, foam.planeResistanceM2KPerW(), 1e-12);
        assertEquals(44_800, foam.material().heatCapacityJPerM3K());
        assertTrue(rules.isInsulation(foam));
        assertFalse(rules.isInsulation(timber));
    }

    /** Of two choices there can be but one: neither number is left out in silence. */
    @Test
    void numbersOfTwoChoicesAreRefused() {
        Map<String, Double> both = new LinkedHashMap<>();
        both.put("control.floor_c", 33.0);
        both.put("control.floor_below_setpoint_k", 2.0);
        assertTrue(assertThrows(Refused.class, () -> Design.usual().with(both))
                .getMessage()
                .contains("has no place beside control."));
    }

    @Test
    void aComponentIsExchangedByItsName() {
        assertEquals(
                List.of(), Parts.component(Design.usual(), "spells", List.of()).spells());
        assertEquals("x", Parts.component(Design.usual(), "title", "x").title());
        assertThrows(IllegalArgumentException.class, () -> Parts.component(Design.usual(), "nothing", 1));
    }
}
