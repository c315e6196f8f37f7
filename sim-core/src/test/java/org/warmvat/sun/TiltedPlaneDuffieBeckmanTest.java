package org.warmvat.sun;

import org.warmvat.checks.Provenance;
import org.warmvat.checks.Published;
import org.warmvat.checks.Sheet;
import org.warmvat.checks.Source;
import org.warmvat.checks.Topic;

/**
 * Published: J. A. Duffie and W. A. Beckman, "Solar Engineering of Thermal Processes", examples 2.15.1 and 2.16.1: the hour 9
 * to 10 on 20 February at 40 N, slope 60 to the south, 1.04 MJ/m2 on the horizontal, ground reflectance 0.60 (inputs and
 * cosines from public quotations, the results from memory). The tolerance is half the last printed digit, more where the
 * book goes on with rounded steps; declination and extraterrestrial energy are taken before rounding (-11.6, 2.34), and the totals
 * without a printed value are recomputed from the book's formulas and so marked.
 */
class TiltedPlaneDuffieBeckmanTest implements Published {
    /** An hour's energy in MJ/m2 as its mean in W/m2. */
    private static final double MJ = 1e6 / 3600;

    private static final double COS_ZENITH = 0.466;
    private static final double EXTRATERRESTRIAL_MJ = 2.3349;
    private static final double GLOBAL_MJ = 1.04;
    private static final Plane PLANE = new Plane(60, 180);

    /** Hour angle -37.5 and declination -11.579 at 40 N. */
    private static SunHour sun() {
        double latitude = Math.toRadians(40);
        double declination = Math.toRadians(-11.579);
        double hourAngle = Math.toRadians(-37.5);
        double cosZenith = Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
        double zenith = Math.acos(cosZenith);
        double sinTurn = Math.cos(declination) * Math.sin(hourAngle) / Math.sin(zenith);
        double azimuth = 180 + Math.toDegrees(Math.asin(sinTurn));
        return new SunHour(1, Math.toDegrees(zenith), azimuth, EXTRATERRESTRIAL_MJ * MJ / cosZenith);
    }

    @Override
    public Source source() {
        return new Source(
                Topic.SUN,
                "Duffie and Beckman",
                "J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, examples 2.15.1 and 2.16.1.",
                "9 to 10 h on 20 February at 40 N, slope 60 to the south, 1.04 MJ/m2 on the horizontal, ground reflectance 0.60; hourly"
                        + " energies as mean irradiance; solar constant as in the book.",
                "Half the last printed digit, up to 0.001 MJ/m2 more where the book goes on with rounded steps.");
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value("cosine of the zenith angle", COS_ZENITH, sun().cosZenith(), 5e-4)
                .value("cosine of incidence", 0.799, PLANE.cosIncidence(sun()), 5e-4)
                .value("their ratio", 1.71, PLANE.cosIncidence(sun()) / sun().cosZenith(), 5e-3);
        Irradiance light = Irradiance.ofGlobal(GLOBAL_MJ * MJ, sun());
        TiltedIrradiance on = on(SkyModel.ISOTROPIC);
        double share = Erbs1982.hourlyDiffuseFraction(GLOBAL_MJ / EXTRATERRESTRIAL_MJ);
        sheet.table(Provenance.MEMORY)
                .value("diffuse share", 0.766, share, 1e-3)
                .value("diffuse, MJ/m2", 0.796, light.diffuseWPerM2() / MJ, 1e-3)
                .value("beam on the horizontal, MJ/m2", 0.244, light.beamWPerM2() * sun().cosZenith() / MJ, 1e-3)
                .value("beam on the plane, MJ/m2", 0.417, on.beamWPerM2() / MJ, 1.5e-3)
                .value("total on the plane, isotropic, MJ/m2", 1.17, on.totalWPerM2() / MJ, 5e-3)
                .value("sky on the plane, MJ/m2", 0.597, on.skyDiffuseWPerM2() / MJ, 1e-3)
                .value("ground on the plane, MJ/m2", 0.156, on.groundWPerM2() / MJ, 5e-4);
        sheet.table(Provenance.DERIVED)
                .value(
                        "total, Hay and Davies, MJ/m2",
                        1.2510,
                        on(SkyModel.HAY_DAVIES).totalWPerM2() / MJ,
                        5e-3)
                .value("total, Perez, MJ/m2", 1.370, on(SkyModel.PEREZ).totalWPerM2() / MJ, 8e-3);
    }

    private static TiltedIrradiance on(SkyModel model) {
        return PLANE.irradiance(model, 0.60, Irradiance.ofGlobal(GLOBAL_MJ * MJ, sun()), sun(), SkyView.OPEN);
    }
}
