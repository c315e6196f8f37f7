package org.warmvat.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.heating.Mounting;
import org.warmvat.weather.Weather;

/** What looks odd in a design and its weather but runs all the same; a sentence each. */
public final class Notices {

    /** Total solids this far apart are worth a word, mass fraction. */
    private static final double SOLIDS_APART = 0.03;

    private Notices() {}

    /** The notices of a design in its weather. */
    public static List<String> of(Design design, Weather weather) {
        List<String> notices = new ArrayList<>();
        design.solar()
                .flatMap(solar ->
                        facing(solar.collector().plane(), weather.site().latitudeDeg()))
                .ifPresent(notices::add);
        design.contents().totalSolidsFraction().ifPresent(given -> {
            double steady = design.steadyTotalSolidsFraction();
            if (Math.abs(given - steady) > SOLIDS_APART) {
                notices.add(String.format(
                        Locale.ROOT,
                        "The stated total solids of the contents, %.1f %%, are far from the %.1f %% that feed and digestion"
                                + " would leave.",
                        100 * given,
                        100 * steady));
            }
        });
        if (design.usesGround() && weather.groundColumnC().isEmpty()) {
            notices.add(
                    design.site().ground().wave().isPresent()
                            ? "The ground temperature follows the yearly wave given in the design."
                            : "The ground temperature follows a yearly wave fitted to the weather file's air temperature.");
        }
        return notices;
    }

    private static Optional<String> facing(Mounting plane, double latitudeDeg) {
        double azimuthDeg = plane.azimuthDegAt(latitudeDeg);
        double towardsEquator = Math.cos(Math.toRadians(azimuthDeg)) * (latitudeDeg >= 0 ? -1 : 1);
        return plane.tiltDeg() > 0 && towardsEquator < -1e-9
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "The collector faces away from the equator (azimuth %.0f° clockwise from north at latitude %.1f°).",
                        azimuthDeg,
                        latitudeDeg))
                : Optional.empty();
    }
}
