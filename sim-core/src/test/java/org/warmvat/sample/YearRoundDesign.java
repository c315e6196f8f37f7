package org.warmvat.sample;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.Adjust;
import org.warmvat.design.Design;
import org.warmvat.design.Plausible;
import org.warmvat.design.Prices;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.surroundings.Outdoors;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Tank;

/** A design that is the same all year and stands in the open, as drawn. */
public final class YearRoundDesign {

    private YearRoundDesign() {}

    /** The design of these parts. */
    public static Design of(
            String title,
            Tank tank,
            Envelope envelope,
            List<Fitting> fittings,
            Feed feed,
            Mixer mixer,
            Optional<SolarCircuit> solar,
            Optional<BackupCircuit> backup,
            Control control,
            Optional<Gas> gas,
            Contents contents,
            Outdoors site,
            RunIn runIn,
            Prices prices) {
        return new Design(
                title,
                tank,
                envelope,
                Map.of(),
                fittings,
                feed,
                mixer,
                solar,
                backup,
                control,
                gas,
                contents,
                site,
                runIn,
                prices,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Adjust.NONE,
                Optional.empty(),
                Reader.usual(Plausible.class));
    }
}
