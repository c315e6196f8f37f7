package org.warmvat.question.plausible;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.Plausible;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasUse;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.design.season.Spell;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.gas.GasEnergy;
import org.warmvat.network.meter.Unit;
import org.warmvat.question.plausible.Remark.Gravity;
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
    private final Remarks remarks = new Remarks();

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
        FeedRemarks feed = new FeedRemarks(design, plausibility.remarks);
        feed.loading();
        feed.retention();
        plausibility.litres();
        plausibility.insulation();
        plausibility.window();
        plausibility.uses();
        plausibility.overlaps();
        plausibility.parts();
        feed.materials();
        weather.ifPresent(new HeatRemarks(design, plausibility.remarks)::heaterAndCollector);
        return plausibility.remarks.sorted();
    }

    private double fedKg(int day) {
        return design.feed().totalKgOn(season.on(day));
    }

    private void litres() {
        double litres = 1000 * design.tank().liquidVolumeM3();
        if (litres < bounds.litres().get(0) || litres > bounds.litres().get(1)) {
            remarks.add(
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
            remarks.add(
                    "insulation",
                    thinnestM < 0.001 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The main insulation of wall or lid is %s mm thick (usual are %.0f and more): is it in millimetres?",
                    Remarks.threeFigures(1000 * thinnestM),
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
                remarks.add(
                        "use_power",
                        Gravity.UNLIKELY,
                        "The %s (gas.uses[%d].kw) wants %s kWh of gas on a day: a full holder and all that a day's feed can give hold"
                                + " %s kWh, so that it can never be served in full.",
                        use.name(),
                        i,
                        Remarks.threeFigures(wantedKWh),
                        Remarks.threeFigures(mostKWh));
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
                    remarks.add(
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
            remarks.add(
                    "setpoint_window",
                    dead ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "At the set-point of %s °C digestion %s: its minimum is %s °C, its maximum %s °C.",
                    Remarks.threeFigures(setpointC),
                    dead ? "stands still" : "is near its end",
                    Remarks.threeFigures(ends.leastC()),
                    Remarks.threeFigures(ends.mostC()));
        }
    }

    private void parts() {
        if (design.backup().isEmpty()) {
            remarks.add(
                    "no_heater",
                    Gravity.UNLIKELY,
                    "There is no backup heater: nothing holds the tank warm without sun. Add a block backup.");
        }
        if (design.gas().isEmpty()) {
            remarks.add(
                    "no_gas", Gravity.NOTE, "No gas is computed, so nothing is said of net energy. Add a block gas.");
        }
        boolean bars = design.fittings().stream().anyMatch(Fitting.Bar.class::isInstance);
        boolean pipes = design.fittings().stream().anyMatch(Fitting.Pipe.class::isInstance);
        if (design.tank().standsOn() == StandsOn.LEGS && !bars) {
            remarks.add(
                    "no_legs",
                    Gravity.NOTE,
                    "The tank stands on legs, but no legs are among the fittings: steel legs alone can lose a quarter of the backup's heat.");
        }
        if (!pipes) {
            remarks.add(
                    "no_pipes", Gravity.NOTE, "No pipe is among the fittings: an outlet loses heat and may freeze.");
        }
    }
}
