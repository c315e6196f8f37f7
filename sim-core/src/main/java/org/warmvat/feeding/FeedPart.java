package org.warmvat.feeding;

import org.warmvat.design.Design;
import org.warmvat.design.DilutionWater;
import org.warmvat.design.Feed;
import org.warmvat.design.FeedTemperature;
import org.warmvat.design.Place;
import org.warmvat.network.Balance;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.network.Network;
import org.warmvat.network.SlowPart;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Unit;

/**
 * Heat taken by feed and dilution water, less what an effluent exchanger gives back, and electricity of auger and shredder
 * (equations 3.1 to 3.3). The heat meter counts what the slurry receives: usually negative.
 */
public final class FeedPart implements SlowPart {

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
    private final int slurry;
    private final double contentsJPerKgK;
    private final Stream feedstocks;
    private final Stream water;
    private final int heatMeter;
    private final int augerMeter;
    private final int shredderMeter;
    private boolean open;

    /** A stream with its flow while open and where its temperature comes from. */
    private final class Stream {
        private final FeedStream properties;
        private final double kgPerS;
        private final FeedTemperature source;
        private double hourlyC;

        Stream(FeedStream properties, double kgPerDay, FeedTemperature source) {
            this.properties = properties;
            this.kgPerS = flow.whileOpenKgPerS(kgPerDay);
            this.source = source;
        }

        void enter(int hour) {
            if (source instanceof FeedTemperature.Air) {
                double endS = Math.max(DAY_S, hour * HOUR_S);
                hourlyC = surroundings.weather().airC().mean(endS - DAY_S, endS);
            } else if (source instanceof FeedTemperature.Fixed fixed) {
                hourlyC = fixed.celsius();
            } else if (source instanceof FeedTemperature.Room) {
                hourlyC = ((Place.Indoors) design.tank().place()).roomC();
            }
        }

        /** Temperature of the stream; feed kept from frost stands at 0 °C or more. */
        double celsius(double timeS) {
            double celsius = source instanceof FeedTemperature.Ground ? surroundings.groundC(timeS) : hourlyC;
            return design.feed().handling().mayFreeze() ? celsius : Math.max(0, celsius);
        }

        void contribute(double timeS, Flows flows) {
            double celsius = celsius(timeS);
            double specificHeat = properties.specificHeatJPerKgK();
            double recovered =
                    design.feed().handling().exchangerEffectiveness() * Math.min(specificHeat, contentsJPerKgK);
            flows.exchange(slurry, kgPerS * (specificHeat - recovered), 0, heatMeter);
            flows.heat(
                    slurry,
                    kgPerS * (properties.enthalpyJPerKg(celsius) - recovered * Math.max(celsius, 0)),
                    heatMeter);
        }
    }

    /** Adds the feed to a network. */
    public FeedPart(Design design, Surroundings surroundings, Network.Assembly assembly, int slurry) {
        this.design = design;
        this.surroundings = surroundings;
        this.slurry = slurry;
        Feed feed = design.feed();
        flow = new FeedFlow(feed, surroundings);
        contentsJPerKgK = design.contentsSpecificHeatJPerKgK();
        double freezingRangeK = feed.handling().freezingRangeK();
        feedstocks = new Stream(
                new FeedStream(design.contents(), feed.feedstockTotalSolidsFraction(), freezingRangeK),
                feed.feedstockKgPerDay(),
                feed.temperature());
        water = new Stream(
                new FeedStream(design.contents(), 0, freezingRangeK),
                feed.waterKgPerDay(),
                feed.water().map(DilutionWater::temperature).orElse(feed.temperature()));
        heatMeter = assembly.meter(
                Meter.of(FEED_HEAT).told(-1, FEED).hourly(-1, "feed_w").leaving(Balance.SLURRY, 1));
        augerMeter = assembly.meter(Meter.electricity("auger", "feed auger", "auger_electric_w"));
        shredderMeter = assembly.meter(Meter.electricity("shredder", "shredder"));
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
        if (open) {
            feedstocks.enter(interval.hour());
            water.enter(interval.hour());
        }
    }

    @Override
    public void surround(double timeS, Flows flows) {
        if (!open) {
            return;
        }
        feedstocks.contribute(timeS, flows);
        water.contribute(timeS, flows);
        double kgPerS = feedstocks.kgPerS;
        flows.meter(augerMeter, kgPerS * design.feed().handling().augerWhPerKg() * J_PER_WH);
        flows.meter(shredderMeter, kgPerS * design.feed().handling().shredderWhPerKg() * J_PER_WH);
    }
}
