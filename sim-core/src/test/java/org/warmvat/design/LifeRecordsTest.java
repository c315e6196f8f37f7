package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Exact: what shelter, holder, uses and hygienisation say of themselves, and what they refuse. */
class LifeRecordsTest {

    private static Shelter tunnel() {
        return new Shelter(
                ShelterKind.POLYTUNNEL_SINGLE,
                new Shelter.Size(16, 42, 32),
                new Shelter.Cover(6.5, 0.75, 0),
                new Shelter.Airing(1, 0.2, 0.4, 30, 20),
                0.5,
                640);
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
        assertEquals(2 * holder.fullNm3(), holder.withUsefulM3(4).fullNm3(), 1e-12);
        refuses(
                "reserve and restart share of the gas holder together 1.1, expected at most 1",
                () -> new GasHolder(2, 0.5, 0.5, 0.6, 2));
        assertThrows(IllegalArgumentException.class, () -> new GasHolder(2, 0.5, 0, 0.2, 2));
        assertThrows(IllegalArgumentException.class, () -> new GasHolder(2, 0.5, 0.05, 1, 2));
    }

    @Test
    void usesNeedAHolderAndNames() {
        GasUse cooker =
                new GasUse("cooker", GasUse.Kind.BURNER, 1.8, 0.55, DailySchedule.continuous(), Set.of(1, 2, 12));
        refuses("uses of gas, expected a gas holder", () -> gas(Optional.empty(), List.of(cooker)));
        Optional<GasHolder> holder = Optional.of(new GasHolder(2, 0.5, 0.05, 0.2, 2));
        refuses("gas use named cooker twice, expected each name once", () -> gas(holder, List.of(cooker, cooker)));
        refuses(
                "months of lamp, expected numbers 1 to 12",
                () -> new GasUse("lamp", GasUse.Kind.LAMP, 1, 0.5, DailySchedule.continuous(), Set.of(0)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new GasUse("lamp", GasUse.Kind.LAMP, 1, 1.01, DailySchedule.continuous(), Set.of(1)));
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
                Optional.of(Set.of("scraps")));
        refuses(
                "hygienisation of scraps, expected a feedstock's name",
                () -> new Feed(
                        List.of(SampleDesign.GREENS),
                        new FeedTemperature.Air(),
                        Optional.empty(),
                        DailySchedule.continuous(),
                        new FeedHandling(4, 10, 0, true, 2),
                        Optional.of(scrapsOnly)));
    }

    @Test
    void tablesAndTwelveValues() {
        refuses(
                "shade by month has 11 values, expected twelve",
                () -> new Shading(org.warmvat.sun.Horizon.OPEN, java.util.Collections.nCopies(11, 0.0)));
        refuses(
                "first angle of the incidence table 10.0, expected 0",
                () -> new BeamModifier.Table(List.of(10.0, 90.0), List.of(1.0, 1.0)));
        refuses(
                "values of the incidence table: 3, expected 2 as of angles",
                () -> new BeamModifier.Table(List.of(0.0, 90.0), List.of(1.0, 1.0, 1.0)));
        refuses(
                "a1 - 3 a3 -0.5 W/m2K, expected above 0: the loss in still air",
                () -> new Collector(
                        2,
                        new Plane(60, OptionalDouble.empty(), SkyModel.ISOTROPIC),
                        0.8,
                        2.5,
                        0.01,
                        7000,
                        new Collector.Incidence(0.1, 0.9, 85),
                        new WindAndSkyLoss(1, 0, 0, 0.5),
                        Shading.NONE));
        refuses(
                "sun transmittance and absorptance of the cover together 1.5, expected at most 1",
                () -> new Shelter.Cover(6, 0.75, 0.75));
    }
}
