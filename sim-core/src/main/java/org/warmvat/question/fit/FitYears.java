package org.warmvat.question.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.heating.BackupPart;
import org.warmvat.question.GasRange;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.BriefYear;
import org.warmvat.regression.Fitted;
import org.warmvat.regression.Range95;
import org.warmvat.tank.Housekeeping;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** What a fit means for a year: the tank as drawn, as fitted, and as 16 draws from the fit's covariance say. */
final class FitYears {

    private static final int DRAWS = 16;
    private static final long SEED = 1;
    private static final int HOURS_OF_A_YEAR = 8760;

    private final Optional<Weather> file;
    private final Engine engine;
    private final Parallel parallel;

    FitYears(Optional<Weather> file, Engine engine, Parallel parallel) {
        this.file = file.filter(weather -> weather.hours() >= HOURS_OF_A_YEAR);
        this.engine = engine;
        this.parallel = parallel;
    }

    Optional<FitResult.Year> of(FitModel model, Fitted fitted) throws StudyRefused {
        if (file.isEmpty() || fitted.isSingular()) {
            return Optional.empty();
        }
        List<Design> designs = new ArrayList<>(List.of(model.drawn(), model.adjusted(fitted.values())));
        fitted.draws(DRAWS, SEED).forEach(point -> designs.add(model.adjusted(point)));
        StudyRefused.check(designs.get(0), file.get());
        Runner runner = new Runner(file.get(), engine);
        List<BriefYear> years = parallel.map(designs, design -> BriefYear.checked(design, runner));
        double[] bought = years.stream()
                .mapToDouble(year -> year.year().of(BackupPart.BOUGHT))
                .toArray();
        double[] net = years.stream()
                .mapToDouble(year -> year.year().of(Housekeeping.NET))
                .toArray();
        BriefYear asFitted = years.get(1);
        return Optional.of(new FitResult.Year(
                estimate(bought), estimate(net), asFitted.gas().map(GasRange::whole), asFitted.warnings()));
    }

    private static FittedFigure estimate(double[] figures) {
        double[] draws = Arrays.copyOfRange(figures, 2, figures.length);
        return new FittedFigure(figures[0], figures[1], Optional.of(Range95.ofFewDraws(draws)), Optional.empty());
    }
}
