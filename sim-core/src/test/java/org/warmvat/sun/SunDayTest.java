package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SPA.SpaTimeDependent;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;

/** Exact: the interpolated sun against the full algorithm at the same instants. */
class SunDayTest {
    /** The algorithm itself claims 0.0003 degrees; a three-hundredth of that is left to the interpolation. */
    private static final double WITHIN_DEG = 1e-6;

    private static final LocalDateTime NEW_YEAR = LocalDateTime.of(2024, 1, 1, 0, 0);

    private static SpaTimeDependent full(LocalDateTime time) {
        return SPA.calculateSpaTimeDependentParts(time.atZone(ZoneOffset.UTC), DeltaT.estimate(NEW_YEAR.toLocalDate()));
    }

    private static double turn(double angleDeg) {
        return Math.IEEEremainder(angleDeg, 360);
    }

    /** Odd steps of 73 minutes reach every part of a day, over eight years with two leap days. */
    @Test
    void theSunAmongTheStarsIsThatOfTheFullAlgorithm() {
        double deltaTS = DeltaT.estimate(NEW_YEAR.toLocalDate());
        SunDay day = SunDay.of(NEW_YEAR.toLocalDate().toEpochDay(), deltaTS);
        LocalDateTime end = NEW_YEAR.plusYears(8);
        for (LocalDateTime time = NEW_YEAR; time.isBefore(end); time = time.plusMinutes(73)) {
            day = day.near(time.toLocalDate().toEpochDay(), deltaTS);
            SpaTimeDependent ours = day.at((double) time.toEpochSecond(ZoneOffset.UTC));
            SpaTimeDependent full = full(time);
            assertEquals(0, turn(ours.alphaDegrees() - full.alphaDegrees()), WITHIN_DEG, time::toString);
            assertEquals(full.deltaDegrees(), ours.deltaDegrees(), WITHIN_DEG, time::toString);
            assertEquals(0, turn(ours.nuDegrees() - full.nuDegrees()), WITHIN_DEG, time::toString);
            assertEquals(full.r(), ours.r(), 1e-8, time::toString);
        }
    }

    /** Any order of days gives the same, to the bit. */
    @Test
    void aDayIsTheSameFromWhicheverDayItIsReached() {
        SunDay direct = SunDay.of(20_000, 69);
        double noon = (20_000 + 0.5) * SunDay.DAY_S;
        assertEquals(direct.at(noon), SunDay.of(19_999, 69).near(20_000, 69).at(noon));
        assertEquals(direct.at(noon), SunDay.of(20_007, 69).near(20_000, 69).at(noon));
        assertEquals(direct.at(noon), direct.near(20_000, 69).at(noon));
    }

    /** Seen from a place, through air, in both hemispheres; the time carries parts of a second, the full one whole ones. */
    @Test
    void thePositionInTheSkyIsThatOfTheFullAlgorithm() {
        for (double latitude : new double[] {53.1, -42, 0.5, 80}) {
            Observer place = new Observer(latitude, -12.5, 100, 1000, 10);
            SunPosition ours = new SunPosition(place, NEW_YEAR.toLocalDate());
            for (LocalDateTime time = NEW_YEAR; time.getYear() == NEW_YEAR.getYear(); time = time.plusMinutes(1231)) {
                SolarPosition full =
                        SPA.calculateSolarPositionWithTimeDependentParts(latitude, -12.5, 100, 1000, 10, full(time));
                SolarPosition position = ours.at((double) time.toEpochSecond(ZoneOffset.UTC));
                assertEquals(full.zenithAngle(), position.zenithAngle(), 2 * WITHIN_DEG, time::toString);
                double sideways = Math.sin(Math.toRadians(full.zenithAngle()));
                assertEquals(0, turn(position.azimuth() - full.azimuth()) * sideways, 2 * WITHIN_DEG, time::toString);
            }
        }
    }
}
