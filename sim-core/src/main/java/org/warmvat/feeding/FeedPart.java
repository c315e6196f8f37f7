package org.warmvat.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.network.Interval;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Supply;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.season.InForce;

/**
 * Heat taken by feed and dilution water, less what an effluent exchanger gives back, and electricity of auger and shredder
 * (equations 3.1 to 3.3). Feedstocks heated before they are fed are a stream of their own, which the exchanger does not see (15.1).
 * The heat meter counts what the slurry receives: usually negative.
 */
public final class FeedPart implements Part {

    /** Heat taken by feed and water. */
    public static final Line FEED = new Line("feed_heat_kwh", "feed", Unit.KWH);

    /** Energy bought for hygienisation, or own gas burnt for it. */
    public static final Line HYGIENISATION_BOUGHT =
            new Line("hygienisation_kwh/bought", "bought for hygienisation", Unit.KWH);

    /** Own gas wanted for hygienisation that the holder did not have. */
    public static final Line HYGIENISATION_SHORT =
            new Line("hygienisation_short_of_own_gas_kwh", "short of own gas for hygienisation", Unit.KWH);

    /** Days on which anything is fed. */
    public static final Line DAYS_FED = new Line("days_fed", "days fed", Unit.TIMES);

    /** Days on which nothing is fed. */
    public static final Line DAYS_IDLE = new Line("days_idle", "days idle", Unit.TIMES);

    /** Meter of the feed's heat, J. */
    public static final String FEED_HEAT = "feed_heat";

    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    private static final double J_PER_WH = 3600;

    private final Design design;
    private final Surroundings surroundings;
    private final InForce season;
    private final FeedFlow flow;
    private final Around around;
    private final double contentsJPerKgK;
    private final Stream fresh;
    private final Stream water;
    private final Optional<HeatedBatch> heated;
    private final List<Stream> streams = new ArrayList<>();
    private final Source auger;
    private final Source shredder;
    private final Optional<Source> separator;
    private final Optional<FedMass> mass;
    private boolean open;

    /** A stream with its flow while open and where its temperature comes from. */
    private class Stream {
        private final FeedTemperature source;
        private final int follows;
        private final Source heat;
        private FeedStream properties = new FeedStream(design.contents(), 0, freezingRangeK());
        private double kgPerS;
        private double hourlyC;

        Stream(FeedTemperature source, Network.Assembly assembly) {
            this.source = source;
            follows = source instanceof FeedTemperature.Ground
                    ? surroundings.ground()
                    : source instanceof FeedTemperature.Room ? around.node() : Network.NOWHERE;
            heat = assembly.source(
                    Network.SLURRY,
                    assembly.meter(Meter.of(FEED_HEAT)
                            .told(-1, FEED)
                            .hourly(-1, "feed_w")
                            .leaving(Balance.SLURRY, 1)));
            streams.add(this);
        }

        private double freezingRangeK() {
            return design.feed().handling().freezingRangeK();
        }

        /** What comes a day. */
        void carries(double kgPerDay, double solidsFraction) {
            kgPerS = flow.whileOpenKgPerS(kgPerDay);
            if (properties.solidsFraction() != solidsFraction) {
                properties = new FeedStream(design.contents(), solidsFraction, freezingRangeK());
            }
        }

        void enter(int hour) {
            if (source instanceof FeedTemperature.Air) {
                hourlyC = surroundings.weather().meanAirOfDayBeforeC(hour);
            } else if (source instanceof FeedTemperature.Fixed fixed) {
                hourlyC = fixed.celsius();
            }
        }

        /** Temperature of the stream; feed kept from frost stands at 0 °C or more. */
        double celsius(State state) {
            double celsius = follows >= 0 ? state.nodeC(follows) : hourlyC;
            return design.feed().handling().mayFreeze() ? celsius : Math.max(0, celsius);
        }

        /** What the exchanger gives back, W per kg/s and K. */
        double recoveredJPerKgK() {
            double effectiveness =
                    season.today().isExchangerOn() ? design.feed().handling().exchangerEffectiveness() : 0;
            return effectiveness * Math.min(properties.specificHeatJPerKgK(), contentsJPerKgK);
        }

        void ask(State state) {
            double celsius = celsius(state);
            double recovered = recoveredJPerKgK();
            double takenWPerK = kgPerS * (properties.specificHeatJPerKgK() - recovered);
            double broughtW = kgPerS * (properties.enthalpyJPerKg(celsius) - recovered * Math.max(celsius, 0));
            heat.set(broughtW - takenWPerK * state.nodeC(Network.SLURRY), -takenWPerK);
        }

        void rest() {
            heat.set(0);
        }
    }

    /** The feedstocks that are heated before. */
    private final class HeatedBatch extends Stream {
        private final Hygienisation hygienisation;
        private final HygienisationSources sources;

        HeatedBatch(Hygienisation hygienisation, FeedTemperature source, Supply supply, Network.Assembly assembly) {
            super(source, assembly);
            this.hygienisation = hygienisation;
            sources = new HygienisationSources(hygienisation, supply, assembly);
        }

