package org.warmvat.envelope;

import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.OuterFace;
import org.warmvat.physics.PhysicalConstants;

/**
 * The outside film of a face exposed to weather (equation 2.4; ISO 6946 annex): convection by wind and radiation linearised
 * at the air temperature, joined into one equivalent temperature.
 *
 * @param films outer convection in still air and its rise with wind
 * @param face absorptance and emissivity
 * @param windFactor wind at the face over the file's wind
 * @param skyView share of its radiation that goes to the sky, 0 to 1
 */
public record OuterFilm(Films films, OuterFace face, double windFactor, double skyView) {

    /** Convective coefficient, W/(m2 K), at the file's wind. */
    public double convectionWPerM2K(double windMPerS) {
        return films.outerStillWPerM2K() + films.outerPerWindJPerM3K() * windFactor * windMPerS;
    }

    /** Radiative coefficient {@code 4 eps sigma T_a^3}, W/(m2 K). */
    public double radiationWPerM2K(double airC) {
        double kelvin = airC + PhysicalConstants.ZERO_CELSIUS_K;
        return 4 * face.emissivity() * PhysicalConstants.STEFAN_BOLTZMANN_W_PER_M2_K4 * kelvin * kelvin * kelvin;
    }

    /**
     * Heat flux that the face would receive from its surroundings at 0 °C, W/m2: the equivalent temperature times the sum of
     * both coefficients.
     *
     * @param convectionWPerM2K convective coefficient
     * @param radiationWPerM2K radiative coefficient
     * @param airC air, °C
     * @param skyC sky, °C
     * @param irradianceWPerM2 sun on the face
     */
    public double equivalentFluxWPerM2(
            double convectionWPerM2K, double radiationWPerM2K, double airC, double skyC, double irradianceWPerM2) {
        double radiantC = skyView * skyC + (1 - skyView) * airC;
        return convectionWPerM2K * airC + radiationWPerM2K * radiantC + face.absorptance() * irradianceWPerM2;
    }
}
