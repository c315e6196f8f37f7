package org.warmvat.regression;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Exact: what a fit with remembering errors must make of series whose truth is known. */
class AutoregressiveFitTest {

    private static final List<Parameter> LINE =
            List.of(new Parameter("level", 0, -100, 100, 0.1), new Parameter("slope", 0, -100, 100, 0.1));

    private static double[] line(double[] timeS, double[] point) {
        return Arrays.stream(timeS).map(t -> point[0] + point[1] * t).toArray();
    }

    /** Uneven steps of a half to one and a half: errors whose memory decays with time, not with rows. */
    private static double[] unevenTimes(int count, Random random) {
        double[] timeS = new double[count];
        for (int i = 1; i < count; i++) {
            timeS[i] = timeS[i - 1] + 0.5 + random.nextDouble();
        }
        return timeS;
    }

    private static double[] remembering(double[] timeS, double rho, Random random) {
        double[] errors = new double[timeS.length];
        errors[0] = random.nextGaussian();
        for (int i = 1; i < errors.length; i++) {
            double phi = Math.pow(rho, timeS[i] - timeS[i - 1]);
            errors[i] = phi * errors[i - 1] + Math.sqrt(1 - phi * phi) * random.nextGaussian();
        }
        return errors;
    }

    @Test
    void memoryIsFoundWhateverTheSteps() {
        Random random = new Random(3);
        double[] timeS = unevenTimes(6000, random);
        double[] errors = remembering(timeS, 0.8, random);
        double[] values = IntStream.range(0, errors.length)
                .mapToDouble(i -> 2 + 0.001 * timeS[i] + errors[i])
                .toArray();
        Fitted fitted = AutoregressiveFit.of(new Observations(timeS, values), point -> line(timeS, point), LINE);
        // standard error of a correlation of 0.8 from 6000 rows: sqrt((1 - 0.64)/6000) = 0.008
        assertEquals(0.8, fitted.rho(), 0.025);
        assertTrue(fitted.range(0).holds(2) && fitted.range(1).holds(0.001));
        assertEquals(1, fitted.residualSd(), 0.1);
    }

    @Test
    void independentErrorsHaveTheirUsualIntervalAndBlocksAgree() {
        Random random = new Random(4);
        double[] timeS = IntStream.range(0, 800).asDoubleStream().toArray();
        double[] values =
                Arrays.stream(timeS).map(t -> 5 + random.nextGaussian()).toArray();
        Fitted fitted = AutoregressiveFit.of(
                new Observations(timeS, values), point -> line(timeS, new double[] {point[0], 0}), LINE.subList(0, 1));
        // mean of 800 independent values: 2 x 1.963 / sqrt(800)
        assertEquals(
                2 * 1.963 * fitted.residualSd() / Math.sqrt(800),
                fitted.range(0).width(),
                0.015);
        double[] blocks = fitted.blockDraws(10, 2000, 1).stream()
                .mapToDouble(draw -> draw[0])
                .toArray();
        assertEquals(fitted.range(0).width(), Range95.ofDraws(blocks).width(), 0.015);
        double[] draws =
                fitted.draws(2000, 1).stream().mapToDouble(draw -> draw[0]).toArray();
        assertEquals(fitted.range(0).width(), Range95.ofFewDraws(draws).width(), 0.01);
    }

    @Test
    void whatFollowsFromTheParametersHasItsInterval() {
        Random random = new Random(5);
        double[] timeS = IntStream.range(0, 200).asDoubleStream().toArray();
        double[] values = Arrays.stream(timeS)
                .map(t -> 3 + 0.1 * t + random.nextGaussian())
                .toArray();
        Fitted fitted = AutoregressiveFit.of(new Observations(timeS, values), point -> line(timeS, point), LINE);
        Range95 doubled = fitted.range(point -> 7 + 2 * point[0]);
        assertEquals(2 * fitted.range(0).width(), doubled.width(), 1e-9);
        assertEquals(7 + 2 * fitted.values()[0], 0.5 * (doubled.low() + doubled.high()), 1e-9);
    }

