package org.warmvat.cli.answer.fit;

import java.util.List;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Telling;
import org.warmvat.question.fit.Factor;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.FittedFigure;
import org.warmvat.question.fit.Suspect;

/** What to look at, and what else to measure, after a fit. */
final class FitHints {

    private static final int MOST_SUSPECTS = 4;
    private static final double RISE_K = 3;
    private static final double HOURS_OF_HEAT = 6;
    private static final double J_PER_WH = 3600;

    private final FitResult result;

    FitHints(FitResult result) {
        this.result = result;
    }

    /** Questions only where the log says that something differs. */
    List<String> suspects() {
        FittedFigure ua = result.derived().uaWPerK();
        boolean asDrawn = ua.wider().map(range -> range.holds(ua.drawn())).orElse(true);
        if (asDrawn || result.fitted().isEmpty()) {
            return List.of();
        }
        boolean more = ua.value() > ua.drawn();
        return result.suspects().stream()
                .limit(MOST_SUSPECTS)
                .map(suspect -> question(suspect, more))
                .toList();
    }

    private static String question(Suspect suspect, boolean more) {
        String part = part(suspect.part());
        String what = more
                ? switch (suspect.part()) {
                    case WALL, DRY_WALL ->
                        "Is the insulation of the " + part + " wet, thinner than drawn or open at its seams?";
                    case LID -> "Does the lid close, and is its insulation dry and as thick as drawn?";
                    case BASE ->
                        "Is the insulation under the base wet or pressed flat, or does the base stand on more than is drawn?";
                    case EDGES -> "Do metal sheets or frames bridge the insulation where wall, lid and base meet?";
                    case FITTINGS ->
                        "Are pipes, legs, shaft, hatches or straps missing from the fittings, or their insulation?";
                }
                : switch (suspect.part()) {
                    case FITTINGS -> "Are fittings drawn that are not there, or better insulated?";
                    case EDGES -> "Does the insulation run through where wall, lid and base meet?";
                    default ->
                        "Is the insulation of the " + part + " thicker or better than drawn, or the wind there weaker?";
                };
        String strain = suspect.drawnWPerK() > 0
                ? "drawn " + Numerals.three(suspect.drawnWPerK()) + ", " + Numerals.three(suspect.factor()) + " times"
                : "none drawn";
        return what + " Alone, the " + part + " would have to lose " + Numerals.three(suspect.neededWPerK()) + " W/K ("
                + strain + ").";
    }

    private static String part(Suspect.Part part) {
        return switch (part) {
            case WALL -> "wall beside the slurry";
            case DRY_WALL -> "wall beside the gas space";
            case LID -> "lid";
            case BASE -> "base";
            case EDGES -> "thermal bridges at the edges";
            case FITTINGS -> "fittings";
        };
    }

    boolean areAlike(Factor one, Factor other) {
        return result.doubts().alike().contains(one) && result.doubts().alike().contains(other);
    }

    /** What would tell more. */
    List<String> more() {
        if (!result.doubts().goesTogether()) {
            return List.of();
        }
        List<String> told = new Telling()
                .say(areAlike(Factor.ENVELOPE, Factor.CAPACITY) ? knownHeat() : List.of())
                .when(
                        areAlike(Factor.ENVELOPE, Factor.FITTINGS),
                        "Envelope and fittings lose to nearly the same surroundings, which no longer log tells apart: ask for one"
                                + " of them, or log some days with the fittings wrapped and some without.")
                .when(
                        areAlike(Factor.SOLAR_COIL, Factor.COLLECTOR),
                        "Collector and coil give one heat together: ask for one of them, with the other as drawn.")
                .done();
        return result.doubts().toldApart() || !told.isEmpty()
                ? told
                : List.of("Ask for fewer factors at once, or log the heats and a longer time.");
    }

    private List<String> knownHeat() {
        double watts = result.derived().capacityJPerK() * RISE_K / (HOURS_OF_HEAT * J_PER_WH);
        return List.of(
                "A known heat tells loss and capacity apart: " + Numerals.three(watts)
                        + " W of electricity for " + Numerals.three(HOURS_OF_HEAT) + " h would raise this tank by "
                        + Numerals.three(RISE_K)
                        + " K; log it as backup_electric_w and let the tank cool for some days after.",
                "Only a heater that is made for the tank will do, covered by slurry all the time and behind a"
                        + " residual-current device; to fit one is an electrician's work.");
    }
}
