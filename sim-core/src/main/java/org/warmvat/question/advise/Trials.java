package org.warmvat.question.advise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Refused;
import org.warmvat.engine.EngineFailure;
import org.warmvat.question.Parallel;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.question.plausible.Remark;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;

/** Runs changed designs through all weather files. */
final class Trials {

    private final Design design;
    private final List<Runner> runners;
    private final Parallel parallel;
    private final Outcome asIs;
    private final List<BriefYear> years;
    private final List<String> remarks;

    Trials(Design design, List<Runner> runners, Parallel parallel) {
        this.design = design;
        this.runners = runners;
        this.parallel = parallel;
        this.years = parallel.map(runners, runner -> BriefYear.run(design, runner));
        this.asIs = Outcome.of(design, years);
        this.remarks = remarks(design);
    }

    Design design() {
        return design;
    }

    Outcome asIs() {
        return asIs;
    }

    /** The design's own run in each file. */
    List<BriefYear> years() {
        return years;
    }

    /** What comes of the design in each year. */
    List<Outcome> byYear() {
        return years.stream().map(year -> Outcome.of(design, List.of(year))).toList();
    }

    /** The changes that the design allows and that make nothing implausible, with what comes of each, in their order. */
    List<Tried> of(List<Recommendation.Change> changes) {
        List<Made> made = new ArrayList<>();
        for (Recommendation.Change change : changes) {
            made(change).ifPresent(changed -> made.add(new Made(change, changed)));
        }
        List<List<Optional<BriefYear>>> run = parallel.cross(made, runners, (one, runner) -> run(one.design(), runner));
        List<Tried> tried = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            List<BriefYear> own = run.get(i).stream().flatMap(Optional::stream).toList();
            if (own.size() == runners.size()) {
                tried.add(new Tried(made.get(i).change(), Outcome.of(made.get(i).design(), own)));
            }
        }
        return tried;
    }

    /** What comes of all changes together; empty where they do not go together. */
    Optional<Outcome> together(List<Recommendation.Change> changes) {
        Recommendation.Change all = new Recommendation.Change("", java.util.OptionalDouble.empty(), 0, some -> {
            Design changed = some;
            for (Recommendation.Change change : changes) {
                changed = change.made().apply(changed);
            }
            return changed;
        });
        return of(List.of(all)).stream().map(Tried::outcome).findFirst();
    }

    private record Made(Recommendation.Change change, Design design) {}

    /** A change with what comes of it. */
    record Tried(Recommendation.Change change, Outcome outcome) {}

    private Optional<Design> made(Recommendation.Change change) {
        try {
            Design changed = change.made().apply(design);
            return remarks.containsAll(remarks(changed)) ? Optional.of(changed) : Optional.empty();
        } catch (Refused notAllowed) {
            return Optional.empty();
        }
    }

    private List<String> remarks(Design some) {
        return Plausibility.of(some, Optional.of(runners.get(0).weather(some))).stream()
                .filter(remark -> remark.gravity() != Remark.Gravity.NOTE)
                .map(Remark::key)
                .toList();
    }

    private static Optional<BriefYear> run(Design design, Runner runner) {
        try {
            return Optional.of(BriefYear.run(design, runner));
        } catch (EngineFailure cannot) {
            return Optional.empty();
        }
    }
}