        @Override
        double celsius(State state) {
            return hygienisation.entersC(super.celsius(state));
        }

        @Override
        double recoveredJPerKgK() {
            return 0;
        }

        @Override
        void ask(State state) {
            super.ask(state);
            double lossW = super.kgPerS > 0
                    ? hygienisation.lossJPerDay(state.nodeC(around.node())) / flow.openSecondsPerDay()
                    : 0;
            sources.set(new BatchHeat(hygienisation, super.properties), super.celsius(state), super.kgPerS, lossW);
        }

        @Override
        void rest() {
            super.rest();
            sources.rest();
        }
    }

    /** What a calendar makes worth telling: mass fed, days with and without feed. */
    private final class FedMass {
        private final Source kg;
        private final Source fed;
        private final Source idle;

        FedMass(Network.Assembly assembly) {
            kg = assembly.source(
                    Network.NOWHERE, assembly.meter(Meter.of("fed_mass").hourly(HOUR_S, "feed_kg_h")));
            fed = assembly.source(
                    Network.NOWHERE, assembly.meter(Meter.of("days_fed").told(DAYS_FED)));
            idle = assembly.source(
                    Network.NOWHERE, assembly.meter(Meter.of("days_idle").told(DAYS_IDLE)));
        }

        void set(double kgPerSWhileOpen) {
            kg.set(open ? kgPerSWhileOpen : 0);
            fed.set(kgPerSWhileOpen > 0 ? 1 / DAY_S : 0);
            idle.set(kgPerSWhileOpen > 0 ? 0 : 1 / DAY_S);
        }
    }

    /**
     * Adds the feed to a network.
     *
     * @param design the design
     * @param surroundings what is outside
     * @param season what the calendar puts in force
     * @param around what is around the tank, whose temperature feed from the room has
     * @param hygienisationSupply what heats a batch before it is fed
     * @param assembly the network being gathered
     */
    public FeedPart(
            Design design,
            Surroundings surroundings,
            InForce season,
            Around around,
            Supply hygienisationSupply,
            Network.Assembly assembly) {
        this.design = design;
        this.surroundings = surroundings;
        this.season = season;
        this.around = around;
        Feed feed = design.feed();
        flow = new FeedFlow(feed, surroundings);
        contentsJPerKgK = design.contentsSpecificHeatJPerKgK();
        fresh = new Stream(feed.temperature(), assembly);
        water = new Stream(feed.water().map(DilutionWater::temperature).orElse(feed.temperature()), assembly);
        heated = feed.hygienisation().map(h -> new HeatedBatch(h, feed.temperature(), hygienisationSupply, assembly));
        auger = assembly.source(
                Network.NOWHERE, assembly.meter(Meter.electricity("auger", "auger", "auger_electric_w")));
        shredder = assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("shredder", "shredder")));
        separator = design.effluent()
                .map(leaves ->
                        assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("separator", "separator"))));
        mass = season.changes() ? Optional.of(new FedMass(assembly)) : Optional.empty();
        carry();
        assembly.part(this);
    }

    /** What each stream carries today. */
    private void carry() {
        Feed feed = design.feed();
        DayOfFeed unheated = DayOfFeed.of(feed, season, false);
        fresh.carries(unheated.kg(), unheated.totalSolidsFraction());
        water.carries(feed.waterKgPerDay() * season.today().waterFactor(), 0);
        if (heated.isPresent()) {
            DayOfFeed batch = DayOfFeed.of(feed, season, true);
            heated.get().carries(batch.kg(), batch.totalSolidsFraction());
        }
    }

    /** Feeds as measured from now on, feedstocks and water together, in place of the feeding times. */
    public void feedAs(KnownRate kgPerS) {
        flow.flowAs(kgPerS);
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
        boolean wasOpen = open;
        open = flow.isOpen(interval);
        if (season.changes() || flow.isMeasured()) {
            carry();
        } else if (!open && !wasOpen) {
            return;
        }
        double kgPerS = open
                ? fresh.kgPerS + heated.map(batch -> ((Stream) batch).kgPerS).orElse(0.0)
                : 0;
        auger.set(kgPerS * design.feed().handling().augerWhPerKg() * J_PER_WH);
        shredder.set(kgPerS * design.feed().handling().shredderWhPerKg() * J_PER_WH);
        separator.ifPresent(pressed -> pressed.set(
                (open ? streams.stream().mapToDouble(stream -> stream.kgPerS).sum() : 0)
                        * design.effluent().orElseThrow().separatorWhPerKg()
                        * J_PER_WH));
        mass.ifPresent(fed ->
                fed.set(streams.stream().mapToDouble(stream -> stream.kgPerS).sum()));
        for (Stream stream : streams) {
            if (open) {
                stream.enter(interval.hour());
            } else {
                stream.rest();
            }
        }
    }

    @Override
    public void ask(double timeS, State state) {
        if (open) {
            for (Stream stream : streams) {
                stream.ask(state);
            }
        }
    }
}
