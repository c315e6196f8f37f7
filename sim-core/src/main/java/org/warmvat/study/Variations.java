package org.warmvat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.BackupSource;
import org.warmvat.design.Coil;
import org.warmvat.design.Collector;
import org.warmvat.design.Contents;
import org.warmvat.design.Control;
import org.warmvat.design.DailySchedule;
import org.warmvat.design.Design;
import org.warmvat.design.Envelope;
import org.warmvat.design.EnvelopeRules;
import org.warmvat.design.Feed;
import org.warmvat.design.Feedstock;
import org.warmvat.design.Gas;
import org.warmvat.design.Ground;
import org.warmvat.design.GroundWave;
import org.warmvat.design.Layer;
import org.warmvat.design.Mixer;
import org.warmvat.design.PumpControl;
import org.warmvat.design.Site;
import org.warmvat.design.SolarCircuit;
import org.warmvat.design.Tank;

/** A design with one thing changed and everything else as it was. Pure functions; each refuses what the design records refuse. */
public final class Variations {

    private static final double MOST_LIMIT_C = 100;
    private static final double MOST_COIL_M2 = 100;

    private Variations() {}

    /** No backup circuit. */
    public static Design withoutBackup(Design design) {
        return new Change(design).backup(Optional.empty()).design();
    }

    /** No solar circuit; the sun still shines on the tank itself. */
    public static Design withoutSolar(Design design) {
        return new Change(design).solar(Optional.empty()).design();
    }

    /** An electric element in the slurry that may always heat. */
    public static Design withElement(Design design, double ratedW) {
        return new Change(design)
                .backup(Optional.of(new BackupCircuit(
                        BackupSource.ELECTRIC, 1, ratedW, DailySchedule.continuous(), new BackupCircuit.Immersed())))
                .design();
    }

    /** Another rated power of the backup, W; a design without backup stays so. */
    public static Design withBackupPower(Design design, double ratedW) {
        return withBackup(
                design, b -> new BackupCircuit(b.source(), b.efficiency(), ratedW, b.allowedHours(), b.through()));
    }

    /** The backup's coil area times a factor; an element in the slurry has none and stays. */
    public static Design withBackupCoilScaled(Design design, double factor) {
        return withBackup(
                design,
                b -> b.through() instanceof BackupCircuit.Circuit c
                        ? new BackupCircuit(
                                b.source(),
                                b.efficiency(),
                                b.ratedW(),
                                b.allowedHours(),
                                new BackupCircuit.Circuit(
                                        c.flow(),
                                        c.waterKg(),
                                        c.lossUaWPerK(),
                                        c.loop(),
                                        scaled(c.coil(), factor),
                                        c.cakingC()))
                        : b);
    }

    private static Design withBackup(Design design, UnaryOperator<BackupCircuit> change) {
        return new Change(design).backup(design.backup().map(change)).design();
    }

    /** Another collector area, m2; a design without solar circuit stays so. */
    public static Design withCollectorArea(Design design, double areaM2) {
        return withSolar(design, s -> {
            Collector other = s.collector().withAreaM2(areaM2);
            return new SolarCircuit(other, s.loop(), s.pumpControl(), s.coil(), s.stagnationC(), s.cakingC());
        });
    }

    /** The solar coil's conductance times a factor, by its area. */
    public static Design withSolarCoilScaled(Design design, double factor) {
        return withSolar(
                design,
                s -> new SolarCircuit(
                        s.collector(),
                        s.loop(),
                        s.pumpControl(),
                        scaled(s.coil(), factor),
                        s.stagnationC(),
                        s.cakingC()));
    }

    /** The high limit of the solar pump raised, K, but not above 100 °C. */
    public static Design withHighLimitRaised(Design design, double byK) {
        return withSolar(design, s -> {
            PumpControl p = s.pumpControl();
            PumpControl other = new PumpControl(
                    p.startDifferenceK(),
                    p.stopDifferenceK(),
                    Math.min(MOST_LIMIT_C, p.tankHighLimitC() + byK),
                    p.restartBelowLimitK(),
                    p.startBarC(),
                    p.limitFollowsSetpoint());
            return new SolarCircuit(s.collector(), s.loop(), other, s.coil(), s.stagnationC(), s.cakingC());
        });
    }

    private static Design withSolar(Design design, UnaryOperator<SolarCircuit> change) {
        return new Change(design).solar(design.solar().map(change)).design();
    }

    private static Coil scaled(Coil coil, double factor) {
        return new Coil(
                Math.min(MOST_COIL_M2, coil.areaM2() * factor),
                coil.uWPerM2K(),
                coil.uStillWPerM2K(),
                coil.foulingM2KPerW());
    }

