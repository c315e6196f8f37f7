package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.Fitting;
import org.warmvat.design.Site;

/** The whole design file. */
record DesignFile(
        @JsonProperty("title")
        @Key(
                says = "Name of the design, printed on every result",
                usual = "\"untitled tank\"",
                pattern = "\\S",
                form = "text that is not blank")
        String title,

        @JsonProperty("tank") @Key(says = "Shape, size and place of the tank")
        TankKeys tank,

        @JsonProperty("envelope")
        @Key(says = "Wall, lid and floor: as lists of layers from inside to outside, or as shell and insulation")
        EnvelopeKeys envelope,

        @JsonProperty("materials")
        @Key(says = "Extra materials, or other numbers for known ones, by name", usual = "{}")
        Map<String, MaterialKeys> materials,

        @JsonProperty("fittings")
        @Key(says = "Losses beside the envelope: inlets, outlets, gas neck, shaft, hatches, legs, straps", usual = "[]")
        List<FittingKeys> fittings,

        @JsonProperty("feed") @Key(says = "What is fed, when and how warm")
        FeedKeys feed,

        @JsonProperty("mixer") @Key(says = "Paddle and drive", usual = "{}")
        MixerKeys mixer,

        @JsonProperty("control") @Key(says = "Set-point, band and floor temperature")
        ControlKeys control,

        @JsonProperty("solar") @Key(says = "Solar circuit; leave the block out for none")
        Optional<SolarKeys> solar,

        @JsonProperty("gas") @Key(says = "Gas side; leave the block out to compute no gas")
        Optional<GasKeys> gas,

        @JsonProperty("backup") @Key(says = "The other heat source; leave the block out for none")
        Optional<BackupKeys> backup,

        @JsonProperty("contents") @Key(says = "Properties of the slurry in the tank", usual = "{}")
        ContentsKeys contents,

        @JsonProperty("ground") @Key(says = "The ground around the tank", usual = "{}")
        GroundKeys ground,

        @JsonProperty("sky") @Key(says = "Conventions about sun and sky", usual = "{}")
        SkyKeys sky,

        @JsonProperty("assumed_weather") @Key(says = "What is taken where the weather file has no column", usual = "{}")
        AssumedWeatherKeys assumedWeather,

        @JsonProperty("run_in") @Key(says = "How long a year is run in before its first hour counts", usual = "{}")
        RunInKeys runIn,

        @JsonProperty("prices") @Key(says = "Money, carbon and the weight of electricity", usual = "{}")
        PricesKeys prices) {

    /** Adds what is wrong across keys; each key alone is within the schema. */
    void check(Faults faults) {
        Materials known = new Materials(materials);
        tank.check(faults);
        envelope.check(faults, known);
        for (int i = 0; i < fittings.size(); i++) {
            fittings.get(i).check(faults, KeyPath.entry("fittings", i), known);
        }
        feed.check(faults, tank.place() == TankKeys.Spot.INDOORS);
        mixer.check(faults);
        control.check(faults);
        solar.ifPresent(s -> s.check(faults, control.setpointC()));
        gas.ifPresent(g -> g.check(faults));
        backup.ifPresent(b -> b.check(faults, gas.isPresent()));
        ground.check(faults);
        runIn.check(faults);
    }

    /** What is allowed but deserves a word. */
    List<String> cautions(Design design) {
        List<String> cautions = new ArrayList<>(contents.doubts(design));
        backup.ifPresent(b -> cautions.addAll(b.idle()));
        return List.copyOf(cautions);
    }

    /** The design of a checked file. */
    Design design() {
        Materials known = new Materials(materials);
        Fitting.PipeFilm still = envelope.films().pipeFilm(contents.conductivityWPerMK());
        return new Design(
                title,
                tank.tank(),
                envelope.envelope(known),
                fittings.stream().map(f -> f.fitting(known, still)).toList(),
                feed.feed(),
                mixer.mixer(),
                solar.map(s -> s.circuit(control.setpointC())),
                backup.map(BackupKeys::circuit),
                control.control(),
                gas.map(GasKeys::gas),
                contents.contents(),
                new Site(ground.ground(), sky.sky(), assumedWeather.assumed()),
                runIn.runIn(),
                prices.prices());
    }
}
