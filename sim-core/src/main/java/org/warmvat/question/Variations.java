package org.warmvat.question;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.keys.Parts;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.Spell;

/** A design with one thing changed and everything else as it was. Pure functions; each refuses what the design records refuse. */
public final class Variations {

    private static final double MOST_LIMIT_C = 100;
    private static final double MOST_COIL_M2 = 100;

    private Variations() {}

    /** An electric element in the slurry that may always heat. */
    public static Design withElement(Design design, double ratedW) {
        return design.with(new BackupCircuit(
                BackupSource.ELECTRIC, 1, ratedW, DailySchedule.continuous(), new BackupCircuit.Immersed()));
    }

    /** Another rated power of the backup, W; a design without backup stays so. */
    public static Design withBackupPower(Design design, double ratedW) {
        return design.backup().isEmpty() ? design : design.with("backup.rated_w", ratedW);
    }

    /** The backup's coil area times a factor; an element in the slurry has none and stays. */
    public static Design withBackupCoilScaled(Design design, double factor) {
        boolean coil = design.backup().flatMap(BackupCircuit::circuit).isPresent();
        return coil ? scaled(design, "backup.coil.area_m2", factor) : design;
    }

    /** Another collector area, m2; a design without solar circuit stays so. */
    public static Design withCollectorArea(Design design, double areaM2) {
        return design.solar().isEmpty() ? design : design.with("solar.area_m2", areaM2);
    }

    /** The solar coil's conductance times a factor, by its area. */
    public static Design withSolarCoilScaled(Design design, double factor) {
        return design.solar().isEmpty() ? design : scaled(design, "solar.coil.area_m2", factor);
    }

    private static Design scaled(Design design, String area, double factor) {
        return design.with(area, Math.min(MOST_COIL_M2, design.number(area) * factor));
    }

    /** The high limit of the solar pump raised, K, but not above 100 °C. */
    public static Design withHighLimitRaised(Design design, double byK) {
        return design.solar().isEmpty()
                ? design
                : design.with("solar.tank_high_limit_c", Math.min(MOST_LIMIT_C, design.highLimitC() + byK));
    }

    /** Every layer of insulation times a factor in thickness. */
    public static Design withFoamScaled(Design design, double factor) {
        return layered(
                design,
                layers -> layers.stream()
                        .map(l -> design.envelope().rules().isInsulation(l)
                                ? new Layer(l.material(), l.thicknessM() * factor, l.subNodes())
                                : l)
                        .toList());
    }

    /**
     * The main insulation of wall, lid and base thicker by some metres, thinner where it is negative; a part without insulation
     * stays.
     */
    public static Design withFoamThicker(Design design, double byM) {
        return layered(design, layers -> {
            List<Layer> changed = new ArrayList<>(layers);
            design.envelope()
                    .rules()
                    .mainInsulation(layers)
                    .ifPresent(main -> changed.set(
                            layers.indexOf(main),
                            new Layer(main.material(), main.thicknessM() + byM, main.subNodes())));
            return changed;
        });
    }

    private static Design layered(Design design, UnaryOperator<List<Layer>> change) {
        Envelope e = design.envelope();
        return design.with(new Envelope(
                change.apply(e.wall()),
                change.apply(e.lid()),
                change.apply(e.floor()),
                e.outerFace(),
                e.films(),
                e.rules()));
    }

    /** Neither feed nor water; the contents keep the solids and the heat capacity that the feed gave them. */
    public static Design withoutFeed(Design design) {
        Map<String, Double> none = new HashMap<>();
        for (int i = 0; i < design.feed().feedstocks().size(); i++) {
            none.put("feed.feedstocks[" + i + "].kg_per_day", 0.0);
        }
        none.put("contents.total_solids", design.totalSolidsFraction());
        return design.with(none).without(DilutionWater.class);
    }

    /** The mixer standing still, in every spell too. */
    public static Design withoutMixing(Design design) {
        Map<String, Double> still = new HashMap<>(Map.of("mixer.minutes_per_hour", 0.0));
        design.numbers().keySet().stream()
                .filter(key -> key.matches("calendar\\[[0-9]+]\\.mixer_minutes_per_hour"))
                .forEach(key -> still.put(key, 0.0));
        return design.with(still);
    }

    /** The solar pump off in a further stretch of the year. */
    public static Design withSolarOff(Design design, MonthDay from, MonthDay to) {
        Spell off = new Spell(
                Optional.of("solar pump off"),
                from,
                to,
                0,
                new Spell.HeldAt(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
                new Spell.Fed(OptionalDouble.empty(), Map.of()),
                OptionalDouble.empty(),
                new Spell.Runs(Optional.of(false), Optional.empty(), Optional.empty()));
        List<Spell> spells = new ArrayList<>(design.spells());
        spells.add(off);
        return Parts.component(design, "spells", spells);
    }
}
