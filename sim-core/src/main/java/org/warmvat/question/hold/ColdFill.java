package org.warmvat.question.hold;

import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.CyclicWeather;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;

/**
 * A cold fill at the beginning of the coldest week of a weather file.
 *
 * @param runner the weather, a whole year going on with its own beginning
 * @param hours when it begins and how long it is followed
 */
public record ColdFill(Runner runner, Hours hours) {

    private static final int DAY_H = 24;
    private static final int WEEK_H = 7 * DAY_H;

    /**
     * The fill of a file. One that cannot go on must leave the warm-up its days after the beginning of its coldest week.
     *
     * @param design whose calendar says when there is a warm-up at all
     * @param weather the file
     * @param days days within which it is to be warm
     * @param followedDays days that it is followed at most, no fewer
     * @param engine what integrates
     */
    public static ColdFill of(Design design, Weather weather, int days, int followedDays, Engine engine) {
        int hours = days * DAY_H;
        int followed = followedDays * DAY_H;
        Weather longer =
                CyclicWeather.weather(weather, weather.isWholeYear() ? Math.min(weather.hours(), followed) : 0);
        int ends =
                weather.isWholeYear() ? weather.hours() : Math.min(weather.hours(), weather.hours() - hours + WEEK_H);
        int from = ColdSpell.coldestWeekFrom(weather, ends, design, days);
        return new ColdFill(new Runner(longer, engine), new Hours(from, Math.min(longer.hours(), from + followed)));
    }

    /** Hours until a fill of some temperature is at the set-point; empty when it is not within the hours followed. */
    public OptionalDouble hours(Design design, double fillC) {
        return WarmingUp.hours(runner, design, fillC, hours);
    }
}
