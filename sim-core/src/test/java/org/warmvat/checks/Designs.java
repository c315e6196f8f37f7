package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.FeedHandling;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.Control;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Tank;
import org.warmvat.sample.TankPlan;

/** Designs for the checks: as plain as a check allows. */
final class Designs {

    /** Usual cardinal temperatures of mesophilic digestion; common practice, no source. */
    static final CardinalTemperatures MESOPHILIC = new CardinalTemperatures(0, 37, 45);

    private Designs() {}

    /** Usual films and faces round given layers. */
    static Envelope envelope(List<Layer> wall, List<Layer> lid, List<Layer> floor, EnvelopeRules rules) {
        TankPlan plan = new TankPlan();
        return new Envelope(wall, lid, floor, plan.outerFace, plan.films, rules);
    }

    /** Sheet steel all round. */
    static Envelope bare() {
        List<Layer> sheet = List.of(Chains.layer(0.002, 50, 7800, 450, 1));
        return envelope(sheet, sheet, sheet, Chains.RULES);
    }

    /** A tank that is fed nothing and heated by nothing. */
    static Design of(Tank tank, Envelope envelope) {
        Feed nothing = new TankPlan().quiet().build().feed();
        return of(tank, envelope, nothing, water(1000), Optional.empty());
    }

    /** Contents that are water. */
    static Contents water(double densityKgPerM3) {
        return new Contents(densityKgPerM3, Optional.of(0.0), 1600, 0.6);
    }

    /** Feed all day long, without auger, shredder or exchanger. */
    static Feed feed(FeedTemperature temperature, Feedstock... stocks) {
        return new Feed(
                List.of(stocks),
                temperature,
                Optional.empty(),
                new Feed.AllDay(),
                new FeedHandling(0, 0, 0, true, 2),
                Optional.empty());
    }

    /** A design at 35 °C without heaters or mixing. */
    static Design of(Tank tank, Envelope envelope, Feed feed, Contents contents, Optional<Gas> gas) {
        Design plain = new TankPlan()
                .quiet()
                .build()
                .with(tank)
                .with(envelope)
                .with(feed)
                .with(contents)
                .with(new Control(35, 1, new Minimum.At(30), 0, new Control.DailyChange(1, 2), 10));
        return gas.map(plain::with).orElse(plain);
    }
}
