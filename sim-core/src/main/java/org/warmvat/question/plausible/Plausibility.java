package org.warmvat.question.plausible;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.Plausible;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.FeedMaterial;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.season.Spell;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.gas.GasEnergy;
import org.warmvat.network.meter.Unit;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.plausible.Remark.Gravity;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.weather.Weather;

/**
 * Remarks on a design that is allowed but unlikely (equation 19.3; common practice, no source). Pure: nothing is run.
 *
 * <p>Heater and coil are held against loss and feed at the set-point in the mean of the coldest 24 hours and the file's mean wind, the
 * collector against the same in its mean air.
 */
public final class Plausibility {

    private static final double S_PER_H = 3600;
    private static final int DAYS = 365;

    private final Design design;
    private final Plausible bounds;
    private final SeasonTable season;
    private final List<Remark> remarks = new ArrayList<>();

    private Plausibility(Design design) {
        this.design = design;
        this.bounds = design.plausible();
        this.season = design.season();
    }

    /**
     * The remarks, the gravest first.
     *
     * @param design the design
     * @param weather weather for what depends on the cold; without it that is left out
     */
    public static List<Remark> of(Design design, Optional<Weather> weather) {
        Plausibility plausibility = new Plausibility(design);
        plausibility.loading();
        plausibility.retention();
        plausibility.litres();
        plausibility.insulation();
        plausibility.window();
        plausibility.uses();
        plausibility.overlaps();
        plausibility.parts();
        plausibility.materials();
        weather.ifPresent(plausibility::heaterAndCollector);
        plausibility.remarks.sort(Comparator.comparing(Remark::gravity));
        return List.copyOf(plausibility.remarks);
    }

    private void remark(String key, Gravity gravity, String form, Object... values) {
        remarks.add(new Remark(key, String.format(Locale.ROOT, form, values), gravity));
    }

