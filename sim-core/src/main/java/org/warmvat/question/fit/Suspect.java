package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.warmvat.tank.Conductances;

/**
 * A part of the tank that alone might explain why it loses more or less than drawn: something to look at, not a finding.
 *
 * @param part which
 * @param drawnWPerK what it loses as drawn, W/K; 0 where the design has none
 * @param neededWPerK what it would have to lose, W/K
 */
public record Suspect(Part part, double drawnWPerK, double neededWPerK) {

    /** Parts that a loss may be laid at. */
    public enum Part {
        /** Wetted wall. */
        WALL,
        /** Wall beside the headspace. */
        DRY_WALL,
        /** Lid. */
        LID,
        /** Base. */
        BASE,
        /** Thermal bridges where the insulation of wall, lid and base meets. */
        EDGES,
        /** Pipes, legs, shaft, hatches. */
        FITTINGS
    }

    /** By how much its loss would have to differ from the drawn: 1 is none. */
    public double factor() {
        return drawnWPerK > 0 ? neededWPerK / drawnWPerK : Double.POSITIVE_INFINITY;
    }

    /** Every part that could alone account for a difference, the least strained first. */
    static List<Suspect> of(Conductances drawn, double moreWPerK) {
        List<Suspect> all = new ArrayList<>(List.of(
                with(Part.WALL, drawn.wallWPerK(), moreWPerK),
                with(Part.DRY_WALL, drawn.dryWallWPerK(), moreWPerK),
                with(Part.LID, drawn.lidWPerK(), moreWPerK),
                with(Part.BASE, drawn.floorWPerK(), moreWPerK),
                with(Part.EDGES, drawn.edgesWPerK(), moreWPerK),
                with(Part.FITTINGS, drawn.fittingsWPerK(), moreWPerK)));
        all.removeIf(suspect -> suspect.neededWPerK() <= 0);
        all.sort(Comparator.comparingDouble(suspect -> Math.abs(Math.log(suspect.factor()))));
        return all;
    }

    private static Suspect with(Part part, double drawnWPerK, double moreWPerK) {
        return new Suspect(part, drawnWPerK, drawnWPerK + moreWPerK);
    }
}
