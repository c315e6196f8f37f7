package org.warmvat.envelope;

import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.Place;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.SlowPart;
import org.warmvat.network.Surroundings;

/**
 * All fittings together: a conductance from the slurry to the outside air, or to the room (equation 2.7). The meter counts
 * the heat that the slurry receives: losses are negative.
 */
public final class FittingsPart implements SlowPart {

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
        meter = assembly.meter(FITTINGS);
        double coldestShare =
                losses.stream().mapToDouble(FittingLoss::tipShare).min().orElse(1);
        if (coldestShare < 1) {
            assembly.watch(COLD_PIPE_END, (timeS, state) -> {
                double aroundC = aroundC(timeS);
                return -(aroundC + (state.nodeC(slurry) - aroundC) * coldestShare);
            });
        }
    }

    private double aroundC(double timeS) {
        return roomC.isPresent() ? roomC.getAsDouble() : surroundings.airC(timeS);
    }

    @Override
    public void surround(double timeS, Flows flows) {
        flows.exchange(slurry, uaWPerK, aroundC(timeS), meter);
    }
}
