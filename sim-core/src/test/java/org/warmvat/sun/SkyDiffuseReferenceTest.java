package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.checks.Provenance;
import org.warmvat.checks.Published;
import org.warmvat.checks.Sheet;
import org.warmvat.checks.Source;
import org.warmvat.checks.Topic;

/**
 * Published: reference numbers of the sky diffuse models quoted from the tests of an open reference library (pvlib-python,
 * commit 6382338). Plane of 40 degrees facing south; case A has a low sun that grazes the plane, case B a high sun. The
 * tolerance is the last digit given there, but for Perez in case A, which our coefficients meet to 0.005 W/m2.
 */
class SkyDiffuseReferenceTest implements Published {
    private static final double NORMAL_W_PER_M2 = 1321.1655834833;
    private static final Plane PLANE = new Plane(40, 180);
    private static final SunHour LOW = new SunHour(1, 72.41687122, 287.04104128, NORMAL_W_PER_M2);
    private static final SunHour HIGH = new SunHour(1, 10.56413562, 144.76567754, NORMAL_W_PER_M2);
    private static final Irradiance CASE_A = new Irradiance(257.20751138, 646.22886049, 62.03376265);
    private static final Irradiance CASE_B = new Irradiance(1042.48031487, 939.95469881, 118.45831879);

    private static double sky(SkyModel model, Irradiance light, SunHour sun) {
        return PLANE.irradiance(model, 0, light, sun, SkyView.OPEN).skyDiffuseWPerM2();
    }

    @Override
    public Source source() {
        return new Source(
                Topic.SUN,
                "pvlib-python",
                "Open library pvlib-python, tests of the sky diffuse models at commit 6382338; relative air mass of Kasten and Young"
                        + " (1989) quoted with them; incidence angles of the same tests.",
                "Plane of 40° to the south. Case A: low sun that grazes the plane; case B: high sun.",
                "The last digit given; 0.005 W/m2 for Perez in case A, what rounded coefficients leave open.");
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value("isotropic, case A, W/m2", 54.777191, sky(SkyModel.ISOTROPIC, CASE_A, LOW), 1e-6)
                .value("Hay and Davies, case A, W/m2", 33.1909, sky(SkyModel.HAY_DAVIES, CASE_A, LOW), 5e-5)
                .value("Hay and Davies, case B, W/m2", 102.9949, sky(SkyModel.HAY_DAVIES, CASE_B, HIGH), 5e-5)
                .value("Perez, case A, W/m2", 45.4554, sky(SkyModel.PEREZ, CASE_A, LOW), 5e-3)
                .value("Perez, case B, W/m2", 109.0843, sky(SkyModel.PEREZ, CASE_B, HIGH), 5e-4)
                .value("isotropic, case B, W/m2", 104.601328, sky(SkyModel.ISOTROPIC, CASE_B, HIGH), 1e-6);
        sheet.table(Provenance.SEEN)
                .value("relative air mass, case A", 3.27930443, AirMass.kastenYoung1989(72.41687122), 5e-9)
                .value("relative air mass, case B", 1.01688136, AirMass.kastenYoung1989(10.56413562), 5e-9);
        sheet.table(Provenance.SEEN)
                .value("incidence on a north wall, sun at 30° zenith, 60°", 75.5224878, incidence(90, 60), 5e-8)
                .value("incidence on a north wall, sun at 30° zenith, 170°", 119.4987042, incidence(90, 170), 5e-8);
    }

    /** In case A the sun just grazes the plane: cos 72.417 cos 40 + sin 72.417 sin 40 cos 107.041 = 0.0518. */
    @Test
    void theLowSunGrazesThePlane() {
        assertEquals(0.0518, PLANE.cosIncidence(LOW), 5e-5);
        assertEquals(
                646.22886049 * 0.0518,
                PLANE.irradiance(SkyModel.PEREZ, 0.2, CASE_A, LOW, SkyView.OPEN).beamWPerM2(),
                0.04);
    }

    @Test
    void theSunBehindThePlaneGivesNoBeam() {
        assertEquals(
                0,
                new Plane(60, 180)
                        .irradiance(SkyModel.PEREZ, 0.2, CASE_A, LOW, SkyView.OPEN)
                        .beamWPerM2());
    }

    @Test
    void clearnessBins() {
        assertEquals(0, Perez1990.bin(1.0));
        assertEquals(1, Perez1990.bin(1.065));
        assertEquals(5, Perez1990.bin(4.36));
        assertEquals(7, Perez1990.bin(8.88));
    }

    private static double incidence(double tiltDeg, double azimuthDeg) {
        SunHour sun = new SunHour(1, 30, azimuthDeg, NORMAL_W_PER_M2);
        return new Plane(tiltDeg, 0)
                .irradiance(SkyModel.ISOTROPIC, 0, Irradiance.NONE, sun, SkyView.OPEN)
                .incidenceDeg();
    }
}
