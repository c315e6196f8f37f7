package org.warmvat.question.advise;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.question.Variations;
import org.warmvat.question.advise.Recommendation.Change;
import org.warmvat.question.advise.Trials.Tried;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.hold.HoldResult;

/** Recommendations against a tank that grows cold. */
final class Heaters {

    /** Sizes of heaters that can be bought, W. */
    static final List<Double> SIZES_W = List.of(
            100.0, 150.0, 200.0, 300.0, 500.0, 750.0, 1000.0, 1500.0, 2000.0, 3000.0, 4500.0, 6000.0, 9000.0, 12_000.0,
            18_000.0, 24_000.0);

    private static final double QUICK_H = 24;

    private final Trials trials;
    private final Design design;

    Heaters(Trials trials) {
        this.trials = trials;
        this.design = trials.design();
    }

    /**
     * The heater to have, where the design's own is absent, too small, or without reserve.
     *
     * @param plain the heater for the weather as it is
     * @param reserve the same with a colder coldest week
     */
    Optional<Recommendation> heater(BackupResult plain, BackupResult reserve) {
        OptionalDouble needW = reserve.need().forFloorW();
        if (needW.isEmpty()) {
            return coil(plain);
        }
        double ownW = design.backup().isPresent() ? design.number("backup.rated_w") : 0;
        double sizeW = SIZES_W.stream()
                .filter(size -> size >= needW.getAsDouble())
                .findFirst()
                .orElse(Math.ceil(needW.getAsDouble()));
        if (ownW >= needW.getAsDouble() || sizeW <= ownW) {
            return Optional.empty();
        }
        boolean own = design.backup().isPresent();
        Change change = new Change(
                "backup.rated_w",
                own ? OptionalDouble.of(ownW) : OptionalDouble.empty(),
                sizeW,
                some -> own ? Variations.withBackupPower(some, sizeW) : Variations.withElement(some, sizeW));
        String about = plain.need().forFloorW().stream().allMatch(need -> need <= ownW) ? "reserve" : "";
        return tried(Kind.HEATER, about, needW.getAsDouble(), change);
    }

    /** A coil that passes too little, with the heater that it then needs. */
    private Optional<Recommendation> coil(BackupResult plain) {
        if (plain.coil().neededM2().isEmpty()) {
            return Optional.empty();
        }
        double areaM2 = Math.ceil(20 * plain.coil().neededM2().getAsDouble()) / 20;
        return tried(
                Kind.BACKUP_COIL,
                "",
                plain.coil().passesW().orElse(Double.NaN),
                Change.of(design, "backup.coil.area_m2", areaM2));
    }

    private Optional<Recommendation> tried(Kind kind, String about, double amount, Change change) {
        Outcome asIs = trials.asIs();
        return trials.of(List.of(change)).stream()
                .filter(one -> one.outcome().isHarmless(asIs))
                .map(Tried::outcome)
                .map(after ->
                        new Recommendation(kind, about, amount, Optional.of(change), after, OptionalDouble.empty()))
                .findFirst();
    }

    /** A tank that falls by 10 K within a day in the coldest month: what is to be had at hand. */
    Optional<Recommendation> failure(HoldResult hold) {
        return Optional.of(soonestH(hold))
                .filter(shortest -> shortest < QUICK_H)
                .map(shortest -> new Recommendation(
                        Kind.FAILURE, "", shortest, Optional.empty(), trials.asIs(), OptionalDouble.empty()));
    }

    /** Hours until the tank is cold, whatever fails; infinite where it is not while followed. */
    static double soonestH(HoldResult hold) {
        return hold.failures().stream()
                .flatMapToDouble(failure -> failure.hours().get(0).stream())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
