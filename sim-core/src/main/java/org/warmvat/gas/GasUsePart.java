package org.warmvat.gas;

import org.warmvat.design.gas.GasUse;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;

/**
 * Something that burns gas from the holder in its hours and months: met while the holder serves it, unmet otherwise (equation 14.2).
 */
public final class GasUsePart implements Part {

    private static final double W_PER_KW = 1000;
    private static final int MONTHS = 12;

    private final GasUse use;
    private final Surroundings surroundings;
    private boolean wanted;

    /**
     * Adds a use to a network.
     *
     * @param use the use
     * @param holder what it draws from
     * @param surroundings the clock
     * @param assembly the network being gathered
     */
    public GasUsePart(GasUse use, GasHolderPart holder, Surroundings surroundings, Network.Assembly assembly) {
        this.use = use;
        this.surroundings = surroundings;
        Gate serves = holder.serves();
        int met = holder.drawnByUse(
                assembly, Meter.of("gas_use_met_" + use.name()).told(met(use)).hourly("gas_uses_met_w"));
        int unmet = assembly.meter(
                Meter.of("gas_use_unmet_" + use.name()).told(unmet(use)).hourly("gas_uses_unmet_w"));
        assembly.source(Network.NOWHERE, met, state -> wanted && serves.isOpen(state))
                .set(W_PER_KW * use.kw());
        assembly.source(Network.NOWHERE, unmet, state -> wanted && !serves.isOpen(state))
                .set(W_PER_KW * use.kw());
        assembly.part(this);
    }

    /** Energy of the gas that a use burnt. */
    public static Line met(GasUse use) {
        return new Line("gas_uses/" + use.name() + "/met_kwh", use.name() + ", met", Unit.KWH);
    }

    /** Energy of the gas that a use wanted and did not get. */
    public static Line unmet(GasUse use) {
        return new Line("gas_uses/" + use.name() + "/unmet_kwh", use.name() + ", unmet", Unit.KWH);
    }

    @Override
    public double nextJumpS(double timeS) {
        double edgeS = timeS + use.hours().untilNextEdgeS(surroundings.secondOfDay(timeS));
        return use.months().size() == MONTHS ? edgeS : Math.min(edgeS, surroundings.nextMidnightS(timeS));
    }

    @Override
    public void enter(Interval interval) {
        double middleS = interval.middleS();
        wanted = use.hours().isOpenAt(surroundings.secondOfDay(middleS))
                && use.months().contains(surroundings.date(middleS).getMonthValue());
    }
}