    /** Every layer of insulation times a factor in thickness. */
    public static Design withFoamScaled(Design design, double factor) {
        Envelope e = design.envelope();
        Envelope other = new Envelope(
                foam(e.wall(), e.rules(), factor),
                foam(e.lid(), e.rules(), factor),
                foam(e.floor(), e.rules(), factor),
                e.outerFace(),
                e.films(),
                e.rules());
        return new Change(design).envelope(other).design();
    }

    private static List<Layer> foam(List<Layer> layers, EnvelopeRules rules, double factor) {
        return layers.stream()
                .map(l -> rules.isInsulation(l) ? new Layer(l.material(), l.thicknessM() * factor, l.subNodes()) : l)
                .toList();
    }

    /**
     * The main insulation of wall, lid and floor thicker by some metres, thinner where it is negative; a part without insulation
     * stays.
     */
    public static Design withFoamThicker(Design design, double byM) {
        Envelope e = design.envelope();
        Envelope other = new Envelope(
                thicker(e.wall(), e.rules(), byM),
                thicker(e.lid(), e.rules(), byM),
                thicker(e.floor(), e.rules(), byM),
                e.outerFace(),
                e.films(),
                e.rules());
        return new Change(design).envelope(other).design();
    }

    private static List<Layer> thicker(List<Layer> layers, EnvelopeRules rules, double byM) {
        List<Layer> changed = new ArrayList<>(layers);
        rules.mainInsulation(layers)
                .ifPresent(main -> changed.set(
                        layers.indexOf(main), new Layer(main.material(), main.thicknessM() + byM, main.subNodes())));
        return changed;
    }

    /** Neither feed nor water; the contents keep the solids and the heat capacity that the feed gave them. */
    public static Design withoutFeed(Design design) {
        Feed f = design.feed();
        List<Feedstock> none = f.feedstocks().stream()
                .map(s -> new Feedstock(
                        s.name(),
                        0,
                        s.totalSolidsFraction(),
                        s.volatileOfTotalSolids(),
                        s.methaneNm3PerKgVs(),
                        s.ratePerDay()))
                .toList();
        Contents contents = new Contents(
                design.contents().densityKgPerM3(),
                Optional.of(design.totalSolidsFraction()),
                design.contents().solidsJPerKgK());
        return new Change(design)
                .feed(new Feed(none, f.temperature(), Optional.empty(), f.schedule(), f.handling()))
                .contents(contents)
                .design();
    }

    /** The mixer standing still. */
    public static Design withoutMixing(Design design) {
        Mixer m = design.mixer();
        return new Change(design)
                .mixer(new Mixer(m.shaft(), m.driveEfficiency(), m.idleW(), 0))
                .design();
    }

    /** The ground's yearly wave given. */
    public static Design withGroundWave(Design design, GroundWave wave) {
        Ground g = design.site().ground();
        Ground other = new Ground(Optional.of(wave), g.diffusivityM2PerDay(), g.depthM(), g.reflectance());
        return new Change(design)
                .site(new Site(other, design.site().sky(), design.site().assumedWeather()))
                .design();
    }

    /** A design being changed. */
    private static final class Change {
        private final Design old;
        private final Tank tank;
        private final Control control;
        private final Optional<Gas> gas;
        private Envelope envelope;
        private Feed feed;
        private Mixer mixer;
        private Optional<SolarCircuit> solar;
        private Optional<BackupCircuit> backup;
        private Contents contents;
        private Site site;

        Change(Design design) {
            old = design;
            tank = design.tank();
            envelope = design.envelope();
            feed = design.feed();
            mixer = design.mixer();
            solar = design.solar();
            backup = design.backup();
            control = design.control();
            gas = design.gas();
            contents = design.contents();
            site = design.site();
        }

        Change envelope(Envelope other) {
            envelope = other;
            return this;
        }

        Change feed(Feed other) {
            feed = other;
            return this;
        }

        Change mixer(Mixer other) {
            mixer = other;
            return this;
        }

        Change solar(Optional<SolarCircuit> other) {
            solar = other;
            return this;
        }

        Change backup(Optional<BackupCircuit> other) {
            backup = other;
            return this;
        }

        Change contents(Contents other) {
            contents = other;
            return this;
        }

        Change site(Site other) {
            site = other;
            return this;
        }

        Design design() {
            return new Design(
                    old.title(),
                    tank,
                    envelope,
                    old.fittings(),
                    feed,
                    mixer,
                    solar,
                    backup,
                    control,
                    gas,
                    contents,
                    site,
                    old.runIn(),
                    old.prices(),
                    old.calendar(),
                    old.surroundings());
        }
    }
}
