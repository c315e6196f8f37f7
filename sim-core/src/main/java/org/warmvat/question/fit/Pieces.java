package org.warmvat.question.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.warmvat.regression.Fitted;
import org.warmvat.regression.Observations;

/**
 * What the pieces of a log say of one factor, each by itself: its stretches where there are four or more, else its days. A tank that is
 * one and the same all along gives pieces that scatter no more than their own errors (Birge 1932, Physical Review 40, 207-227).
 *
 * @param pieces each piece
 * @param ofStretches whether they are stretches, which started afresh, rather than days
 * @param scatterRatio their scatter over what their errors allow, 1 as expected
 * @param isOneValue whether one value may hold for all, at 1 in 1000
 */
public record Pieces(List<Piece> pieces, boolean ofStretches, double scatterRatio, boolean isOneValue) {

    private static final int FEWEST = 4;
    private static final int FEWEST_ROWS = 8;
    private static final double DAY_S = 86_400;
    private static final double HARDLY_EVER = 0.999;

    /** So many spreads away from the middle a piece is told by its date. */
    private static final double APART = 4;

    /** A standard deviation over the median distance from the median, for a normal distribution. */
    private static final double SD_PER_MAD = 1.4826;

    /** Pieces that say little are not looked at. */
    private static final double USELESS_SD = 0.5;

    /** Copies. */
    public Pieces {
        pieces = List.copyOf(pieces);
    }

    /**
     * A piece.
     *
     * @param from its first reading
     * @param value the factor there
     * @param sd its standard deviation
     * @param isApart whether it stands far from most others
     */
    public record Piece(LocalDateTime from, double value, double sd, boolean isApart) {}

    static Pieces of(FitModel model, Fitted fitted) {
        boolean ofStretches = model.stretches().size() >= FEWEST;
        int[] bounds = ofStretches ? model.bounds() : days(model.observations());
        LocalDateTime start = model.stretches().get(0).start();
        Observations at = model.observations();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < bounds.length; i++) {
            if (bounds[i + 1] - bounds[i] >= FEWEST_ROWS) {
                Fitted.Local local = fitted.local(0, bounds[i], bounds[i + 1]);
                if (local.sd() < USELESS_SD * fitted.values()[0]) {
                    LocalDateTime from = start.plusSeconds((long) at.timeS(bounds[i]));
                    pieces.add(new Piece(from, local.value(), local.sd(), false));
                }
            }
        }
        return pieces.size() < FEWEST ? new Pieces(List.of(), ofStretches, 1, true) : judged(pieces, ofStretches);
    }

    private static Pieces judged(List<Piece> pieces, boolean ofStretches) {
        double weights = pieces.stream().mapToDouble(Pieces::weight).sum();
        double mean = pieces.stream()
                        .mapToDouble(piece -> weight(piece) * piece.value())
                        .sum()
                / weights;
        double squares = pieces.stream()
                .mapToDouble(piece -> weight(piece) * (piece.value() - mean) * (piece.value() - mean))
                .sum();
        int freedom = pieces.size() - 1;
        double[] values = pieces.stream().mapToDouble(Piece::value).toArray();
        double median = new Median().evaluate(values);
        double spread = SD_PER_MAD
                * new Median()
                        .evaluate(Arrays.stream(values)
                                .map(value -> Math.abs(value - median))
                                .toArray());
        List<Piece> seen = pieces.stream()
                .map(piece -> new Piece(
                        piece.from(),
                        piece.value(),
                        piece.sd(),
                        Math.abs(piece.value() - median) > APART * Math.max(spread, piece.sd())))
                .toList();
        boolean isOneValue = new ChiSquaredDistribution(null, freedom).cumulativeProbability(squares) < HARDLY_EVER;
        return new Pieces(seen, ofStretches, Math.sqrt(squares / freedom), isOneValue);
    }

    private static double weight(Piece piece) {
        return 1 / (piece.sd() * piece.sd());
    }

    /** Bounds of the days counted from the first reading. */
    private static int[] days(Observations at) {
        List<Integer> bounds = new ArrayList<>(List.of(0));
        for (int i = 1; i < at.size(); i++) {
            if (Math.floor(at.timeS(i) / DAY_S) > Math.floor(at.timeS(i - 1) / DAY_S)) {
                bounds.add(i);
            }
        }
        bounds.add(at.size());
        return bounds.stream().mapToInt(Integer::intValue).toArray();
    }

    /** By what intervals are too short where stretches scatter more than their errors allow; 1 where they do not. */
    double widening() {
        return ofStretches ? Math.max(1, scatterRatio) : 1;
    }
}
