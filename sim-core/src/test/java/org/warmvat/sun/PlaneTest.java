package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Exact: limits of the tilted plane. */
class PlaneTest {
    private static final SunHour SUN = new SunHour(1, 50, 170, 1361);
    private static final Irradiance LIGHT = new Irradiance(700 * Math.cos(Math.toRadians(50)) + 80, 700, 80);

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void aLevelPlaneReceivesTheGlobal(SkyModel model) {
        TiltedIrradiance level = new Plane(0, 123).irradiance(model, 0.2, LIGHT, SUN, SkyView.OPEN);
        assertEquals(LIGHT.globalWPerM2(), level.totalWPerM2(), 1e-9);
        assertEquals(50, level.incidenceDeg(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void aPlaneFacingDownSeesOnlyTheGround(SkyModel model) {
        TiltedIrradiance down = new Plane(180, 0).irradiance(model, 0.2, LIGHT, SUN, SkyView.OPEN);
        assertEquals(0, down.beamWPerM2());
        assertEquals(0, down.skyDiffuseWPerM2(), 1e-9);
        assertEquals(0.2 * LIGHT.globalWPerM2(), down.groundWPerM2(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void nightAndOvercastAreFinite(SkyModel model) {
        Plane plane = new Plane(60, 180);
        TiltedIrradiance night = plane.irradiance(model, 0.2, Irradiance.NONE, SunHour.DARK, SkyView.OPEN);
        assertEquals(0, night.totalWPerM2());
        assertEquals(90, night.incidenceDeg(), 1e-9);
        TiltedIrradiance moon = plane.irradiance(model, 0.2, new Irradiance(3, 0, 3), SunHour.DARK, SkyView.OPEN);
        assertEquals(3 * 0.75 + 0.2 * 3 * 0.25, moon.totalWPerM2(), 1e-9);
        TiltedIrradiance beamOnly = plane.irradiance(model, 0.2, new Irradiance(400, 622, 0), SUN, SkyView.OPEN);
        assertEquals(0, beamOnly.skyDiffuseWPerM2());
    }

    /** A thin slice of sunlight: models work on the means of the sunlit part, so that halving the hour halves the result. */
    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void halfAnHourOfTheSameSkyGivesHalf(SkyModel model) {
        Plane plane = new Plane(60, 200);
        double whole = plane.irradiance(model, 0.2, LIGHT, SUN, SkyView.OPEN).totalWPerM2();
        Irradiance half = new Irradiance(LIGHT.globalWPerM2() / 2, LIGHT.beamWPerM2() / 2, LIGHT.diffuseWPerM2() / 2);
        SunHour halfSun = new SunHour(0.5, 50, 170, 1361);
        assertEquals(
                whole / 2,
                plane.irradiance(model, 0.2, half, halfSun, SkyView.OPEN).totalWPerM2(),
                1e-9);
    }

    @Test
    void hayDaviesGoesFromIsotropicToAllBeamwards() {
        Plane plane = new Plane(60, 170);
        Irradiance overcast = new Irradiance(80, 0, 80);
        assertEquals(
                80 * plane.skyView(),
                plane.irradiance(SkyModel.HAY_DAVIES, 0, overcast, SUN, SkyView.OPEN)
                        .skyDiffuseWPerM2(),
                1e-12);
        Irradiance beyondTheAtmosphere = new Irradiance(900, 2000, 80);
        assertEquals(
                80 * plane.cosIncidence(SUN) / SUN.cosZenith(),
                plane.irradiance(SkyModel.HAY_DAVIES, 0, beyondTheAtmosphere, SUN, SkyView.OPEN)
                        .skyDiffuseWPerM2(),
                1e-12);
    }

    /** At 88 degrees of zenith the division is by cos 85. */
    @Test
    void lowSunIsGuarded() {
        SunHour low = new SunHour(1, 88, 180, 1361);
        double a = 500 / 1361.0;
        Plane plane = new Plane(90, 180);
        double expected = 40 * (a * plane.cosIncidence(low) / Math.cos(Math.toRadians(85)) + (1 - a) * 0.5);
        Irradiance light = new Irradiance(57, 500, 40);
        assertEquals(
                expected,
                plane.irradiance(SkyModel.HAY_DAVIES, 0, light, low, SkyView.OPEN)
                        .skyDiffuseWPerM2(),
                1e-9);
    }

    @Test
    void closingTheThird() {
        assertEquals(
                500,
                Irradiance.ofGlobalAndDiffuse(500 * SUN.cosZenith() + 90, 90, SUN)
                        .beamWPerM2(),
                1e-9);
        assertEquals(
                90,
                Irradiance.ofGlobalAndBeam(500 * SUN.cosZenith() + 90, 500, SUN).diffuseWPerM2(),
                1e-9);
        assertEquals(
                500 * SUN.cosZenith() + 90,
                Irradiance.ofBeamAndDiffuse(500, 90, SUN).globalWPerM2(),
                1e-9);
        assertEquals(0, Irradiance.ofGlobalAndBeam(10, 500, SUN).diffuseWPerM2());
        Irradiance tooBright = Irradiance.ofGlobalAndDiffuse(1200, 20, SUN);
        assertEquals(1361, tooBright.beamWPerM2());
        assertEquals(1200, tooBright.beamWPerM2() * SUN.cosZenith() + tooBright.diffuseWPerM2(), 1e-9);
    }

    @Test
    void refusesImpossibleAngles() {
        assertThrows(IllegalArgumentException.class, () -> new Plane(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Plane(30, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Observer(91, 0, 0, 1000, 10));
        assertThrows(IllegalArgumentException.class, () -> new Irradiance(-1, 0, 0));
        assertTrue(new SunHour(1, 89, 0, 1361).beamCounts());
    }
}
