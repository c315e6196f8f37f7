package org.warmvat.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.envelope.FittingLoss;

/**
 * Steady heat lost by one part at set-point, the fittings each by itself: {@link SteadyHeat} taken apart, without sun and clear sky.
 *
 * @param part the part in words
 * @param watts heat lost, W
 */
public record PartLoss(String part, double watts) {

    /**
     * All parts, the largest loss first.
     *
     * @param design the design
     * @param windMPerS wind at 10 m
     * @param airC air temperature; the ground is taken to be as cold, but not frozen
     */
    public static List<PartLoss> of(Design design, double windMPerS, double airC) {
        Conductances ua = Conductances.of(design, windMPerS, airC);
        double aroundK = design.control().setpointC() - SteadyHeat.aroundC(design, airC);
        double underK = design.control().setpointC() - SteadyHeat.underC(design, airC);
        List<PartLoss> parts = new ArrayList<>(List.of(
                new PartLoss("wall, beside the slurry", ua.wallWPerK() * aroundK),
                new PartLoss("wall, beside the gas space", ua.dryWallWPerK() * aroundK),
                new PartLoss("lid", ua.lidWPerK() * aroundK),
                new PartLoss("base", ua.floorWPerK() * underK),
                new PartLoss("edges", ua.edgesWPerK() * aroundK),
                new PartLoss("warming feed and water", SteadyHeat.feedW(design, airC))));
        for (Fitting fitting : design.fittings()) {
            parts.add(new PartLoss(
                    fitting.name(),
                    design.adjust().fittings()
                            * FittingLoss.of(fitting, FittingLoss.Still.of(design))
                                    .uaWPerK()
                            * aroundK));
        }
        parts.removeIf(part -> part.watts() == 0);
        parts.sort(Comparator.comparingDouble(PartLoss::watts).reversed());
        return List.copyOf(parts);
    }
}