    private static String threeFigures(double number) {
        return new BigDecimal(number)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Organic loading rate with the largest feed of the year. */
    private void loading() {
        double most = season.largest(this::solidsKg) / design.tank().liquidVolumeM3();
        boolean notCredible = most > bounds.loadingNotCredibleKgVsPerM3Day();
        double bound = notCredible ? bounds.loadingNotCredibleKgVsPerM3Day() : bounds.loadingKgVsPerM3Day();
        if (most > bound) {
            remark(
                    "loading",
                    notCredible ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The organic loading rate of %.1f kg of volatile solids per m3 and day is "
                            + (notCredible
                                    ? "not credible for such a tank (above %s): is the daily feed in kg?"
                                    : "high (above %s): the tank may turn sour."),
                    most,
                    threeFigures(bound));
        }
    }

    private double solidsKg(int day) {
        double kg = 0;
        for (int i = 0; i < design.feed().feedstocks().size(); i++) {
            kg += season.on(day).feedstockFactor(i)
                    * design.feed().feedstocks().get(i).volatileSolidsKgPerDay();
        }
        return kg;
    }

    private double fedKg(int day) {
        return design.feed().totalKgOn(season.on(day));
    }

    private void retention() {
        double most = season.largest(this::fedKg);
        double days = design.contentsKg() / most;
        if (most == 0) {
            return;
        }
        if (days < bounds.retentionDays().get(0)) {
            remark(
                    "retention",
                    days < 2 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The slurry stays %s days only (usual are %s to %s): %s kg are fed a day into %.0f kg; digestion may be washed out.",
                    threeFigures(days),
                    threeFigures(bounds.retentionDays().get(0)),
                    threeFigures(bounds.retentionDays().get(1)),
                    threeFigures(most),
                    design.contentsKg());
        } else if (days > bounds.retentionDays().get(1)) {
            remark(
                    "retention",
                    Gravity.NOTE,
                    "The slurry stays more than %.0f days (usual are %s to %s): the tank is large for %s kg a day.",
                    Math.floor(Math.min(days, 9999)),
                    threeFigures(bounds.retentionDays().get(0)),
                    threeFigures(bounds.retentionDays().get(1)),
                    threeFigures(most));
        }
    }

    private void litres() {
        double litres = 1000 * design.tank().liquidVolumeM3();
        if (litres < bounds.litres().get(0) || litres > bounds.litres().get(1)) {
            remark(
                    "litres",
                    Gravity.NOT_CREDIBLE,
                    "The tank holds %.0f litres of slurry; this program is for %.0f to %.0f: are the sizes in metres?",
                    litres,
                    bounds.litres().get(0),
                    bounds.litres().get(1));
        }
    }

    private void insulation() {
        double thinnestM = Math.min(
                mainM(design.envelope().wall()), mainM(design.envelope().lid()));
        if (thinnestM < bounds.insulationM()) {
            remark(
                    "insulation",
                    thinnestM < 0.001 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The main insulation of wall or lid is %s mm thick (usual are %.0f and more): is it in millimetres?",
                    threeFigures(1000 * thinnestM),
                    1000 * bounds.insulationM());
        }
    }

    private double mainM(List<Layer> layers) {
        return design.envelope()
                .rules()
                .mainInsulation(layers)
                .map(Layer::thicknessM)
                .orElse(0.0);
    }

    /** Uses that want more on a day than a full holder and all gas that a day's feed can ever give. */
    private void uses() {
        if (design.gas().isEmpty() || design.gas().get().holder().isEmpty()) {
            return;
        }
        Gas gas = design.gas().get();
        double methaneNm3 = gas.holder().get().fullNm3() * gas.methaneFraction()
                + design.feed().feedstocks().stream()
                        .mapToDouble(one -> one.methaneNm3PerKgVs() * one.volatileSolidsKgPerDay())
                        .sum();
        double mostKWh = Unit.KWH.of(methaneNm3 * GasEnergy.METHANE_J_PER_NM3);
        for (int i = 0; i < gas.uses().size(); i++) {
            GasUse use = gas.uses().get(i);
            double wantedKWh = use.kw() * use.hours().openSecondsPerDay() / S_PER_H;
            if (wantedKWh > mostKWh) {
                remark(
                        "use_power",
                        Gravity.UNLIKELY,
                        "The %s (gas.uses[%d].kw) wants %s kWh of gas on a day: a full holder and all that a day's feed can give hold"
                                + " %s kWh, so that it can never be served in full.",
                        use.name(),
                        i,
                        threeFigures(wantedKWh),
                        threeFigures(mostKWh));
            }
        }
    }

    /** Spells that share days: allowed, and easily overlooked. */
    private void overlaps() {
        List<Spell> spells = season.calendar().spells();
        for (int late = 1; late < spells.size(); late++) {
            for (int early = 0; early < late; early++) {
                Spell first = spells.get(early);
                Spell second = spells.get(late);
                long days = IntStream.range(0, DAYS)
                        .filter(day -> first.dayOf(day) > 0 && second.dayOf(day) > 0)
                        .count();
                if (days > 0) {
                    remark(
                            "calendar_overlap",
                            Gravity.NOTE,
                            "The spells %s and %s share %d days of the year: what %s states wins on them.",
                            first.name(),
                            second.name(),
                            days,
                            second.name());
                }
            }
        }
    }

    /** Whether a set-point stands in the design, and is not passed through on the way of a ramp. */
    private boolean isStated(double setpointC) {
        return setpointC == design.control().setpointC()
                || season.calendar().spells().stream()
                        .anyMatch(spell -> spell.control().setpointC().equals(OptionalDouble.of(setpointC)));
    }

    /** Set-points of days on which something is fed, where gas is computed. */
    private void window() {
        if (design.gas().isEmpty()) {
            return;
        }
        CardinalTemperatures ends = design.gas().get().temperatures();
        double margin = bounds.windowMarginK();
        OptionalDouble near = OptionalDouble.empty();
        for (int day = 0; day < SeasonTable.DAYS; day++) {
            double setpointC = season.on(day).setpointC();
            boolean outside = setpointC < ends.leastC() + margin || setpointC > ends.mostC() - margin;
            if (fedKg(day) > 0
                    && isStated(setpointC)
                    && outside
                    && (near.isEmpty() || setpointC > near.getAsDouble())) {
                near = OptionalDouble.of(setpointC);
            }
        }
        if (near.isPresent()) {
            double setpointC = near.getAsDouble();
            boolean dead = setpointC <= ends.leastC() || setpointC >= ends.mostC();
            remark(
                    "setpoint_window",
                    dead ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "At the set-point of %s °C digestion %s: its minimum is %s °C, its maximum %s °C.",
                    threeFigures(setpointC),
                    dead ? "stands still" : "is near its end",
                    threeFigures(ends.leastC()),
                    threeFigures(ends.mostC()));
        }
    }

    private void parts() {
        if (design.backup().isEmpty()) {
            remark(
                    "no_heater",
                    Gravity.UNLIKELY,
                    "There is no backup heater: nothing holds the tank warm without sun. Add a block backup.");
        }
        if (design.gas().isEmpty()) {
            remark("no_gas", Gravity.NOTE, "No gas is computed, so nothing is said of net energy. Add a block gas.");
        }
        boolean bars = design.fittings().stream().anyMatch(Fitting.Bar.class::isInstance);
        boolean pipes = design.fittings().stream().anyMatch(Fitting.Pipe.class::isInstance);
        if (design.tank().standsOn() == StandsOn.LEGS && !bars) {
            remark(
                    "no_legs",
                    Gravity.NOTE,
                    "The tank stands on legs, but no legs are among the fittings: steel legs alone can lose a quarter of the backup's heat.");
        }
        if (!pipes) {
            remark("no_pipes", Gravity.NOTE, "No pipe is among the fittings: an outlet loses heat and may freeze.");
        }
    }

    private void materials() {
        for (Feedstock stock : design.feed().feedstocks()) {
            stock.material()
                    .map(FeedMaterial::caution)
                    .filter(caution -> !caution.words().isEmpty() && stock.kgPerDay() > 0)
                    .ifPresent(caution ->
                            remark("feedstock", Gravity.NOTE, "%s %s.", capital(stock.name()), caution.words()));
        }
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('_', ' ');
    }

    private void heaterAndCollector(Weather weather) {
        double windMPerS = weather.meanWindMPerS();
        double meanC = weather.meanAirC();
        double coldC = ColdSpell.coldestDayC(weather);
        double coldW = needW(windMPerS, coldC);
        design.backup().ifPresent(heater -> heater(heater.ratedW(), coldW, coldC));
        double sunW = design.solar()
                .map(s -> s.collector().eta0() * 1000 * s.collector().areaM2())
                .orElse(0.0);
        double meanW = needW(windMPerS, meanC);
        if (meanW > 0 && sunW > bounds.collectorTimes() * meanW) {
            remark(
                    "collector",
                    Gravity.NOT_CREDIBLE,
                    "The collector gives up to %.0f W, %.0f times what the tank needs on a mean day (%.0f W): is its area in m²?",
                    sunW,
                    sunW / meanW,
                    meanW);
        }
    }

    private double needW(double windMPerS, double airC) {
        Conductances conductances = Conductances.of(design, windMPerS, airC);
        return SteadyHeat.lossW(design, conductances, airC) + SteadyHeat.feedW(design, airC);
    }

    private void heater(double ratedW, double needW, double coldC) {
        if (ratedW < needW) {
            remark(
                    "heater",
                    ratedW < needW / 3 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The heater's %.0f W are less than loss and feed of the coldest day, %.0f W at %.1f °C.",
                    ratedW,
                    needW,
                    coldC);
        } else if (needW > 0 && ratedW > bounds.heaterTimes() * needW) {
            remark(
                    "heater",
                    Gravity.UNLIKELY,
                    "The heater's %.0f W are %.0f times loss and feed of the coldest day, %.0f W: is its power in W?",
                    ratedW,
                    ratedW / needW,
                    needW);
        }
        DerivedFigures.backupCoilMostW(design)
                .filter(passes -> passes < needW)
                .ifPresent(passes -> remark(
                        "backup_coil",
                        Gravity.UNLIKELY,
                        "The backup coil passes %.0f W at its flow limit, less than loss and feed of the coldest day, %.0f W.",
                        passes,
                        needW));
    }
}
