package org.warmvat.question.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.warmvat.network.Warning;
import org.warmvat.search.Judgement;

/**
 * A design that was run through all weather files.
 *
 * @param point its option of each choice
 * @param chosen the same by the names of the choices
 * @param yearly what it does
 * @param cost what it costs
 * @param broken the limits it breaks
 * @param warnings what its runs warn of
 */
public record Candidate(
        List<Integer> point,
        Map<String, Object> chosen,
        Yearly yearly,
        Cost cost,
        List<Broken> broken,
        List<Warning> warnings) {

    /** A limit of hours below the minimum or of a warm-up is passed for sure only by more than the switching of pumps moves it. */
    private static final double SURE_HOURS = 1;

    private static final double SURE_SHARE = 1.02;

    /** A cold fill that is never warm counts as so many times the limit. */
    private static final double NEVER = 10;

    /**
     * What a design costs.
     *
     * @param outlay what is spent on buying
     * @param perYear yearly cost: annuity of that, energy and electricity bought and upkeep, less the worth of the gas
     */
    public record Cost(double outlay, double perYear) {}

    /**
     * A limit that is broken.
     *
     * @param key the limit's key
     * @param found what the design has
     * @param allowed the limit
     * @param share by what share of a scale of its own it is passed, so that limits can be weighed against each other
     * @param barring whether more insulation or heater would be needed, for sure
     */
    public record Broken(String key, double found, double allowed, double share, boolean barring) {}

    /** The limits that a design breaks. */
    static List<Broken> broken(Limits limits, Yearly yearly, double outlay) {
        List<Broken> broken = new ArrayList<>();
        limits.hoursBelowMinimum().ifPresent(most -> {
            double hours = yearly.hoursBelowMinimum();
            above("hours_below_floor", hours, most, 100, hours > most * SURE_SHARE + SURE_HOURS, broken);
        });
        limits.warmUpDays().ifPresent(most -> {
            double days = yearly.warmUpDays().orElse(Double.POSITIVE_INFINITY);
            above("warm_up_days", Math.min(days, NEVER * most), most, most, days > most * SURE_SHARE, broken);
        });
        double scale = Math.max(1, yearly.energy().gasKWh());
        limits.netLeastKWh()
                .ifPresent(least -> below("net_energy_kwh_least", yearly.net().worstKWh(), least, scale, broken));
        limits.netLeastMonthKWh()
                .ifPresent(least ->
                        below("net_energy_kwh_least_month", yearly.net().worstMonthKWh(), least, scale / 12, broken));
        limits.budget().ifPresent(most -> above("budget", outlay, most, Math.max(1, most), false, broken));
        return broken;
    }

    private static void above(
            String key, double found, double most, double scale, boolean barring, List<Broken> broken) {
        if (found > most) {
            broken.add(new Broken(key, found, most, (found - most) / scale, barring));
        }
    }

    private static void below(String key, double found, double least, double scale, List<Broken> broken) {
        if (found < least) {
            broken.add(new Broken(key, found, least, (least - found) / scale, false));
        }
    }

    /** Whether it keeps to all limits. */
    public boolean allowed() {
        return broken.isEmpty();
    }

    /** An aim, so written that less is better. */
    public double aim(Aim aim) {
        return switch (aim) {
            case COST -> cost.perYear();
            case NET -> -yearly.net().meanKWh();
            case BOUGHT -> yearly.energy().boughtKWh();
        };
    }

    Judgement judgement() {
        return new Judgement(
                broken.stream().anyMatch(Broken::barring),
                broken.stream().mapToDouble(Broken::share).sum(),
                Aim.ALL.stream().map(this::aim).toList());
    }
}
