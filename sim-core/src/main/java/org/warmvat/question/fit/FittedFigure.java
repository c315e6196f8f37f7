package org.warmvat.question.fit;

import java.util.Optional;
import org.warmvat.regression.Range95;

/**
 * A figure as drawn and as fitted.
 *
 * @param drawn as the design says
 * @param value as fitted
 * @param remembered its 95 % interval with errors that remember; empty where the log cannot tell it
 * @param blocks the same from moving blocks
 */
public record FittedFigure(double drawn, double value, Optional<Range95> remembered, Optional<Range95> blocks) {

    /** A figure that the log does not tell. */
    public static FittedFigure held(double value) {
        return new FittedFigure(value, value, Optional.empty(), Optional.empty());
    }

    /** The wider of the two intervals. */
    public Optional<Range95> wider() {
        return remembered.map(range -> range.orWider(blocks.orElse(range)));
    }

    FittedFigure withoutRange() {
        return new FittedFigure(drawn, value, Optional.empty(), Optional.empty());
    }
}
