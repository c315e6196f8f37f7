package org.warmvat.tank;

import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.meter.Watched;

/** What makes a slurry temperature worth a warning by itself. */
final class SlurryWatches {

    private static final double NEAR_FREEZING_C = 2;
    private static final double BOILING_C = 100;

    private SlurryWatches() {}

    /** Near freezing, freezing, boiling: what water does and the model does not. */
    static void water(Network.Assembly assembly) {
        assembly.watch(
                Watched.of(KeyFigures.NEAR_FREEZING)
                        .told(KeyFigures.NEAR_FREEZING_HOURS)
                        .warns(
                                NEAR_FREEZING_C,
                                -1,
                                "The slurry stood below 2 °C for %s, the coldest %.1f °C: contents, outlet and pipes may freeze. Drain"
                                        + " the tank or keep it at 5 °C."),
                Margin.below(Network.SLURRY, NEAR_FREEZING_C));
        assembly.watch(
                Watched.of(KeyFigures.FREEZING)
                        .warns(
                                0,
                                -1,
                                "The slurry stood below 0 °C for %s, the lowest %.1f °C: freezing is not modelled, so the"
                                        + " results are no longer valid from there."),
                Margin.below(Network.SLURRY, 0));
        assembly.watch(
                Watched.of(KeyFigures.BOILING)
                        .warns(
                                BOILING_C,
                                1,
                                "The slurry stood above 100 °C for %s, the highest %.1f °C: boiling is not modelled, so the"
                                        + " results are no longer valid from there."),
                Margin.above(Network.SLURRY, BOILING_C));
    }

    static void digestion(CardinalTemperatures limits, Network.Assembly assembly) {
        double leastC = limits.leastC();
        double mostC = limits.mostC();
        String cold =
                "below the minimum of digestion, " + Watched.degrees(leastC) + ", for %s; the lowest was %.1f °C.";
        String hot = "above the maximum of digestion, " + Watched.degrees(mostC) + ", for %s; the highest was %.1f °C.";
        assembly.watch(
                Watched.of(KeyFigures.TOO_COLD).warns(leastC, -1, "The slurry stood " + cold),
                Margin.below(Network.SLURRY, leastC));
        assembly.watch(
                Watched.of(KeyFigures.TOO_HOT).warns(mostC, 1, "The slurry stood " + hot),
                Margin.above(Network.SLURRY, mostC));
    }
}
