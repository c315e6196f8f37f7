package org.warmvat.sun;

/** How the diffuse light of the sky is spread, chosen in the design (model equation 4.4). */
public enum SkyModel {
    /** The same from everywhere. */
    ISOTROPIC {
        @Override
        double skyDiffuseWPerM2(Plane plane, Irradiance light, SunHour sun, SkyView view) {
            return light.diffuseWPerM2() * plane.skyView() * view.skyShare();
        }
    },
    /**
     * J. E. Hay and J. A. Davies (1980), "Calculation of the solar radiation incident on an inclined surface", Proc.
     * First Canadian Solar Radiation Data Workshop: a part in proportion to the beam's transmittance comes from the sun's
     * direction, the rest from everywhere.
     */
    HAY_DAVIES {
        @Override
        double skyDiffuseWPerM2(Plane plane, Irradiance light, SunHour sun, SkyView view) {
            double anisotropy = Math.max(0, Math.min(1, light.beamWPerM2() / sun.hourMeanNormalWPerM2()));
            double beamRatio = Math.max(0, plane.cosIncidence(sun)) / Math.max(COS_85_DEG, sun.cosZenith());
            return light.diffuseWPerM2()
                    * (anisotropy * beamRatio * view.sunShare() + (1 - anisotropy) * plane.skyView() * view.skyShare());
        }
    },
    /** {@link Perez1990}. */
    PEREZ {
        @Override
        double skyDiffuseWPerM2(Plane plane, Irradiance light, SunHour sun, SkyView view) {
            return Perez1990.skyDiffuseWPerM2(plane, light, sun, view);
        }
    };

    /** Guards the divisions by the cosine of the zenith angle near the horizon. */
    static final double COS_85_DEG = Math.cos(Math.toRadians(85));

    /** Sky diffuse irradiance on a plane with the sun 1 degree up or more. */
    abstract double skyDiffuseWPerM2(Plane plane, Irradiance light, SunHour sun, SkyView view);
}
