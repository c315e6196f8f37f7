package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Exact: the line, its share of the sky in closed form, and what it takes from planes and faces (equation 13.1). */
class HorizonTest {

    private static final SunHour SUN = new SunHour(1, 50, 170, 1361);
    private static final Irradiance LIGHT = new Irradiance(700 * Math.cos(Math.toRadians(50)) + 80, 700, 80);

    private static Horizon ring(double elevationDeg) {
        return new Horizon(List.of(new Horizon.Point(77, elevationDeg)));
    }

    private static Horizon of(double... pairs) {
        List<Horizon.Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(new Horizon.Point(pairs[i], pairs[i + 1]));
        }
        return new Horizon(points);
    }

    @Test
    void theLineIsStraightBetweenItsPointsRoundTheCircle() {
        Horizon line = of(280, 6, 90, 5, 185, 24);
        assertEquals(5, line.elevationDeg(90));
        assertEquals(14.5, line.elevationDeg(137.5), 1e-12);
        assertEquals(24, line.elevationDeg(185 - 360), 1e-12);
        assertEquals(6 - 80.0 / 170, line.elevationDeg(0), 1e-12);
        assertEquals(6 - 80.0 / 170, line.elevationDeg(360), 1e-12);
        assertEquals(12, ring(12).elevationDeg(300), 1e-12);
        assertEquals(0, Horizon.OPEN.elevationDeg(10));
        assertTrue(of(10, 0, 300, 0).isOpen());
    }

    @Test
    void anAzimuthStandsThereOnce() {
        assertEquals(
                "azimuth of the horizon 0.0 stands there twice, expected each azimuth once (360 is 0)",
                assertThrows(IllegalArgumentException.class, () -> of(0, 5, 360, 5))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> of(10, 90));
        assertThrows(IllegalArgumentException.class, () -> of(361, 5));
    }

    /** Constant ring of height h: a level plane keeps cos² h. */
    @Test
    void aRingLeavesALidTheSquareOfItsCosine() {
        for (double h : new double[] {0.5, 10, 45, 80}) {
            double cosine = Math.cos(Math.toRadians(h));
            assertEquals(cosine * cosine, ring(h).lidSkyFactor(), 1e-12);
        }
        assertEquals(1, ring(0).lidSkyFactor());
        assertEquals(1, Horizon.OPEN.wallSkyFactor());
    }

    /** A wall behind a ring: 1 - (2h + sin 2h)/pi, from the closed form in elevation; so does a plane of any slope by brute force. */
    @Test
    void aRingBeforeAWall() {
        double h = Math.toRadians(20);
        assertEquals(1 - (2 * h + Math.sin(2 * h)) / Math.PI, ring(20).wallSkyFactor(), 1e-6);
        Horizon line = of(90, 5, 185, 24, 280, 6);
        for (double tilt : new double[] {0, 30, 60, 90}) {
            assertEquals(bruteForce(line, tilt, 200), line.skyFactor(new Plane(tilt, 200)), 2e-4, "tilt " + tilt);
        }
    }

    /** Sum over cells of a quarter of a degree of what a plane sees. */
    private static double bruteForce(Horizon line, double tiltDeg, double azimuthDeg) {
        double above = 0;
        double all = 0;
        Plane plane = new Plane(tiltDeg, azimuthDeg);
        for (double azimuth = 0.125; azimuth < 360; azimuth += 0.25) {
            for (double elevation = 0.125; elevation < 90; elevation += 0.25) {
                double seen = Math.max(0, plane.cosIncidence(new SunHour(1, 90 - elevation, azimuth, 1361)))
                        * Math.cos(Math.toRadians(elevation));
                all += seen;
                above += elevation > line.elevationDeg(azimuth) ? seen : 0;
            }
        }
        return above / all;
    }

    @Test
    void allDayAboveALowLineAndNeverAboveAHighOne() {
        Observer observer = new Observer(53.1, -2.4, 120, 1002, 10);
        LocalDateTime start = LocalDateTime.of(2025, 6, 21, 0, 0);
        double[] low = SunTrack.sharesAbove(observer, start, 0, 24, ring(1e-6));
        double[] high = SunTrack.sharesAbove(observer, start, 0, 24, ring(89));
        SunHour[] sun = SunTrack.over(observer, start, 0, 24);
        for (int hour = 0; hour < 24; hour++) {
            assertEquals(1, low[hour]);
            assertEquals(sun[hour].sunlitFraction() > 0 ? 0 : 1, high[hour]);
        }
    }

    /** The sun crosses 30° at 53° N on a June morning within an hour: as many twelfths as the fine search of the crossing says. */
    @Test
    void anHourInWhichTheSunCrossesTheLineCountsInTwelfths() {
        Observer observer = new Observer(53.1, -2.4, 120, 1002, 10);
        LocalDateTime start = LocalDateTime.of(2025, 6, 21, 0, 0);
        double[] shares = SunTrack.sharesAbove(observer, start, 0, 24, ring(30));
        SunPosition exact = new SunPosition(observer, start.toLocalDate());
        int partly = 0;
        for (int hour = 0; hour < 24; hour++) {
            double from = start.toEpochSecond(java.time.ZoneOffset.UTC) + 3600.0 * hour;
            int above = 0;
            for (int i = 0; i < 12; i++) {
                above += exact.elevationDeg(from + 300 * i + 150) > 30 ? 1 : 0;
            }
            boolean sunlitThroughout = exact.elevationDeg(from) > 0 && exact.elevationDeg(from + 3600) > 0;
            if (sunlitThroughout) {
                assertEquals(above / 12.0, shares[hour], 1e-12);
                partly += above > 0 && above < 12 ? 1 : 0;
            }
        }
        assertEquals(2, partly);
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void behindTheLineOnlyIsotropicLightRemains(SkyModel model) {
        Plane plane = new Plane(60, 180);
        TiltedIrradiance open = plane.irradiance(model, 0.2, LIGHT, SUN, SkyView.OPEN);
        TiltedIrradiance hidden = plane.irradiance(model, 0.2, LIGHT, SUN, new SkyView(0, 1));
        assertEquals(0, hidden.beamWPerM2());
        assertEquals(open.groundWPerM2(), hidden.groundWPerM2());
        assertEquals(open.incidenceDeg(), hidden.incidenceDeg());
        double half =
                plane.irradiance(model, 0.2, LIGHT, SUN, new SkyView(0, 0.5)).skyDiffuseWPerM2();
        assertEquals(hidden.skyDiffuseWPerM2() / 2, half, 1e-12);
        if (model == SkyModel.ISOTROPIC) {
            assertEquals(open.skyDiffuseWPerM2(), hidden.skyDiffuseWPerM2());
        } else {
            assertTrue(hidden.skyDiffuseWPerM2() < open.skyDiffuseWPerM2());
        }
    }

    @Test
    void treesTakeHalfTheirShareOfTheSky() {
        SkyView view = new SkyView(0.5, 0.8).behindTrees(0.4);
        assertEquals(0.3, view.sunShare(), 1e-12);
        assertEquals(0.64, view.skyShare(), 1e-12);
    }

    /** Lid: global less the hidden beam and sky; wall: ground light stays. */
    @Test
    void facesLoseBeamAndSky() {
        SkyView view = new SkyView(0.25, 0.9);
        assertEquals(LIGHT.globalWPerM2(), TankFaces.lidWPerM2(LIGHT, SUN, SkyView.OPEN));
        assertEquals(
                LIGHT.globalWPerM2() - 0.75 * 700 * SUN.cosZenith() - 0.1 * 80,
                TankFaces.lidWPerM2(LIGHT, SUN, view),
                1e-12);
        double expected = 0.25 * 700 * SUN.sinZenith() / Math.PI + 0.9 * 40 + 0.2 * LIGHT.globalWPerM2() / 2;
        assertEquals(expected, TankFaces.cylinderWallWPerM2(LIGHT, SUN, 0.2, view), 1e-12);
        assertEquals(
                0.9 * 40 + 0.2 * LIGHT.globalWPerM2() / 2,
                TankFaces.boxWallsWPerM2(LIGHT, SUN, 0.2, 30, new SkyView(0, 0.9)),
                1e-12);
    }
}