    @Test
    void whatTheSeriesCannotTellApartIsSaid() {
        double[] timeS = IntStream.range(0, 50).asDoubleStream().toArray();
        double[] values = Arrays.stream(timeS).map(t -> 1 + Math.sin(t)).toArray();
        Fitted sum = AutoregressiveFit.of(
                new Observations(timeS, values), point -> line(timeS, new double[] {point[0] + point[1], 0}), LINE);
        assertTrue(sum.isSingular());
        Fitted without = AutoregressiveFit.of(
                new Observations(timeS, values), point -> line(timeS, new double[] {point[0], 0}), LINE);
        assertTrue(without.isSingular());
        assertFalse(AutoregressiveFit.of(new Observations(timeS, values), point -> line(timeS, point), LINE)
                .isSingular());
    }

    @Test
    void aModelThatIsNoNumberIsRefusedAtOnce() {
        double[] timeS = {0, 1, 2, 3};
        FitFailure failure = assertThrows(
                FitFailure.class,
                () -> AutoregressiveFit.of(
                        new Observations(timeS, timeS), point -> line(timeS, new double[] {Double.NaN, 0}), LINE));
        assertEquals("the model has no finite value at [0.0, 0.0]", failure.getMessage());
        FitFailure tooFew = assertThrows(
                FitFailure.class,
                () -> AutoregressiveFit.of(
                        new Observations(new double[] {0, 1}, new double[] {0, 1}),
                        point -> line(new double[] {0, 1}, point),
                        LINE));
        assertEquals("2 observations, expected more than 2", tooFew.getMessage());
    }

    @Test
    void boundsHold() {
        double[] timeS = IntStream.range(0, 30).asDoubleStream().toArray();
        double[] values = Arrays.stream(timeS).map(t -> 5 + 0.01 * Math.cos(t)).toArray();
        Parameter bounded = new Parameter("level", 1, 0, 3, 0.1);
        Fitted fitted = AutoregressiveFit.of(
                new Observations(timeS, values), point -> line(timeS, new double[] {point[0], 0}), List.of(bounded));
        assertEquals(3, fitted.values()[0], 1e-9);
    }

    @Test
    void aGapOfMoreThanThreeStepsStartsAfresh() {
        Observations gaps = new Observations(new double[] {0, 10, 20, 50, 81, 91}, new double[6]);
        assertEquals(10, gaps.medianStepS(), 0);
        assertFalse(gaps.startsAfresh(3));
        assertTrue(gaps.startsAfresh(4));
        double phi = Math.pow(0.5, 3);
        double[] white = new Ar1Errors(gaps, 0.5).whitened(new double[] {1, 1, 1, 1, 1, 1});
        assertEquals((1 - phi) / Math.sqrt(1 - phi * phi), white[3], 1e-15);
        assertEquals(1, white[4], 0);
        assertEquals(3 * Math.log(0.75) + Math.log1p(-phi * phi), new Ar1Errors(gaps, 0.5).logDeterminant(), 1e-15);
    }

    @Test
    void blocksKeepTheirOrderAndTheSeedDecides() {
        double[] series = IntStream.range(0, 12).asDoubleStream().toArray();
        double[] made = new MovingBlocks(series, 4, 9).next();
        for (int at = 0; at < made.length; at++) {
            if (at % 4 > 0) {
                assertEquals(made[at - 1] + 1, made[at], 1e-12);
            }
        }
        assertArrayEquals(made, new MovingBlocks(series, 4, 9).next(), 0);
        assertFalse(Arrays.equals(made, new MovingBlocks(series, 4, 10).next()));
    }

    @Test
    void intervalsSayHowWideTheyAre() {
        assertTrue(new Range95(0.7, 1.5).isWiderThanAFactorOfTwo());
        assertTrue(new Range95(-1, 1).isWiderThanAFactorOfTwo());
        assertFalse(new Range95(0.8, 1.5).isWiderThanAFactorOfTwo());
        Range95 wide = new Range95(0, 3);
        assertEquals(wide, new Range95(1, 2).orWider(wide));
        assertEquals(wide, wide.orWider(new Range95(1, 2)));
    }
}
