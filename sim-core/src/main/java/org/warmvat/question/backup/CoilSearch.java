package org.warmvat.question.backup;

import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.question.Parallel;
import org.warmvat.question.Threshold;
import org.warmvat.question.Variations;
import org.warmvat.tank.DerivedFigures;

/** Whether the backup coil passes what a heater gives, and how large it must be where it does not. */
record CoilSearch(Design design, List<BackupSite> sites, Parallel parallel) {

    /** Factors by which a coil is enlarged in search of one that is enough. */
    private static final List<Double> LARGER = List.of(1.0, 1.25, 1.6, 2.0, 2.5, 3.2, 4.0, 6.0, 10.0, 20.0);

    /**
     * The coil.
     *
     * @param isLimit whether no heater is enough with it as it is
     */
    BackupResult.Coil coil(boolean isLimit) {
        OptionalDouble passes =
                DerivedFigures.backupCoilMostW(design).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        OptionalDouble area = areaM2();
        OptionalDouble factor = isLimit && area.isPresent() ? neededFactor() : OptionalDouble.empty();
        OptionalDouble needed = factor.isPresent()
                ? OptionalDouble.of(area.getAsDouble() * factor.getAsDouble())
                : OptionalDouble.empty();
        return new BackupResult.Coil(passes, isLimit, area, needed);
    }

    private OptionalDouble areaM2() {
        return design.backup()
                .flatMap(BackupCircuit::circuit)
                .map(circuit -> OptionalDouble.of(circuit.coil().areaM2()))
                .orElseGet(OptionalDouble::empty);
    }

    private OptionalDouble neededFactor() {
        List<Boolean> enough = parallel.map(LARGER, this::isEnough);
        return enough.get(0) ? OptionalDouble.empty() : Threshold.onLadder(LARGER, enough, this::isEnough, parallel);
    }

    private boolean isEnough(double factor) {
        return sites.stream().allMatch(site -> {
            Design scaled = Variations.withBackupCoilScaled(site.with(BackupStudy.UNLIMITED_W), factor);
            return site.warmsUp(scaled) && site.holdsMinimum(scaled);
        });
    }
}
