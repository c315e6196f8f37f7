package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.log.Log;
import org.warmvat.question.Parallel;
import org.warmvat.regression.AutoregressiveFit;
import org.warmvat.regression.Fitted;
import org.warmvat.regression.Range95;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** What the tank is, from a log (model section 16). */
public final class FitStudy {

    private static final double TOO_ALIKE = 0.98;
    private static final int BLOCK_DRAWS = 200;
    private static final long SEED = 1;
    private static final double DAY_S = 86_400;
    private static final double HOUR_S = 3600;
    private static final double BLOCKS_OF_A_LOG = 8;

    private static final double NEAR_LEAST = 1.01 * FitModel.LEAST;
    private static final double NEAR_MOST = 0.99 * FitModel.MOST;

    private final FitModel model;
    private final Fitted fitted;
    private final Pieces pieces;
    private final List<double[]> blockDraws;

    private FitStudy(FitModel model) {
        this.model = model;
        Fitted narrow = AutoregressiveFit.of(model.observations(), model.curve(), model.parameters());
        if (narrow.isSingular()) {
            fitted = narrow;
            pieces = new Pieces(List.of(), false, 1, true);
            blockDraws = List.of();
        } else {
            pieces = Pieces.of(model, narrow);
            fitted = narrow.widened(pieces.widening());
            double spanS = model.stretches().stream().mapToDouble(Log::spanS).sum();
            blockDraws = fitted.blockDraws(Math.min(DAY_S, spanS / BLOCKS_OF_A_LOG), BLOCK_DRAWS, SEED);
        }
    }

    /**
     * Finds the tank.
     *
     * @param design the tank as drawn
     * @param log the log
     * @param files weather files for what the log lacks: the first that has the log's dates, else the first; none where the log lacks
     *     nothing
     * @param years the years of these files, for what the fit means in each
     * @param question what is sought
     * @param engine what integrates
     * @param parallel for the year's draws
     * @throws StudyRefused when the log cannot tell
     * @throws StudyRefused when design and weather do not go together
     */
    public static FitResult run(
            Design design,
            Log log,
            List<Weather> files,
            List<Weather> years,
            FitQuestion question,
            Engine engine,
            Parallel parallel)
            throws StudyRefused {
        Optional<Weather> along = files.stream()
                .filter(file -> FileAlong.hasDates(file, log))
                .findFirst()
                .or(() -> files.stream().findFirst());
        refuseWhatIsNotThere(design, log, question);
        LoggedTanks tanks = heatedAsItWas(LoggedTanks.of(design, log, along, engine));
        FitStudy whole = new FitStudy(tanks.model(question.factors()));
        List<Factor> alike = whole.alike();
        boolean toldApart = alike.isEmpty();
        FitStudy sure = toldApart ? whole : new FitStudy(whole.model.withFactors(whole.surest()));
        FitResult.Doubts doubts = tanks.doubts(alike, sure.atTheEnd());
        boolean goesTogether = doubts.goesTogether();
        boolean found = goesTogether && (toldApart || !question.asked());
        FitYears each = new FitYears(years, engine, parallel);
        return new FitResult(
                sure.factors(question, whole, toldApart),
                goesTogether
                        ? sure.derived(tanks, question, found)
                        : sure.derived(tanks, question, true).withoutRanges(),
                sure.residuals(),
                doubts,
                found ? Optional.of(sure.model.adjusted(sure.fitted.values())) : Optional.empty(),
                FitCourse.of(sure.model, sure.fitted.values()),
                sure.pieces,
                Suspect.of(tanks.conductances(sure.model.drawn()), sure.moreWPerK(tanks)),
                found ? each.of(sure.model, sure.fitted) : List.of(),
                tanks.notes());
    }

    /** A factor on nothing cannot be found. */
    private static void refuseWhatIsNotThere(Design design, Log log, FitQuestion question) throws StudyRefused {
        List<String> faults = new ArrayList<>();
        for (Factor factor : question.factors()) {
            factor.lackedBy(design, log)
                    .ifPresent(why -> faults.add("the factor " + factor.key() + " cannot be found: " + why
                            + "; expected --factors without it"));
        }
        StudyRefused.ifAny(faults);
    }

    /**
     * A log that says nothing of a heater has the design's; where the slurry was cooler than that would have let it, the better of both
     * is taken.
     */
    private static LoggedTanks heatedAsItWas(LoggedTanks tanks) {
        if (!tanks.heaterIsInDoubt()) {
            return tanks;
        }
        LoggedTanks off = tanks.withoutHeater(
                "The log says nothing of the heater, and the slurry went below what the heater of the"
                        + " design holds: it is taken as off.");
        double withK = new FitStudy(tanks.model(List.of(Factor.ENVELOPE))).fitted.residualSd();
        double withoutK = new FitStudy(off.model(List.of(Factor.ENVELOPE))).fitted.residualSd();
        return withoutK < withK ? off : tanks;
    }

