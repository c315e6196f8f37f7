package org.warmvat.envelope;

import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.Place;
import org.warmvat.network.Balance;
import org.warmvat.network.Flows;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.network.Network;
import org.warmvat.network.SlowPart;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Unit;
import org.warmvat.network.Watched;

/**
 * All fittings together: a conductance from the slurry to the outside air, or to the room (equation 2.7). The meter counts
 * the heat that the slurry receives: losses are negative.
 */
public final class FittingsPart implements SlowPart {

    /** Heat lost through all fittings. */
    public static final Line LOSS = new Line("fittings_loss_kwh", "fittings", Unit.KWH);

    /** Hours with the coldest end of a pipe below 0 °C. */
    public static final Line COLD_PIPE_END_HOURS = new Line("cold_pipe_end_hours", "cold pipe end", Unit.HOURS);

    /** Meter of all fittings, J. */
    public static final String FITTINGS = "fittings";

    /** Watch: the coldest end of a pipe is below 0 °C. */
    public static final String COLD_PIPE_END = "cold_pipe_end";

    private final Surroundings surroundings;
    private final OptionalDouble roomC;
    private final int slurry;
    private final double uaWPerK;
    private final int meter;

    /** Adds the fittings to a network. */
    public FittingsPart(Design design, Surroundings surroundings, Network.Assembly assembly, int slurry) {
        this.surroundings = surroundings;
        this.slurry = slurry;
        roomC = design.tank().place() instanceof Place.Indoors indoors
                ? OptionalDouble.of(indoors.roomC())
                : OptionalDouble.empty();
        List<FittingLoss> losses =
                design.fittings().stream().map(FittingLoss::of).toList();
        uaWPerK = losses.stream().mapToDouble(FittingLoss::uaWPerK).sum();
        meter = assembly.meter(Meter.of(FITTINGS)
                .told(-1, LOSS)
                .hourly(-1, EnvelopePart.LOSS_W)
                .leaving(Balance.SLURRY, 1));
        double coldestShare =
                losses.stream().mapToDouble(FittingLoss::tipShare).min().orElse(1);
        if (coldestShare < 1) {
            assembly.watch(watched(), (timeS, state) -> {
                double aroundC = aroundC(timeS);
                return -(aroundC + (state.nodeC(slurry) - aroundC) * coldestShare);
            });
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

    private double aroundC(double timeS) {
        return roomC.isPresent() ? roomC.getAsDouble() : surroundings.airC(timeS);
    }

    @Override
    public void surround(double timeS, Flows flows) {
        flows.exchange(slurry, uaWPerK, aroundC(timeS), meter);
    }
}
