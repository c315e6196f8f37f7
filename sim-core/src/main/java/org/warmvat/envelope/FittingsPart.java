package org.warmvat.envelope;

import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.network.meter.Watched;

/**
 * All fittings together: a conductance from the slurry to what is around the tank, air or room (equation 2.7). The meter counts
 * the heat that the slurry receives: losses are negative.
 */
public final class FittingsPart {

    /** Heat lost through all fittings. */
    public static final Line LOSS = new Line("fittings_loss_kwh", "fittings", Unit.KWH);

    /** Hours with the coldest end of a pipe below 0 °C. */
    public static final Line COLD_PIPE_END_HOURS = new Line("cold_pipe_end_hours", "cold pipe end", Unit.HOURS);

    /** Meter of all fittings, J. */
    public static final String FITTINGS = "fittings";

    /** Watch: the coldest end of a pipe is below 0 °C. */
    public static final String COLD_PIPE_END = "cold_pipe_end";

    private FittingsPart() {}

    /** Adds the fittings to a network. */
    public static void add(Design design, Around around, Network.Assembly assembly) {
        List<FittingLoss> losses = design.fittings().stream()
                .map(fitting -> FittingLoss.of(fitting, FittingLoss.Still.of(design)))
                .toList();
        double uaWPerK = design.adjust().fittings()
                * losses.stream().mapToDouble(FittingLoss::uaWPerK).sum();
        int meter = assembly.meter(around.met(Meter.of(FITTINGS)
                .told(-1, LOSS)
                .hourly(-1, EnvelopePart.LOSS_W)
                .leaving(Balance.SLURRY, 1)));
        assembly.exchange(Network.SLURRY, around.node(), uaWPerK, meter);
        double coldestShare =
                losses.stream().mapToDouble(FittingLoss::tipShare).min().orElse(1);
        if (coldestShare < 1) {
            // T_around + share (T_s - T_around) below 0 °C
            Margin cold = Margin.below(around.node(), 0)
                    .plus(coldestShare, around.node())
                    .plus(-coldestShare, Network.SLURRY);
            assembly.watch(watched(), cold);
        } else {
            assembly.declare().none(COLD_PIPE_END_HOURS);
        }
    }

    private static Watched watched() {
        return Watched.of(COLD_PIPE_END)
                .told(COLD_PIPE_END_HOURS)
                .warns(
                        0,
                        -1,
                        "The coldest end of a slurry pipe stood below 0 °C for %s; the coldest was %.1f °C. A frozen outlet"
                                + " blocks.");
    }
}
