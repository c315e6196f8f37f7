package org.warmvat.design;

import java.util.List;
import java.util.Optional;

/**
 * Everything a builder decides about one heated digester: the root of the design records.
 *
 * @param title the design's own name, free text
 * @param tank shape, depth and place
 * @param envelope layers, faces and films
 * @param fittings inlets, outlets, legs, hatches: losses beside the envelope; may be empty
 * @param feed what is fed, when and how warm
 * @param mixer the paddle and its drive
 * @param solar the solar circuit, if there is one
 * @param backup the other heat source, if there is one
 * @param control set-point, band and floor temperature
 * @param gas the gas side, if gas is to be computed
 * @param contents properties of the slurry in the tank
 * @param site ground, sky and what to assume where the weather is silent
 * @param runIn how the year is started
 * @param prices money, carbon and the primary-energy factor
 * @param calendar spells in which numbers are others
 * @param surroundings what stands in the tank's sky
 */
public record Design(
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
        Site site,
        RunIn runIn,
        Prices prices,
        SeasonCalendar calendar,
        Shading surroundings) {

    /**
     * Checks what holds across the parts.
     *
     * @throws IllegalArgumentException when the feed stands in a room and the tank does not, when the backup burns the tank's own gas
     *     and no gas is computed, or when the solar limit is below the set-point
     */
    public Design {
        Ranges.named("title", title);
        fittings = List.copyOf(fittings);
        Ranges.stated(
                "feed or water from a room",
                !feed.needsRoom() || tank.place().isIndoors() || tank.place().isSheltered(),
                "a tank indoors or in a shelter");
        Ranges.stated(
                "backup burning the tank's own gas",
                gas.isPresent()
                        || backup.filter(b -> b.source() == BackupSource.OWN_GAS)
                                .isEmpty(),
                "a gas block");
        double setpointC = control.setpointC();
        solar.ifPresent(s -> Ranges.stated(
                "solar high limit " + Ranges.text(s.pumpControl().tankHighLimitC()) + " C",
                s.pumpControl().tankHighLimitC() >= setpointC,
                "at least the set-point " + Ranges.text(setpointC) + " C"));
        calendar.spells()
                .forEach(spell -> spell.feed()
                        .feedstocks()
                        .keySet()
                        .forEach(name -> Ranges.stated(
                                "feedstock " + name + " of spell " + spell.name(),
                                feed.names().contains(name),
                                "a feedstock's name")));
        if (!calendar.isNone()) {
            season(calendar, control, mixer, feed, solar.isPresent(), backup.isPresent());
        }
    }

    /** A design that is the same all year and stands in the open. */
    public Design(
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
            Site site,
            RunIn runIn,
            Prices prices) {
        this(
                title,
                tank,
                envelope,
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
                SeasonCalendar.NONE,
                Shading.NONE);
    }

    /**
     * What is in force on each day of the year (equations 12.1 to 12.3).
     *
     * @throws IllegalArgumentException when the calendar's ramps lean on one another round the year
     */
    public SeasonTable season() {
        return season(calendar, control, mixer, feed, solar.isPresent(), backup.isPresent());
    }

    private static SeasonTable season(
            SeasonCalendar calendar, Control control, Mixer mixer, Feed feed, boolean solar, boolean backup) {
        return new SeasonTable(
                calendar,
                new SeasonTable.Base(
                        control.setpointC(),
                        control.bandK(),
                        control.minimum(),
                        mixer.minutesPerHour(),
                        feed.names(),
                        solar,
                        backup));
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

    /** Heat capacity of the contents {@code C_s}, J/K (equation 1.2). */
    public double contentsHeatCapacityJPerK() {
        return contentsKg() * contentsSpecificHeatJPerKgK();
    }
}
