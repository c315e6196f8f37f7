package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.BeamModifier;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.Mounting;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.ShelterKind;
import org.warmvat.sun.SkyModel;

/** Exact: what shelter, holder, uses and hygienisation say of themselves, and what they refuse. */
class LifeRecordsTest {

    private static Shelter tunnel() {
        return new Shelter(
                ShelterKind.POLYTUNNEL_SINGLE,
                new Shelter.Size(16, 42, 32),
                new Shelter.Cover(6.5, 0.75, 0),
                new Shelter.Airing(1, 0.2, 0.4, 30, 20),
                0.5,
                Optional.of(640.0));
    }

    private static Hygienisation hygienisation(double recovery, OptionalDouble coolToC) {
        return new Hygienisation(
                new Hygienisation.Heat(70, 1, 1, coolToC), recovery, BackupSource.ELECTRIC, 1, 2, Optional.empty());
    }

    private static void refuses(String message, Executable made) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, made).getMessage());
    }

    @Test
    void aShelterByItsSizes() {
        assertEquals(1200 * 32 + 640_000, tunnel().capacityJPerK());
        assertEquals(273, tunnel().coverWPerK());
        assertEquals(32, tunnel().groundWPerK());
        assertEquals(1200 * 32 / 3600.0, tunnel().airWPerKPerChange());
    }

    /** Shut to 30 °C, half open at 32.5, wide from 35; never to warmer air; wind that airs more than opening leaves nothing to open. */
    @Test
    void aTunnelIsOpenedOverFiveKelvin() {
        Shelter.Airing airing = tunnel().airing();
        double shut = airing.shutPerH(2);
        assertEquals(1.4, shut, 1e-12);
        assertEquals(1.4, airing.perH(shut, 30, 20), 1e-12);
        assertEquals(1.4 + 18.6 / 2, airing.perH(shut, 32.5, 20), 1e-12);
        assertEquals(20, airing.perH(shut, 50, 20), 1e-12);
        assertEquals(1.4, airing.perH(shut, 40, 40), 1e-12);
        assertEquals(25, airing.perH(25, 50, 20), 1e-12);
        assertEquals(1.4, new Shelter.Airing(1, 0.2, 0.4, Double.POSITIVE_INFINITY, 20).perH(shut, 60, 20), 1e-12);
    }

    /** 2 m3 at 15 °C and 2 kPa over hold 2 x 273.15/288.15 x 103.325/101.325 Nm3. */
    @Test
    void aHolderInNormalCubicMetres() {
        GasHolder holder = new GasHolder(2, 0.5, 0.05, 0.2, 2);
        assertEquals(1.9333095, holder.fullNm3(), 5e-7);
        refuses(
                "reserve_share 0.6, expected with restart_share together at most 1",
                () -> new GasHolder(2, 0.5, 0.5, 0.6, 2));
        assertThrows(IllegalArgumentException.class, () -> new GasHolder(2, 0.5, 0, 0.2, 2));
        assertThrows(IllegalArgumentException.class, () -> new GasHolder(2, 0.5, 0.05, 1, 2));
    }

    @Test
    void usesNeedAHolderAndNames() {
        GasUse cooker = new GasUse(
                "cooker",
                GasUse.Kind.BURNER,
                1.8,
                new GasUse.Whole(0.55),
                DailySchedule.continuous(),
                List.of(1, 2, 12));
        refuses("uses need a gas holder, expected a block holder", () -> gas(Optional.empty(), List.of(cooker)));
        Optional<GasHolder> holder = Optional.of(new GasHolder(2, 0.5, 0.05, 0.2, 2));
        refuses("uses have a name twice, expected each once", () -> gas(holder, List.of(cooker, cooker)));
        refuses(
                "months[0] 0, expected a whole number, 1 to 12",
                () -> new GasUse(
                        "lamp", GasUse.Kind.LAMP, 1, new GasUse.Whole(0.5), DailySchedule.continuous(), List.of(0)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new GasUse(
                        "lamp", GasUse.Kind.LAMP, 1, new GasUse.Whole(1.01), DailySchedule.continuous(), List.of(1)));
    }

    private static Gas gas(Optional<GasHolder> holder, List<GasUse> uses) {
        return new Gas(35, 0.58, SampleDesign.CARDINAL, Optional.empty(), 0, 1440, holder, uses, Optional.empty());
    }

    /** Without recovery it enters hot; recovery cools it; cooling further is free, warming by it is not possible. */
    @Test
    void aBatchEntersAsRecoveryAndCoolingLeaveIt() {
        OptionalDouble none = OptionalDouble.empty();
        assertEquals(70, hygienisation(0, none).entersC(10));
        assertEquals(70 - 0.5 * 60, hygienisation(0.5, none).entersC(10), 1e-12);
        assertEquals(70 - 0.5 * 70, hygienisation(0.5, none).entersC(-5), 1e-12);
        assertEquals(38, hygienisation(0, OptionalDouble.of(38)).entersC(10));
        assertEquals(40, hygienisation(0.5, OptionalDouble.of(60)).entersC(10), 1e-12);
        assertEquals(25, hygienisation(0, OptionalDouble.of(20)).entersC(25));
        assertEquals(2 * 60 * 7200.0, hygienisation(0, none).lossJPerDay(10), 1e-9);
    }

    @Test
    void aHeatedFeedstockIsOneOfTheFeedstocks() {
        Hygienisation scrapsOnly = new Hygienisation(
                new Hygienisation.Heat(70, 1, 1, OptionalDouble.empty()),
                0,
                BackupSource.ELECTRIC,
                1,
                0,
                Optional.of(List.of("scraps")));
        refuses(
                "hygienisation.applies_to \"scraps\" is none of the feedstocks, expected garden greens",
                () -> new Feed(
                        List.of(SampleDesign.GREENS),
                        new FeedTemperature.Air(),
                        Optional.empty(),
                        new Feed.AllDay(),
                        new FeedHandling(4, 10, 0, true, 2),
                        Optional.of(scrapsOnly)));
    }

    @Test
    void tablesAndTwelveValues() {
        refuses(
                "shade_by_month has 11 values, expected twelve or none",
                () -> new Shading(List.of(), java.util.Collections.nCopies(11, 0.0)));
        refuses(
                "angles_deg expected to rise from 0",
                () -> new BeamModifier.Table(List.of(10.0, 90.0), List.of(1.0, 1.0)));
        refuses(
                "values has 3 values, expected 2 as of angles",
                () -> new BeamModifier.Table(List.of(0.0, 90.0), List.of(1.0, 1.0, 1.0)));
        refuses(
                "a3_j_m3k 1, expected below a third of a1_w_m2k, 2.5: the loss in still air",
                () -> new Collector(
                        2,
                        new Mounting(60, OptionalDouble.empty(), SkyModel.ISOTROPIC),
                        0.8,
                        2.5,
                        0.01,
                        7000,
                        new Collector.Incidence(new BeamModifier.Formula(0.1, 85), OptionalDouble.of(0.9)),
                        new WindAndSkyLoss(
                                1, 0, 0, 0.5, new WindAndSkyLoss.Omitted(Optional.empty(), Optional.empty())),
                        new Shading.Own(Optional.empty(), Optional.empty())));
        refuses(
                "cover_absorptance and sun_transmittance together 1.5, expected at most 1",
                () -> new Shelter.Cover(6, 0.75, 0.75));
    }
}
