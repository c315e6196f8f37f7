package org.warmvat.feeding;

import org.warmvat.network.Unit;
import org.warmvat.network.Meter;
import org.warmvat.network.Line;
import org.warmvat.network.Balance;
import org.warmvat.design.Design;
import org.warmvat.design.DilutionWater;
import org.warmvat.design.Feed;
import org.warmvat.design.FeedTemperature;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;

/**
 * Heat taken by feed and dilution water, less what an effluent exchanger gives back, and electricity of auger and shredder
 * (equations 3.1 to 3.3). The heat meter counts what the slurry receives: usually negative.
 */
public final class FeedPart implements Part {

    /** Heat taken by feed and water. */
    public static final Line FEED = new Line("feed_heat_kwh", "feed", Unit.KWH);

    /** Meter of the feed's heat, J. */
    public static final String FEED_HEAT = "feed_heat";

    /** Meter of the auger's electricity, J. */
    public static final String AUGER_ELECTRICITY = "auger_electricity";

    /** Meter of the shredder's electricity, J. */
    public static final String SHREDDER_ELECTRICITY = "shredder_electricity";

    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    private static final double J_PER_WH = 3600;

    private final Design design;
    private final Surroundings surroundings;
    private final FeedFlow flow;
    private final int around;
    private final double contentsJPerKgK;
    private final Stream feedstocks;
    private final Stream water;
    private final Source auger;
    private final Source shredder;
    private boolean open;

    /** A stream with its flow while open and where its temperature comes from. */
    private final class Stream {
        private final FeedStream properties;
        private final double kgPerS;
        private final FeedTemperature source;
        private final int follows;
        private final Source heat;
        private double hourlyC;

        Stream(FeedStream properties, double kgPerDay, FeedTemperature source, Network.Assembly assembly) {
            this.properties = properties;
            this.kgPerS = flow.whileOpenKgPerS(kgPerDay);
            this.source = source;
            follows = source instanceof FeedTemperature.Ground
                    ? surroundings.ground()
                    : source instanceof FeedTemperature.Room ? around : Network.NOWHERE;
            heat = assembly.source(Network.SLURRY, assembly.meter(
                    Meter.of(FEED_HEAT).told(-1, FEED).hourly(-1, "feed_w").leaving(Balance.SLURRY, 1)));
        }

        void enter(int hour) {
            if (source instanceof FeedTemperature.Air) {
                double endS = Math.max(DAY_S, hour * HOUR_S);
                hourlyC = surroundings.weather().airC().mean(endS - DAY_S, endS);
            } else if (source instanceof FeedTemperature.Fixed fixed) {
                hourlyC = fixed.celsius();
            }
        }

        /** Temperature of the stream; feed kept from frost stands at 0 °C or more. */
        double celsius(State state) {
            double celsius = follows >= 0 ? state.nodeC(follows) : hourlyC;
            return design.feed().handling().mayFreeze() ? celsius : Math.max(0, celsius);
        }

        void ask(State state) {
            double celsius = celsius(state);
            double specificHeat = properties.specificHeatJPerKgK();
            double recovered =
                    design.feed().handling().exchangerEffectiveness() * Math.min(specificHeat, contentsJPerKgK);
            double takenWPerK = kgPerS * (specificHeat - recovered);
            double broughtW = kgPerS * (properties.enthalpyJPerKg(celsius) - recovered * Math.max(celsius, 0));
            heat.set(broughtW - takenWPerK * state.nodeC(Network.SLURRY), -takenWPerK);
        }
    }

    /**
     * Adds the feed to a network.
     *
     * @param design the design
     * @param surroundings what is outside
     * @param around node of what is around the tank, whose temperature feed from the room has
     * @param assembly the network being gathered
     */
    public FeedPart(Design design, Surroundings surroundings, int around, Network.Assembly assembly) {
        this.design = design;
        this.surroundings = surroundings;
        this.around = around;
        Feed feed = design.feed();
        flow = new FeedFlow(feed, surroundings);
        contentsJPerKgK = design.contentsSpecificHeatJPerKgK();
        double freezingRangeK = feed.handling().freezingRangeK();
        feedstocks = new Stream(
                new FeedStream(design.contents(), feed.feedstockTotalSolidsFraction(), freezingRangeK),
                feed.feedstockKgPerDay(),
                feed.temperature(),
                assembly);
        water = new Stream(
                new FeedStream(design.contents(), 0, freezingRangeK),
                feed.waterKgPerDay(),
                feed.water().map(DilutionWater::temperature).orElse(feed.temperature()),
                assembly);
        auger = assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("auger", "feed auger", "auger_electric_w")));
        shredder = assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("shredder", "shredder")));
        assembly.part(this);
    }

    /** Whether feed enters in the interval entered. */
    public boolean isOpen() {
        return open;
    }

    @Override
    public double nextJumpS(double timeS) {
        return flow.nextJumpS(timeS);
    }

    @Override
    public void enter(Interval interval) {
        open = flow.isOpen(interval);
        double kgPerS = open ? feedstocks.kgPerS : 0;
        auger.set(kgPerS * design.feed().handling().augerWhPerKg() * J_PER_WH);
        shredder.set(kgPerS * design.feed().handling().shredderWhPerKg() * J_PER_WH);
        if (open) {
            feedstocks.enter(interval.hour());
            water.enter(interval.hour());
        } else {
            feedstocks.heat.set(0);
            water.heat.set(0);
        }
    }

    @Override
    public void ask(double timeS, State state) {
        if (open) {
            feedstocks.ask(state);
            water.ask(state);
        }
    }
}
