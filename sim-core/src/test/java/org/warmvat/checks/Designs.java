package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.warmvat.design.AssumedWeather;
import org.warmvat.design.CardinalTemperatures;
import org.warmvat.design.Contents;
import org.warmvat.design.Control;
import org.warmvat.design.DailySchedule;
import org.warmvat.design.Design;
import org.warmvat.design.Envelope;
import org.warmvat.design.EnvelopeRules;
import org.warmvat.design.Feed;
import org.warmvat.design.FeedHandling;
import org.warmvat.design.FeedTemperature;
import org.warmvat.design.Feedstock;
import org.warmvat.design.Films;
import org.warmvat.design.Gas;
import org.warmvat.design.Ground;
import org.warmvat.design.Layer;
import org.warmvat.design.Mixer;
import org.warmvat.design.OuterFace;
import org.warmvat.design.Prices;
import org.warmvat.design.RunIn;
import org.warmvat.design.Site;
import org.warmvat.design.Sky;
import org.warmvat.design.Tank;

/** Designs for the checks: as plain as a check allows. */
final class Designs {

    /** Usual cardinal temperatures of mesophilic digestion; common practice, no source. */
    static final CardinalTemperatures MESOPHILIC = new CardinalTemperatures(0, 37, 45);

    private Designs() {}

    /** Usual films and faces round given layers. */
    static Envelope envelope(List<Layer> wall, List<Layer> lid, List<Layer> floor, EnvelopeRules rules) {
        return new Envelope(wall, lid, floor, new OuterFace(0.5, 0.9), new Films(100, 10, 6, 4, 4, 7.7), rules);
    }

    /** A tank that is fed nothing and heated by nothing. */
    static Design of(Tank tank, Envelope envelope) {
        Feedstock nothing = new Feedstock("nothing", 0, 0.1, 0.8, 0.3, 0.1);
        return of(tank, envelope, feed(new FeedTemperature.Fixed(10), nothing), water(1000), Optional.empty());
    }

    /** Contents that are water. */
    static Contents water(double densityKgPerM3) {
        return new Contents(densityKgPerM3, Optional.of(0.0), 1600);
    }

    /** Feed all day long, without auger, shredder or exchanger. */
    static Feed feed(FeedTemperature temperature, Feedstock... stocks) {
        return new Feed(
                List.of(stocks),
                temperature,
                Optional.empty(),
                DailySchedule.continuous(),
                new FeedHandling(0, 0, 0, true, 2));
    }

    /** A design at 35 °C without heaters or mixing. */
    static Design of(Tank tank, Envelope envelope, Feed feed, Contents contents, Optional<Gas> gas) {
        return new Design(
                "check",
                tank,
                envelope,
                List.of(),
                feed,
                new Mixer(new Mixer.Given(0), 1, 0, 0),
                Optional.empty(),
                Optional.empty(),
                new Control(35, 1, 30, 0, new Control.DailyChange(1, 2)),
                gas,
                contents,
                new Site(
                        new Ground(Optional.empty(), 0.05, 0.5, 0.2),
                        new Sky(1, 0.8, 10),
                        new AssumedWeather(3, 0.75, 0.5)),
                new RunIn(OptionalInt.empty(), 10, 3, 90),
                new Prices(0.3, 0.09, 0.09, "EUR", new Prices.Carbon(0.25, 0.2), 2.5));
    }
}
