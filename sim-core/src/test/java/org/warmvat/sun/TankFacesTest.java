package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Exact: closed forms for tank faces against integration over many small upright planes. */
class TankFacesTest {
    private static final Irradiance LIGHT = new Irradiance(800 * Math.cos(Math.PI / 4) + 100, 800, 100);

    private static SunHour sun(double zenithDeg, double azimuthDeg) {
        return new SunHour(1, zenithDeg, azimuthDeg, 1361);
    }

    /** DNI 800, DHI 100, zenith 45, reflectance 0.2: 296.63 W/m2 by hand. */
    @Test
    void cylinderByHand() {
        assertEquals(296.63, TankFaces.cylinderWallWPerM2(LIGHT, sun(45, 123), 0.2, SkyView.OPEN), 5e-3);
    }

    /** Shares of the beam at 20, 45 and 70 degrees of zenith. */
    @Test
    void cylinderBeamShares() {
        Irradiance beam = new Irradiance(0, 1, 0);
        assertEquals(0.10887, TankFaces.cylinderWallWPerM2(beam, sun(20, 0), 0, SkyView.OPEN), 5e-6);
        assertEquals(0.22508, TankFaces.cylinderWallWPerM2(beam, sun(45, 0), 0, SkyView.OPEN), 5e-6);
        assertEquals(0.29911, TankFaces.cylinderWallWPerM2(beam, sun(70, 0), 0, SkyView.OPEN), 5e-6);
    }

    @Test
    void cylinderIsTheMeanOfManyUprightPlanes() {
        double sum = 0;
        int planes = 3600;
        for (int i = 0; i < planes; i++) {
            sum += new Plane(90, 360.0 * i / planes)
                    .irradiance(SkyModel.ISOTROPIC, 0.2, LIGHT, sun(45, 77), SkyView.OPEN)
                    .totalWPerM2();
        }
        assertEquals(sum / planes, TankFaces.cylinderWallWPerM2(LIGHT, sun(45, 77), 0.2, SkyView.OPEN), 1e-3);
    }

    @Test
    void boxIsTheMeanOfItsFourSides() {
        for (double turn : new double[] {0, 20, 45, 80}) {
            for (double azimuth : new double[] {0, 100, 180, 222, 359}) {
                double sum = 0;
                for (int side = 0; side < 4; side++) {
                    Plane wall = new Plane(90, turn + 90 * side);
                    sum += wall.irradiance(SkyModel.ISOTROPIC, 0.2, LIGHT, sun(60, azimuth), SkyView.OPEN)
                            .totalWPerM2();
                }
                assertEquals(sum / 4, TankFaces.boxWallsWPerM2(LIGHT, sun(60, azimuth), 0.2, turn, SkyView.OPEN), 1e-9);
            }
        }
    }

    @Test
    void belowOneDegreeNoBeamReachesAnyFace() {
        SunHour low = sun(89.01, 120);
        Irradiance light = new Irradiance(20, 300, 15);
        assertEquals(15 / 2.0 + 0.2 * 20 / 2, TankFaces.cylinderWallWPerM2(light, low, 0.2, SkyView.OPEN), 1e-12);
        assertEquals(15 / 2.0 + 0.2 * 20 / 2, TankFaces.boxWallsWPerM2(light, low, 0.2, 0, SkyView.OPEN), 1e-12);
        TiltedIrradiance plane = new Plane(90, 120).irradiance(SkyModel.HAY_DAVIES, 0.2, light, low, SkyView.OPEN);
        assertEquals(0, plane.beamWPerM2());
        assertEquals(15 / 2.0, plane.skyDiffuseWPerM2(), 1e-12);
    }
}
