package org.warmvat.question.advise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.feeding.FeedMaterial;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.question.Variations;
import org.warmvat.question.advise.Recommendation.Change;
import org.warmvat.question.advise.Trials.Tried;
import org.warmvat.question.payback.Payback;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.payback.Purchase;

/** Recommendations for more net energy. */
final class Gains {

    private static final double LEAST_KWH = 20;
    private static final double LEAST_SHARE = 0.03;
    private static final double MM_PER_M = 1000;
    private static final double MIXED_MINUTES = 15;

    private final Trials trials;
    private final Design design;

    Gains(Trials trials) {
        this.trials = trials;
        this.design = trials.design();
    }

    /** The gains worth a word, the largest first. */
    List<Recommendation> found(Optional<PaybackStudy.Result> payback) {
        List<Recommendation> found = new ArrayList<>();
        payback.flatMap(PaybackStudy.Result::foam).flatMap(this::insulation).ifPresent(found::add);
        payback.flatMap(PaybackStudy.Result::collector).flatMap(this::collector).ifPresent(found::add);
        fitting().ifPresent(found::add);
        setpoint().ifPresent(found::add);
        mixer().ifPresent(found::add);
        found.sort(
                Comparator.comparingDouble((Recommendation one) -> one.after().gainKWh())
                        .reversed());
        return found;
    }

    private boolean isWorthIt(Tried tried) {
        double gain = tried.outcome().gainKWh() - trials.asIs().gainKWh();
        double least = Math.max(LEAST_KWH, LEAST_SHARE * Math.abs(trials.asIs().gainKWh()));
        return gain >= least && tried.outcome().isHarmless(trials.asIs());
    }

    private Optional<Recommendation> best(Kind kind, String about, List<Change> changes) {
        return trials.of(changes).stream()
                .filter(this::isWorthIt)
                .max(Comparator.comparingDouble(tried -> tried.outcome().gainKWh()))
                .map(tried -> new Recommendation(
                        kind,
                        about,
                        Double.NaN,
                        Optional.of(tried.change()),
                        tried.outcome(),
                        outlay(kind, tried.change())));
    }

    private OptionalDouble outlay(Kind kind, Change change) {
        boolean priced = kind == Kind.INSULATION || kind == Kind.COLLECTOR;
        Design changed = change.made().apply(design);
        return priced
                ? OptionalDouble.of(Purchase.of(changed).outlay(changed)
                        - Purchase.of(design).outlay(design))
                : OptionalDouble.empty();
    }

    /** As much as still pays, step by step from the design on; empty where already the first step does not. */
    private OptionalDouble paying(Payback steps, double own) {
        double to = own;
        for (Payback.Step step : steps.steps()) {
            if (step.from() >= own - 1e-6
                    && step.years() <= design.prices().outlay().paysWithinYears()) {
                to = step.to();
            } else if (step.from() >= own - 1e-6) {
                break;
            }
        }
        return to > own ? OptionalDouble.of(to) : OptionalDouble.empty();
    }

    private Optional<Recommendation> insulation(Payback steps) {
        String part = PaybackStudy.foamOf(design).orElseThrow();
        Layer main = design.envelope()
                .rules()
                .mainInsulation(design.envelope().part(part))
                .orElseThrow();
        double ownMm = MM_PER_M * main.thicknessM();
        OptionalDouble to = paying(steps, ownMm);
        if (to.isEmpty()) {
            return Optional.empty();
        }
        double moreM = (to.getAsDouble() - ownMm) / MM_PER_M;
        String together = "envelope.insulation_mm";
        String key = design.numbers().containsKey(together)
                ? together
                : "envelope." + part + "[" + main.material().name() + "].thickness_mm";
        return best(
                Kind.INSULATION,
                part,
                List.of(new Change(
                        key,
                        OptionalDouble.of(ownMm),
                        to.getAsDouble(),
                        some -> Variations.withFoamThicker(some, moreM))));
    }

    private Optional<Recommendation> collector(Payback steps) {
        String key = "solar.area_m2";
        double own = design.number(key);
        OptionalDouble to = paying(steps, own);
        if (to.isEmpty()) {
            return Optional.empty();
        }
        // as much as pays may be more than is sensible: then half or a quarter of it
        List<Change> changes = Stream.of(1.0, 0.5, 0.25)
                .map(share -> own + Math.rint(2 * share * (to.getAsDouble() - own)) / 2)
                .filter(areaM2 -> areaM2 > own)
                .distinct()
                .map(areaM2 -> Change.of(design, key, areaM2))
                .toList();
        return best(Kind.COLLECTOR, "", changes);
    }

    /** Half the loss of the fitting that loses most. */
    private Optional<Recommendation> fitting() {
        return IntStream.range(0, design.fittings().size())
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> FittingLoss.of(design.fittings().get(i), FittingLoss.Still.of(design))
                                .uaWPerK()))
                .flatMap(most -> {
                    Fitting fitting = design.fittings().get(most);
                    return best(Kind.FITTING, fitting.name(), List.of(halved(fitting, "fittings[" + most + "].")));
                });
    }

    private Change halved(Fitting fitting, String path) {
        if (fitting instanceof Fitting.Bar) {
            return Change.of(design, path + "bar.length_mm", 2 * design.number(path + "bar.length_mm"));
        }
        if (fitting instanceof Fitting.Pipe) {
            double mm = design.number(path + "pipe.insulation_mm");
            return Change.of(design, path + "pipe.insulation_mm", Math.max(50, 2 * mm));
        }
        return Change.of(design, path + "ua_w_k", design.number(path + "ua_w_k") / 2);
    }

    /** A few kelvins more or less, which only gas can weigh against heat. */
    private Optional<Recommendation> setpoint() {
        if (design.gas().isEmpty()) {
            return Optional.empty();
        }
        double own = design.control().setpointC();
        return best(
                Kind.SETPOINT,
                "",
                Stream.of(-6.0, -4.0, -2.0, 2.0)
                        .map(kelvin -> Change.of(design, "control.setpoint_c", own + kelvin))
                        .toList());
    }

    /** A mixer that runs a quarter of each hour, where nothing is fed that floats and makes a crust. */
    private Optional<Recommendation> mixer() {
        boolean floats = design.feed().feedstocks().stream()
                .flatMap(stock -> stock.material().stream())
                .anyMatch(material -> material.caution() == FeedMaterial.Caution.FLOATS);
        boolean brief = design.mixer().minutesPerHour() <= MIXED_MINUTES;
        return floats || brief
                ? Optional.empty()
                : best(Kind.MIXER, "", List.of(Change.of(design, "mixer.minutes_per_hour", MIXED_MINUTES)));
    }
}
