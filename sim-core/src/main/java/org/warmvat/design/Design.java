package org.warmvat.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.gas.Condensate;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.keys.Bounds;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Numbers;
import org.warmvat.design.keys.Parts;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.season.SeasonCalendar;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.season.Spell;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.Outdoors;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.surroundings.Shelter;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Contents;
import org.warmvat.design.tank.Effluent;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Tank;

/**
 * Everything a builder decides about one heated digester: the root of the design records. One component is one block of a design file,
 * so that keys, schema and record cannot part; hence their number.
 *
 * @param title the design's own name, free text
 * @param tank shape, depth and place
 * @param envelope layers, faces and films
 * @param materials materials of one's own, by name
 * @param fittings inlets, outlets, legs, hatches: losses beside the envelope; may be empty
 * @param feed what is fed, when and how warm
 * @param mixer the paddle and its drive
 * @param solar the solar circuit, if there is one
 * @param backup the backup heater, if there is one
 * @param control set-point, band and minimum temperature
 * @param gas the gas side, if gas is to be computed
 * @param contents properties of the slurry in the tank
 * @param site ground, sky and what to assume where the weather is silent
 * @param runIn how the year is started
 * @param prices money, carbon and the primary-energy factor
 * @param spells stretches of the year in which numbers are others, later ones winning over earlier ones
 * @param shelter the shelter the tank stands in, if it does
 * @param effluent what is done with what leaves the tank, if anything
 * @param adjust factors on what the drawing says
 * @param project title block, if there is one
 * @param plausible bounds beyond which numbers are remarked on
 */
