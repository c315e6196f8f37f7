package org.warmvat.cli.answer.fit;

import java.util.List;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.fit.ClockDoubt;
import org.warmvat.question.fit.Factor;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.Pieces;
import org.warmvat.regression.Range95;

/** The "but" of a fit: what makes its finding doubtful. */
record FitDoubtWords(FitResult result, FitHints hints) {

    private static final double LARGE_RESIDUAL_K = 1;

    List<String> told() {
        FitResult.Doubts doubts = result.doubts();
        double sdK = result.residuals().sdK();
        return new Telling()
                .when(doubts.units().any(), this::units)
                .each(
                        doubts.atTheEnd(),
                        factor -> "The factor " + factor.key()
                                + " stands at the end of what is tried, 0.1 to 10. Look for a wrong unit, sensors taken for one"
                                + " another, a heat that was not logged, a design of another tank.")
                .when(
                        isLossHardlyKnown(),
                        "The loss is hardly known, its interval is wider than a factor 2: a longer log, a warmer tank in colder weather"
                                + " and every heat written down would tell more.")
                .when(
                        !doubts.toldApart() && doubts.goesTogether(),
                        () -> "This log cannot tell them apart"
                                + (hints.areAlike(Factor.ENVELOPE, Factor.CAPACITY)
                                        ? ": a tank that only cools shows how fast it does, not how much heat that is."
                                        : "."))
                .when(!result.pieces().isOneValue(), this::oneValue)
                .say(doubts.clock().map(FitDoubtWords::clock))
                .when(
                        sdK > LARGE_RESIDUAL_K,
                        () -> "The model misses the log by " + Numerals.three(sdK)
                                + " K (standard deviation): something went on that neither log nor design tells.")
                .done();
    }

    private boolean isLossHardlyKnown() {
        return result.fitted().isPresent()
                && result.derived()
                        .uaWPerK()
                        .wider()
                        .filter(Range95::isWiderThanAFactorOfTwo)
                        .isPresent();
    }

    private String units() {
        String which =
                result.doubts().units().slurry() ? result.doubts().units().air() ? "slurry and air" : "slurry" : "air";
        return "The temperatures of the log's " + which
                + " look like degrees Fahrenheit, and were taken as °C: a layout"
                + " (--log-layout) with unit: f turns them.";
    }

    private static String clock(ClockDoubt doubt) {
        String by = doubt.bySun() ? "sun" : "air";
        String ahead = "By its " + by + " the log's clock is " + minutes(doubt.aheadAtStartS())
                + " the weather file's at its beginning and " + minutes(doubt.aheadAtEndS()) + " at its end: ";
        return ahead + (doubt.drifts() ? "it drifts" : "one of the two is set wrong")
                + ". Sun, feeding times and whatever else is not logged then come at the wrong time.";
    }

    private static String minutes(double aheadS) {
        return Math.round(Math.abs(aheadS) / 60) + " minutes " + (aheadS < 0 ? "behind" : "ahead of");
    }

    private String oneValue() {
        Pieces pieces = result.pieces();
        double least =
                pieces.pieces().stream().mapToDouble(Pieces.Piece::value).min().orElse(0);
        double most =
                pieces.pieces().stream().mapToDouble(Pieces.Piece::value).max().orElse(0);
        List<String> apart = pieces.pieces().stream()
                .filter(Pieces.Piece::isApart)
                .map(piece -> Words.day(piece.from().toLocalDate(), true))
                .toList();
        return "The log does not follow one value: its " + (pieces.ofStretches() ? "stretches" : "days") + " give "
                + Numerals.three(least) + " to " + Numerals.three(most) + " times the drawn loss, "
                + Numerals.three(pieces.scatterRatio()) + " times as far apart as their errors allow. The tank changed,"
                + " or something went in or out that was not logged"
                + (apart.isEmpty() ? "." : "; look first at " + Words.list(apart) + ".");
    }
}
