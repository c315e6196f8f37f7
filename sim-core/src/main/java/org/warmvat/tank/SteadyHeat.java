package org.warmvat.tank;

import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.feeding.FeedStream;
import org.warmvat.weather.Weather;

/** Handbook sums of heat at set-point in steady cold air: what a builder would work out by hand. */
public final class SteadyHeat {

    private static final double DAY_S = 86_400;

    private SteadyHeat() {}

    /** Steady loss through envelope and fittings at set-point, W; the ground is taken to be as cold as the air, but not frozen. */
    public static double lossW(Design design, Conductances conductances, double airC) {
        double setpointC = design.control().setpointC();
        return (conductances.totalWPerK() - conductances.floorWPerK()) * (setpointC - aroundC(design, airC))
                + conductances.floorWPerK() * (setpointC - underC(design, airC));
    }

    /** Loss and feed together in air of a temperature, W, at the mean wind and air of some weather. */
    public static double needW(Design design, Weather weather, double airC) {
        return lossW(design, Conductances.of(design, weather), airC) + feedW(design, airC);
    }

    /** Temperature around the tank, C: the room's where it stands in one, else the air's. */
    static double aroundC(Design design, double airC) {
        return roomC(design).orElse(airC);
    }

    /** Temperature under the tank, C. */
    static double underC(Design design, double airC) {
        return design.tank().standsOn() == StandsOn.GROUND ? Math.max(0, airC) : aroundC(design, airC);
    }

    /** Mean heat taken by feed and water at set-point, W, less what the exchanger gives back (equation 3.1). */
    public static double feedW(Design design, double airC) {
        Feed feed = design.feed();
        double freezingRangeK = feed.handling().freezingRangeK();
        FeedStream feedstocks = new FeedStream(design.contents(), feed.feedstockTotalSolidsFraction(), freezingRangeK);
        double watts = streamW(design, feedstocks, feed.feedstockKgPerDay(), celsius(design, feed.temperature(), airC));
        if (feed.water().isPresent()) {
            DilutionWater water = feed.water().get();
            watts += streamW(
                    design,
                    new FeedStream(design.contents(), 0, freezingRangeK),
                    water.kgPerDay(),
                    celsius(design, water.temperature(), airC));
        }
        return watts;
    }

    private static double streamW(Design design, FeedStream stream, double kgPerDay, double feedC) {
        double setpointC = design.control().setpointC();
        double specificHeat = stream.specificHeatJPerKgK();
        double recovered = design.feed().handling().exchangerEffectiveness()
                * Math.min(specificHeat, design.contentsSpecificHeatJPerKgK())
                * (setpointC - Math.max(feedC, 0));
        return kgPerDay / DAY_S * (specificHeat * setpointC - stream.enthalpyJPerKg(feedC) - recovered);
    }

    private static double celsius(Design design, FeedTemperature source, double airC) {
        double celsius = airC;
        if (source instanceof FeedTemperature.Fixed fixed) {
            celsius = fixed.celsius();
        } else if (source instanceof FeedTemperature.Room) {
            celsius = roomC(design).orElse(airC);
        } else if (source instanceof FeedTemperature.Ground) {
            celsius = Math.max(0, airC);
        }
        return design.feed().handling().mayFreeze() ? celsius : Math.max(0, celsius);
    }

    private static OptionalDouble roomC(Design design) {
        return design.tank().place() instanceof Place.Indoors indoors
                ? OptionalDouble.of(indoors.roomC())
                : OptionalDouble.empty();
    }
}
