package org.warmvat.question.choose;

import java.util.List;
import java.util.Map;

/**
 * What was found.
 *
 * @param by what was to be best
 * @param named the designs named, the best first, then the runner-up, then those that come next; where none keeps to the limits, those
 *     that come nearest
 * @param ties designs that do as well as the best, to the last digit that counts
 * @param front of two aims the designs that none beats in both, in order of the first
 * @param influence what each choice moves
 * @param drawn the design as drawn
 * @param effort what was run
 */
public record ChooseResult(
        Aim by,
        List<Candidate> named,
        List<Candidate> ties,
        Front front,
        List<Influence> influence,
        Drawn drawn,
        Effort effort) {

    /**
     * The front of two aims.
     *
     * @param first one aim
     * @param second the other
     * @param all all designs that keep to the limits, in the order of the choices
     * @param designs those that none beats in both
     */
    public record Front(Aim first, Aim second, List<Candidate> all, List<Candidate> designs) {}

    /**
     * What a choice moves, all else as in the best design.
     *
     * @param choice name of the choice
     * @param change by how much the aim is worse at the worst of its options that keeps to the limits; 0 where there is none
     * @param worst that option, as it is shown
     * @param barred how many of its options break a limit
     * @param options how many options it has
     */
    public record Influence(String choice, double change, Object worst, int barred, int options) {}

    /**
     * The design as drawn.
     *
     * @param yearly what it does
     * @param outlay what it costs to buy at the prices of the choices; not a number where these do not say
     * @param perYear yearly cost; not a number where the outlay is not known
     * @param broken limits it breaks, the budget only where its outlay is known
     */
    public record Drawn(Yearly yearly, double outlay, double perYear, List<Candidate.Broken> broken) {}

    /**
     * What was run.
     *
     * @param runs runs through a weather file, the design as drawn and the neighbours of those named included
     * @param points combinations there are
     * @param designs designs that were run
     * @param skipped combinations passed over, since one with less insulation or heater cannot do where one with more does not
     * @param exhaustive whether every combination was run or passed over so
     * @param barredBy how many of the designs run break each limit
     */
    public record Effort(
            int runs, long points, int designs, int skipped, boolean exhaustive, Map<String, Integer> barredBy) {}

    /** The best design, or the one that comes nearest to the limits. */
    public Candidate best() {
        return named.get(0);
    }

    /** The choice that matters most; the first of equal ones. */
    public Influence mattersMost() {
        return influence.stream()
                .reduce((a, b) -> b.change() > a.change() ? b : a)
                .orElseThrow();
    }
}
