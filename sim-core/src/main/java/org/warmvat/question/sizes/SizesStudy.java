package org.warmvat.question.sizes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Refused;
import org.warmvat.question.Parallel;
import org.warmvat.question.Threshold;
import org.warmvat.question.sizes.SizesResult.Size;
import org.warmvat.question.vary.GasByVolume;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.weather.Weather;

/** Scales a design over a list of volumes, runs each, and seeks the volumes from which it returns more than it eats. */
public final class SizesStudy {

    /** The change is sought until the sizes on both sides of it are as near as this. */
    private static final double NEAR = 1.005;

    private static final int MOST_FAULTS = 20;

    private final Scaling scaling;
    private final Runner runner;
    private final ToDoubleFunction<Design> needW;
    private final double ownSetpointC;

    private SizesStudy(Design base, List<ScalingRule> replaced, List<Weather> cold, Runner runner) {
        scaling = new Scaling(base, replaced);
        this.runner = runner;
        needW = design -> cold.stream()
                .mapToDouble(file -> SteadyHeat.needW(design, file, file.coldestDayC()))
                .max()
                .orElseThrow();
        ownSetpointC = base.control().setpointC();
    }

    /**
     * Answers the question.
     *
     * @param base the design
     * @param replaced rules in place of the usual ones
     * @param litres volumes of the contents, in any order
     * @param cold all weather that the sizes are to be warm in; the hardest of it says what scales with the need of heat
     * @param runner starts the tanks in their weather
     * @throws Refused when a scaled number is not allowed, for all volumes at once, or a rule names no number of the design
     * @throws org.warmvat.tank.StudyRefused when design and weather do not go together
     * @throws org.warmvat.engine.EngineFailure when a run cannot be completed
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static SizesResult run(
            Design base,
            List<ScalingRule> replaced,
            List<Double> litres,
            List<Weather> cold,
            Runner runner,
            Parallel parallel) {
        SizesStudy study = new SizesStudy(base, replaced, cold, runner);
        List<Double> volumes = litres.stream().distinct().sorted().toList();
        study.check(volumes);
        List<Size> sizes = parallel.map(volumes, study::size);
        List<Optional<Double>> found = parallel.map(
                List.<ToDoubleFunction<Size>>of(Size::leadingKWh, Size::worstMonthKWh),
                value -> study.change(sizes, value));
        List<Double> changes =
                found.stream().flatMap(Optional::stream).distinct().toList();
        List<Size> drawn = Stream.concat(sizes.stream(), parallel.map(changes, study::size).stream())
                .sorted(Comparator.comparingDouble(Size::litres))
                .toList();
        return new SizesResult(study.scaling.rules(), sizes, drawn, found.get(0), found.get(1));
    }

    private void check(List<Double> volumes) {
        List<Refused.Fault> faults = new ArrayList<>();
        for (double volume : volumes) {
            try {
                scaling.at(volume, needW);
            } catch (Refused refused) {
                faults.addAll(refused.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(faults.stream().limit(MOST_FAULTS).toList());
        }
    }

    private Size size(double litres) {
        Design design = scaling.at(litres, needW);
        double methane = GasByVolume.methaneNm3PerDay(design, ownSetpointC);
        Outputs outputs = new Outputs(runner.books(design));
        BriefYear year = BriefYear.run(design, runner);
        return new Size(
                litres, scaling.numbers(design), outputs.names(), outputs.of(design, year, methane), year.warnings());
    }

    /** The volume at which something rises above nothing, between the last size below and the first above. */
    private Optional<Double> change(List<Size> sizes, ToDoubleFunction<Size> value) {
        for (int i = 1; i < sizes.size(); i++) {
            if (value.applyAsDouble(sizes.get(i)) > 0) {
                return value.applyAsDouble(sizes.get(i - 1)) > 0
                        ? Optional.empty()
                        : Optional.of(Threshold.closedIn(
                                sizes.get(i - 1).litres(),
                                sizes.get(i).litres(),
                                NEAR,
                                litres -> value.applyAsDouble(size(litres)) > 0));
            }
        }
        return Optional.empty();
    }
}