public record Design(
        @Key(
                name = "title",
                says = "Name of the design, printed on every result",
                usual = "untitled tank",
                pattern = "\\S",
                form = "text that is not blank")
        String title,

        @Key(name = "tank", says = "Shape, size and place of the tank")
        Tank tank,

        @Key(
                name = "envelope",
                says = "Wall, lid and base: as lists of layers from inside to outside, or as shell and insulation")
        Envelope envelope,

        @Key(name = "materials", says = "Extra materials, or other numbers for known ones, by name", usual = "{}")
        Map<String, Material> materials,

        @Key(
                name = "fittings",
                says = "Losses beside the envelope: inlets, outlets, gas neck, shaft, hatches, legs, straps",
                usual = "[]")
        List<Fitting> fittings,

        @Key(name = "feed", says = "What is fed, when and how warm")
        Feed feed,

        @Key(name = "mixer", says = "Paddle and drive", usual = "{}")
        Mixer mixer,

        @Key(name = "solar", says = "Solar circuit; leave the block out for none")
        Optional<SolarCircuit> solar,

        @Key(name = "backup", says = "Backup heater; leave the block out for none")
        Optional<BackupCircuit> backup,

        @Key(name = "control", says = "Set-point, band and minimum temperature")
        Control control,

        @Key(name = "gas", says = "Gas side; leave the block out to compute no gas")
        Optional<Gas> gas,

        @Key(name = "contents", says = "Properties of the slurry in the tank", usual = "{}")
        Contents contents,

        @Key Outdoors site,

        @Key(name = "run_in", says = "How long a year is run in before its first hour counts", usual = "{}")
        RunIn runIn,

        @Key(name = "prices", says = "Money, carbon and the weight of electricity", usual = "{}")
        Prices prices,

        @Key(
                name = "calendar",
                says = "Stretches of the year in which numbers are others, later ones winning over earlier ones",
                usual = "[]",
                quiet = true)
        List<Spell> spells,

        @Key(name = "shelter", says = "Unheated shelter round the tank, with place: shelter")
        Optional<Shelter> shelter,

        @Key(name = "effluent", says = "What is done with what leaves the tank; leave the block out for nothing")
        Optional<Effluent> effluent,

        @Key(
                name = "adjust",
                says = "Factors on what the drawing says, as a log or a measurement has shown",
                usual = "{}",
                quiet = true)
        Adjust adjust,

        @Key(name = "project", says = "Title block of reports")
        Optional<Project> project,

        @Key(
                name = "plausible",
                says =
                        "Bounds beyond which numbers are remarked on as unlikely (common practice, no source), for who knows better",
                usual = "{}",
                quiet = true)
        Plausible plausible) {

    private static final String USUAL =
            "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}, envelope: {insulation_mm: 100}, control: {setpoint_c: 36}, "
                    + "feed: {feedstocks: [{kg_per_day: 10}], water: {}}, solar: {}, backup: {}, gas: {}}";

    /**
     * Checks what holds across the parts.
     *
     * @throws Refused when the feed stands in a room and the tank does not, when the backup burns the tank's own gas and no gas is
     *     computed, or when the solar limit is below the set-point
     */
    public Design {
        fittings = List.copyOf(fittings);
        spells = List.copyOf(spells);
        materials = Collections.unmodifiableMap(new LinkedHashMap<>(materials));
        Ranges.check(
                Design.class,
                title,
                tank,
                envelope,
                materials,
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
                spells,
                shelter,
                effluent,
                adjust,
                project,
                plausible);
        List<Refused.Fault> faults = DesignFaults.of(tank, feed, solar, backup, control, gas, shelter, spells);
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        if (!spells.isEmpty()) {
            season(spells, control, mixer, feed, solar.isPresent(), backup.isPresent());
        }
    }

    /** The calendar. */
    public SeasonCalendar calendar() {
        return new SeasonCalendar(spells, control.graceDays());
    }

    /** What is in force on each day of the year (equations 12.1 to 12.3). */
    public SeasonTable season() {
        return season(spells, control, mixer, feed, solar.isPresent(), backup.isPresent());
    }

    private static SeasonTable season(
            List<Spell> spells, Control control, Mixer mixer, Feed feed, boolean hasSolar, boolean hasBackup) {
        return new SeasonTable(
                new SeasonCalendar(spells, control.graceDays()),
                new SeasonTable.Base(
                        control.setpointC(),
                        control.bandK(),
                        control.minimum(),
                        mixer.minutesPerHour(),
                        feed.names(),
                        hasSolar,
                        hasBackup));
    }

    /** The same design with every feedstock's potential and rate taken low, as they are, or high (equation 19.4). */
    public Design at(Estimate estimate) {
        return Parts.each(this, Feedstock.class, stock -> stock.at(estimate));
    }

    /** What stands in the collector's sky: its own, else the tank's; nothing without a solar circuit. */
    public Shading collectorShading() {
        return solar.map(s -> s.collector().shading().over(site.surroundings())).orElse(Shading.NONE);
    }

    /**
     * The design of a tree of keys: maps, lists, numbers and texts with the names of the design file; absent keys take their defaults.
     *
     * @param keys keys as written
     * @param findings takes what is wrong and which defaults are used
     */
    public static Design of(Map<String, ?> keys, Findings findings) {
        return DesignKeys.read(keys, findings);
    }

    /**
     * A tank of 900 litres with a solar circuit, a backup heater and gas, everything at its default: the start of one's own.
     */
    public static Design usual() {
        return of(Reader.tree(USUAL), Findings.strict());
    }

    /**
     * The number of a key, in the file's unit.
     *
     * @param path path of the key, such as {@code solar.area_m2} or {@code envelope.wall[pir_foam].thickness_mm}
     * @throws Refused when the design has no such number
     */
    public double number(String path) {
        return Numbers.at(this, path);
    }

    /** All numbers of the design, in the file's units, by the paths of their keys. */
    public Map<String, Double> numbers() {
        return Numbers.all(this);
    }

    /**
     * What a number may be by its key alone.
     *
     * @param path path of the key as for {@link #number}
     * @throws Refused when there is no such key, or it is no number
     */
    public static Bounds bounds(String path) {
        return Numbers.bounds(Design.class, path);
    }

    /**
     * The same design with one number exchanged and everything that follows from it.
     *
     * @param path path of the key as for {@link #number}
     * @param value the number, in the file's unit
     * @throws Refused when there is no such number, or the design is not allowed with it
     */
    public Design with(String path, double value) {
        return with(Map.of(path, value));
    }

    /**
     * The same design with some numbers exchanged at once, so that only the whole must be allowed.
     *
     * @throws Refused when there is no such number, or the design is not allowed with them
     */
    public Design with(Map<String, Double> numbers) {
        Design changed = Numbers.with(this, envelope.listed(numbers));
        if (numbers.keySet().stream().anyMatch(path -> path.startsWith("materials"))) {
            return Parts.each(
                    changed, Material.class, material -> changed.materials().getOrDefault(material.name(), material));
        }
        return changed;
    }

    /**
     * The same design with one of its parts exchanged.
     *
     * @param part a record of a kind the design has one of, such as {@link Control}, {@link SolarCircuit} or {@link Ground}
     */
    public Design with(Record part) {
        return Parts.with(this, part);
    }

    /** The same design without a part that may be absent, such as {@link SolarCircuit}. */
    public Design without(Class<? extends Record> part) {
        return Parts.without(this, part);
    }

    /** The contents' temperature at which the solar pump stops, C; infinite without a solar circuit. */
    public double highLimitC() {
        return solar.map(s -> s.pumpControl().highLimit().celsius(control.setpointC()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether backup heater or hygienisation burn the tank's own gas. */
    public boolean burnsOwnGas() {
        return backup.filter(heater -> heater.source() == BackupSource.OWN_GAS).isPresent()
                || feed.hygienisation()
                        .filter(batch -> batch.source() == BackupSource.OWN_GAS)
                        .isPresent();
    }

    /** Whether anything in this design asks for the temperature of the ground. */
    public boolean usesGround() {
        boolean condensate = gas.flatMap(Gas::condensate)
                .filter(to -> to instanceof Condensate.Ground)
                .isPresent();
        return tank.standsOn() == StandsOn.GROUND
                || feed.usesGround()
                || tank.place().isSheltered()
                || condensate;
    }

    /** Mass of the contents, kg. */
    public double contentsKg() {
        return tank.liquidVolumeM3() * contents.densityKgPerM3();
    }

    /** Hydraulic retention time, days: contents over daily feed with its water; infinite without feed. */
    public double retentionDays() {
        return contentsKg() / feed.totalKgPerDay();
    }

    /** Total-solids mass fraction of the contents, 0..1: as given, else {@link #steadyTotalSolidsFraction()} (equation 1.2). */
    public double totalSolidsFraction() {
        return contents.totalSolidsFraction().orElseGet(this::steadyTotalSolidsFraction);
    }

    /**
     * The solids of the whole feed, water included, less the volatile solids digested at steady state and set-point, per mass of
     * feed (equation 1.2). Without gas nothing is digested; without feed the contents count as water (0).
     */
    public double steadyTotalSolidsFraction() {
        double feedKg = feed.totalKgPerDay();
        if (feedKg == 0) {
            return 0;
        }
        double solidsKg = 0;
        for (Feedstock stock : feed.feedstocks()) {
            solidsKg += stock.totalSolidsKgPerDay() - stock.volatileSolidsKgPerDay() * steadyDigestedFraction(stock);
        }
        return solidsKg / feedKg;
    }

    /**
     * Share of a feedstock's volatile solids digested at steady state and set-point, {@code k HRT/(1 + k HRT)} (equations 7.1 and
     * 7.2); 0 without gas.
     */
    public double steadyDigestedFraction(Feedstock stock) {
        double ratePerDay = gas.map(g -> stock.ratePerDay() * g.rateFactor(control.setpointC()))
                .orElse(0.0);
        // per-day loss rates, so that an infinite retention time needs no special case
        double washoutPerDay = feed.totalKgPerDay() / contentsKg();
        return ratePerDay == 0 ? 0 : ratePerDay / (ratePerDay + washoutPerDay);
    }

    /** Specific heat of the contents, J/(kg K) (equation 1.2). */
    public double contentsSpecificHeatJPerKgK() {
        return contents.specificHeatJPerKgK(totalSolidsFraction());
    }

    /** Heat capacity of the contents {@code C_s}, J/K (equation 1.2), as adjusted (equation 16.1). */
    public double contentsHeatCapacityJPerK() {
        return contentsKg() * contentsSpecificHeatJPerKgK() * adjust.capacity();
    }
}
