package org.warmvat.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.function.ToDoubleFunction;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SPA.SpaTimeDependent;

/**
 * The sun among the stars over one day of universal time, the same for all places: right ascension, declination, distance
 * and the earth's turn. The full algorithm gives them at four midnights, two before and two after, and a cubic goes
 * through those. It departs from the full algorithm by less than a millionth of a degree: the quickest terms, of the moon, take
 * two weeks to come and go and are less than 0.002 degrees.
 */
final class SunDay {
    /** Seconds of a day. */
    static final double DAY_S = 86_400;

    /** Turn of the earth against the mean equinox, as the algorithm has it. */
    private static final double TURN_DEG_PER_DAY = 360.98564736629;

    private static final int MIDNIGHTS = 4;

    private final long epochDay;
    private final SpaTimeDependent[] midnights;
    private final Cubic ascensionDeg;
    private final Cubic declinationDeg;
    private final Cubic distanceAu;
    /** Apparent sidereal time at Greenwich, less the even turn since this day's midnight. */
    private final Cubic siderealDeg;

    private SunDay(long epochDay, SpaTimeDependent[] midnights) {
        this.epochDay = epochDay;
        this.midnights = midnights;
        this.ascensionDeg = Cubic.ofAngle(midnights, SpaTimeDependent::alphaDegrees, 0);
        this.declinationDeg = Cubic.ofAngle(midnights, SpaTimeDependent::deltaDegrees, 0);
        this.distanceAu = Cubic.ofAngle(midnights, SpaTimeDependent::r, 0);
        this.siderealDeg = Cubic.ofAngle(midnights, SpaTimeDependent::nuDegrees, TURN_DEG_PER_DAY);
    }

    /** A day by its count since 1970 and terrestrial less universal time. */
    static SunDay of(long epochDay, double deltaTS) {
        SpaTimeDependent[] midnights = new SpaTimeDependent[MIDNIGHTS];
        for (int i = 0; i < MIDNIGHTS; i++) {
            midnights[i] = midnight(epochDay - 1 + i, deltaTS);
        }
        return new SunDay(epochDay, midnights);
    }

    /** Another day, or this one; the day after this one shares midnights with it. */
    SunDay near(long otherDay, double deltaTS) {
        if (otherDay == epochDay) {
            return this;
        }
        if (otherDay != epochDay + 1) {
            return of(otherDay, deltaTS);
        }
        SpaTimeDependent last = midnight(otherDay + 2, deltaTS);
        return new SunDay(otherDay, new SpaTimeDependent[] {midnights[1], midnights[2], midnights[3], last});
    }

    private static SpaTimeDependent midnight(long epochDay, double deltaTS) {
        Instant instant = Instant.ofEpochSecond(epochDay * (long) DAY_S);
        return SPA.calculateSpaTimeDependentParts(instant.atZone(ZoneOffset.UTC), deltaTS);
    }

    /** At an instant of the day, seconds since 1970; what the view from a place does not need is that of midnight. */
    SpaTimeDependent at(double epochS) {
        double share = epochS / DAY_S - epochDay;
        SpaTimeDependent midnight = midnights[1];
        return new SpaTimeDependent(
                midnight.thetaDegrees(),
                midnight.betaDegrees(),
                distanceAu.at(share),
                midnight.deltaPsi(),
                midnight.epsilonDegrees(),
                midnight.lambdaDegrees(),
                siderealDeg.at(share) + TURN_DEG_PER_DAY * share,
                ascensionDeg.at(share),
                declinationDeg.at(share));
    }

    /** A cubic through values at -1, 0, 1 and 2 days. */
    private record Cubic(double constant, double linear, double square, double cube) {

        /** Values that may start anew at 360 from one midnight to the next, less an even turn. */
        static Cubic ofAngle(
                SpaTimeDependent[] midnights, ToDoubleFunction<SpaTimeDependent> value, double turnPerDay) {
            double here = value.applyAsDouble(midnights[1]);
            double before = Math.IEEEremainder(value.applyAsDouble(midnights[0]) - here + turnPerDay, 360);
            double after = Math.IEEEremainder(value.applyAsDouble(midnights[2]) - here - turnPerDay, 360);
            double second = Math.IEEEremainder(value.applyAsDouble(midnights[3]) - here - 2 * turnPerDay, 360);
            return new Cubic(
                    here, after - before / 3 - second / 6, (before + after) / 2, (second - before) / 6 - after / 2);
        }

        double at(double share) {
            return constant + share * (linear + share * (square + share * cube));
        }
    }
}