    /** The factor to be found where the log cannot tell them apart: the envelope where it is sought. */
    private List<Factor> surest() {
        return List.of(
                model.factors().contains(Factor.ENVELOPE)
                        ? Factor.ENVELOPE
                        : model.factors().get(0));
    }

    private Map<Factor, FitResult.Found> factors(FitQuestion question, FitStudy whole, boolean toldApart) {
        Map<Factor, FitResult.Found> factors = new EnumMap<>(Factor.class);
        for (Factor factor : question.factors()) {
            factors.put(
                    factor,
                    toldApart || !question.asked()
                            ? found(factor)
                            : new FitResult.Found(
                                    whole.factor(question.factors().indexOf(factor))
                                            .withoutRange(),
                                    false));
        }
        return factors;
    }

    private FitResult.Found found(Factor factor) {
        int own = model.factors().indexOf(factor);
        if (own < 0) {
            return new FitResult.Found(FittedFigure.held(model.design().number("adjust." + factor.key())), true);
        }
        return new FitResult.Found(atTheEnd().contains(factor) ? factor(own).withoutRange() : factor(own), false);
    }

    private FitResult.Derived derived(LoggedTanks tanks, FitQuestion question, boolean found) {
        Design drawn = model.drawn();
        FittedFigure ua = estimate(point -> tanks.uaWPerK(model.adjusted(point)), tanks.uaWPerK(drawn));
        FittedFigure hours = estimate(point -> tanks.timeConstantH(model.adjusted(point)), tanks.timeConstantH(drawn));
        boolean ratioOnly = !found && Set.copyOf(question.factors()).equals(Set.copyOf(FitQuestion.USUAL.factors()));
        double drawnH = tanks.timeConstantH(drawn);
        Optional<FittedFigure> ratio = ratioOnly
                ? Optional.of(estimate(point -> drawnH / tanks.timeConstantH(model.adjusted(point)), 1))
                : Optional.empty();
        return new FitResult.Derived(found ? ua : ua.withoutRange(), hours, drawn.contentsHeatCapacityJPerK(), ratio);
    }

    private double moreWPerK(LoggedTanks tanks) {
        return tanks.uaWPerK(model.adjusted(fitted.values())) - tanks.uaWPerK(model.drawn());
    }

    private FitResult.Residuals residuals() {
        double hours = model.stretches().stream().mapToDouble(Log::spanS).sum() / HOUR_S;
        return new FitResult.Residuals(
                fitted.residualSd(), fitted.residualLag1(), model.observations().size(), hours);
    }

    private FittedFigure estimate(ToDoubleFunction<double[]> figure, double drawn) {
        double value = figure.applyAsDouble(fitted.values());
        if (fitted.isSingular()) {
            return new FittedFigure(drawn, value, Optional.empty(), Optional.empty());
        }
        double[] draws = blockDraws.stream().mapToDouble(figure).toArray();
        return new FittedFigure(drawn, value, Optional.of(fitted.range(figure)), Optional.of(Range95.ofDraws(draws)));
    }

    private FittedFigure factor(int index) {
        return estimate(point -> point[index], 1);
    }

    /** Factors that stand at the end of what is tried. */
    private List<Factor> atTheEnd() {
        double[] values = fitted.values();
        return IntStream.range(0, model.factors().size())
                .filter(i -> values[i] <= NEAR_LEAST || values[i] >= NEAR_MOST)
                .mapToObj(model.factors()::get)
                .toList();
    }

    /** Factors that are correlated beyond telling; of several one known worse than by a factor of two, with the one most like it. */
    private List<Factor> alike() {
        List<Factor> factors = model.factors();
        if (fitted.isSingular()) {
            return factors;
        }
        Set<Factor> alike = EnumSet.noneOf(Factor.class);
        for (int one = 0; one < factors.size() && factors.size() > 1; one++) {
            int nearest = mostLike(one);
            if (likeness(one, nearest) > TOO_ALIKE
                    || factor(one).wider().orElseThrow().isWiderThanAFactorOfTwo()) {
                alike.add(factors.get(one));
                alike.add(factors.get(nearest));
            }
        }
        return List.copyOf(alike);
    }

    private double likeness(int one, int other) {
        return Math.abs(fitted.correlation(one, other));
    }

    private int mostLike(int one) {
        return IntStream.range(0, model.factors().size())
                .filter(other -> other != one)
                .boxed()
                .max(Comparator.comparingDouble(other -> likeness(one, other)))
                .orElseThrow();
    }
}
