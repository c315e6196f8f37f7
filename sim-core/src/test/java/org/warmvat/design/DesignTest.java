package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Shape;
import org.warmvat.design.tank.Tank;

/** What follows from a design alone, against hand calculations. */
class DesignTest {

    private static final Contents USUAL = new Contents(1010, Optional.empty(), 1600, 0.6);

    private static Design usual() {
        return SampleDesign.design(
                SampleDesign.tank(SampleDesign.outdoors()), SampleDesign.usualFeed(), SampleDesign.gas(), USUAL);
    }

    @Test
    void retentionTimeIsContentsOverWholeFeed() {
        // pi/4 x 1.15 m x 1010 kg/m3 / 20 kg/day
        assertEquals(45.6119983393068, usual().retentionDays(), 1e-10);
    }

    /** Hand: k = k_ref x 0.975124/0.947872; digested k HRT/(1 + k HRT) of 1.1616 and 0.68 kg VS; 2.12 kg TS in 20 kg. */
    @Test
    void solidsOfTheContentsAreTheFeedsLessWhatIsDigested() {
        assertEquals(0.02744818562189096, usual().totalSolidsFraction(), 1e-14);
        assertEquals(4115.018991981789, usual().contentsSpecificHeatJPerKgK(), 1e-9);
        assertEquals(3753884.7885697866, usual().contentsHeatCapacityJPerK(), 1e-6);
    }

    @Test
    void nothingIsDigestedWithoutGas() {
        Design design = SampleDesign.design(
                SampleDesign.tank(SampleDesign.outdoors()), SampleDesign.usualFeed(), Optional.empty(), USUAL);
        assertEquals((6 * 0.22 + 4 * 0.20) / 20, design.totalSolidsFraction(), 1e-15);
        assertEquals(0, design.steadyDigestedFraction(SampleDesign.SCRAPS));
    }

    @Test
    void givenSolidsWin() {
        Design design = SampleDesign.design(
                SampleDesign.tank(SampleDesign.outdoors()),
                SampleDesign.usualFeed(),
                SampleDesign.gas(),
                new Contents(1010, Optional.of(0.08), 1600, 0.6));
        assertEquals(0.08, design.totalSolidsFraction());
        assertEquals(0.92 * 4186 + 0.08 * 1600, design.contentsSpecificHeatJPerKgK(), 1e-9);
    }

    @Test
    void withoutFeedTheContentsCountAsWaterAndStayForever() {
        Feed none = SampleDesign.feed(
                new FeedTemperature.Air(),
                Optional.empty(),
                new Feedstock(
                        Optional.empty(),
                        "nothing",
                        0,
                        0.22,
                        0.88,
                        MethanePotential.ofNumber(0.42),
                        DigestionRate.ofNumber(0.2)));
        Design design =
                SampleDesign.design(SampleDesign.tank(SampleDesign.outdoors()), none, SampleDesign.gas(), USUAL);
        assertEquals(Double.POSITIVE_INFINITY, design.retentionDays());
        assertEquals(0, design.totalSolidsFraction());
        assertEquals(1, design.steadyDigestedFraction(SampleDesign.SCRAPS), "without washout all is digested");
    }

    @Test
    void groundIsUsedByFloorFeedOrWater() {
        Tank onGround = new Tank(new Shape.UprightCylinder(1), 1, 0.2, StandsOn.GROUND, SampleDesign.outdoors());
        Tank onLegs = SampleDesign.tank(SampleDesign.outdoors());
        Feed byAir = SampleDesign.usualFeed();
        Feed byGround = SampleDesign.feed(new FeedTemperature.Ground(), Optional.empty(), SampleDesign.SCRAPS);
        Feed waterByGround = SampleDesign.feed(
                new FeedTemperature.Air(),
                Optional.of(new DilutionWater(1, new FeedTemperature.Ground())),
                SampleDesign.SCRAPS);
        assertTrue(SampleDesign.design(onGround, byAir, Optional.empty(), USUAL).usesGround());
        assertTrue(
                SampleDesign.design(onLegs, byGround, Optional.empty(), USUAL).usesGround());
        assertTrue(SampleDesign.design(onLegs, waterByGround, Optional.empty(), USUAL)
                .usesGround());
        assertFalse(SampleDesign.design(onLegs, byAir, Optional.empty(), USUAL).usesGround());
    }

    @Test
    void refusesFeedFromARoomThatIsNotThere() {
        Feed byRoom = SampleDesign.feed(new FeedTemperature.Room(), Optional.empty(), SampleDesign.SCRAPS);
        assertRefused(
                "feed.temperature room, but the tank is not in a room, expected place: indoors with room_c, or air, ground or {fixed_c: number}",
                () -> SampleDesign.design(SampleDesign.tank(SampleDesign.outdoors()), byRoom, Optional.empty(), USUAL));
        assertTrue(SampleDesign.design(SampleDesign.tank(new Place.Indoors(15)), byRoom, Optional.empty(), USUAL)
                .tank()
                .place()
                .isIndoors());
    }

    @Test
    void refusesOwnGasWithoutGas() {
        assertRefused(
                "backup.source own_gas, but no gas is computed, expected a gas block, or electric or fuel",
                () -> SampleDesign.design(
                        SampleDesign.tank(SampleDesign.outdoors()),
                        SampleDesign.usualFeed(),
                        Optional.empty(),
                        USUAL,
                        Optional.empty(),
                        Optional.of(SampleDesign.backup(BackupSource.OWN_GAS))));
    }

    @Test
    void refusesASolarLimitBelowTheSetpoint() {
        assertRefused(
                "solar.tank_high_limit_c 35.5, expected control.setpoint_c, 36 C, or above",
                () -> SampleDesign.design(
                        SampleDesign.tank(SampleDesign.outdoors()),
                        SampleDesign.usualFeed(),
                        Optional.empty(),
                        USUAL,
                        Optional.of(SampleDesign.solar(35.5)),
                        Optional.empty()));
    }

    private static void assertRefused(String message, org.junit.jupiter.api.function.Executable birth) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, birth).getMessage());
    }

    /** One axis for all insulation together, also where layers are lists. */
    @Test
    void insulationOfListedLayersIsSetInWallLidAndBaseAlike() {
        Design listed = Design.of(
                org.warmvat.design.keys.Reader.tree(
                        "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2}, envelope: {wall: [{material: steel, thickness_mm: 2},"
                                + " {material: pir_foam, thickness_mm: 90}], lid: [{material: pir_foam, thickness_mm: 110}],"
                                + " floor: [{material: steel, thickness_mm: 3}, {material: xps_foam, thickness_mm: 50}]},"
                                + " control: {setpoint_c: 36}, feed: {feedstocks: [{kg_per_day: 10}]}}"),
                org.warmvat.design.keys.Findings.strict());
        Design changed = listed.with("envelope.insulation_mm", 140);
        assertEquals(0.14, changed.envelope().wall().get(1).thicknessM(), 1e-12);
        assertEquals(0.14, changed.envelope().lid().get(0).thicknessM(), 1e-12);
        assertEquals(0.14, changed.envelope().floor().get(1).thicknessM(), 1e-12);
        assertEquals(0.002, changed.envelope().wall().get(0).thicknessM(), 1e-12);
    }
}
