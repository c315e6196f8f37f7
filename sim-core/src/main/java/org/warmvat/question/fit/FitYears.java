package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.heating.BackupPart;
import org.warmvat.question.GasRange;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.BriefYear;
import org.warmvat.regression.Fitted;
import org.warmvat.regression.Range95;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** What a fit means for a year: the tank as drawn, as fitted, and as 16 draws from the fit's covariance say. */
final class FitYears {

    private static final int DRAWS = 16;
    private static final long SEED = 1;
    private static final int HOURS_OF_A_YEAR = 8760;

    private final List<Weather> years;
    private final Engine engine;
    private final Parallel parallel;

    FitYears(List<Weather> years, Engine engine, Parallel parallel) {
        this.years = years;
        this.engine = engine;
        this.parallel = parallel;
    }

    /** Each year that is whole. */
    List<FitResult.Year> of(FitModel model, Fitted fitted) throws StudyRefused {
        List<FitResult.Year> told = new ArrayList<>();
        for (int year = 0; year < years.size() && !fitted.isSingular(); year++) {
            if (years.get(year).hours() >= HOURS_OF_A_YEAR) {
                told.add(of(year, model, fitted));
            }
        }
        return told;
    }

    private FitResult.Year of(int year, FitModel model, Fitted fitted) throws StudyRefused {
        Weather file = years.get(year);
        List<Design> designs = new ArrayList<>(List.of(model.drawn(), model.adjusted(fitted.values())));
        fitted.draws(DRAWS, SEED).forEach(point -> designs.add(model.adjusted(point)));
        StudyRefused.check(designs.get(0), file);
        Runner runner = new Runner(file, engine);
        List<BriefYear> runs = parallel.map(designs, design -> BriefYear.checked(design, runner));
        BriefYear asFitted = runs.get(1);
        return new FitResult.Year(
                year,
                estimate(each(runs, run -> run.of(BackupPart.BOUGHT))),
                estimate(each(runs, run -> run.of(KeyFigures.NET))),
                asFitted.gas().map(GasRange::whole),
                asFitted.year().of(KeyFigures.BELOW_FLOOR_HOURS),
                asFitted.warnings());
    }

    private static double[] each(List<BriefYear> runs, ToDoubleFunction<Period> figure) {
        return runs.stream()
                .mapToDouble(run -> figure.applyAsDouble(run.year()))
                .toArray();
    }

    private static FittedFigure estimate(double[] figures) {
        double[] draws = Arrays.copyOfRange(figures, 2, figures.length);
        return new FittedFigure(figures[0], figures[1], Optional.of(Range95.ofFewDraws(draws)), Optional.empty());
    }
}
