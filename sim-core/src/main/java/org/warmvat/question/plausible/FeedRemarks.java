package org.warmvat.question.plausible;

import java.util.Locale;
import org.warmvat.design.Design;
import org.warmvat.design.Plausible;
import org.warmvat.design.feeding.FeedMaterial;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.question.plausible.Remark.Gravity;

/** Remarks on what is fed: loading, retention, what the feedstocks are. */
final class FeedRemarks {

    private final Design design;
    private final Plausible bounds;
    private final SeasonTable season;
    private final Remarks remarks;

    FeedRemarks(Design design, Remarks remarks) {
        this.design = design;
        this.bounds = design.plausible();
        this.season = design.season();
        this.remarks = remarks;
    }

    /** Organic loading rate with the largest feed of the year. */
    void loading() {
        double most = season.largest(this::solidsKg) / design.tank().liquidVolumeM3();
        boolean notCredible = most > bounds.loadingNotCredibleKgVsPerM3Day();
        double bound = notCredible ? bounds.loadingNotCredibleKgVsPerM3Day() : bounds.loadingKgVsPerM3Day();
        if (most > bound) {
            remarks.add(
                    "loading",
                    notCredible ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The organic loading rate of %.1f kg of volatile solids per m3 and day is "
                            + (notCredible
                                    ? "not credible for such a tank (above %s): is the daily feed in kg?"
                                    : "high (above %s): the tank may turn sour."),
                    most,
                    Remarks.threeFigures(bound));
        }
    }

    private double solidsKg(int day) {
        double kg = 0;
        for (int i = 0; i < design.feed().feedstocks().size(); i++) {
            kg += season.on(day).feedstockFactor(i)
                    * design.feed().feedstocks().get(i).volatileSolidsKgPerDay();
        }
        return kg;
    }

    private double fedKg(int day) {
        return design.feed().totalKgOn(season.on(day));
    }

    void retention() {
        double most = season.largest(this::fedKg);
        double days = design.contentsKg() / most;
        if (most == 0) {
            return;
        }
        if (days < bounds.retentionDays().get(0)) {
            remarks.add(
                    "retention",
                    days < 2 ? Gravity.NOT_CREDIBLE : Gravity.UNLIKELY,
                    "The slurry stays %s days only (usual are %s to %s): %s kg are fed a day into %.0f kg; digestion may be washed out.",
                    Remarks.threeFigures(days),
                    Remarks.threeFigures(bounds.retentionDays().get(0)),
                    Remarks.threeFigures(bounds.retentionDays().get(1)),
                    Remarks.threeFigures(most),
                    design.contentsKg());
        } else if (days > bounds.retentionDays().get(1)) {
            remarks.add(
                    "retention",
                    Gravity.NOTE,
                    "The slurry stays more than %.0f days (usual are %s to %s): the tank is large for %s kg a day.",
                    Math.floor(Math.min(days, 9999)),
                    Remarks.threeFigures(bounds.retentionDays().get(0)),
                    Remarks.threeFigures(bounds.retentionDays().get(1)),
                    Remarks.threeFigures(most));
        }
    }

    void materials() {
        for (Feedstock stock : design.feed().feedstocks()) {
            stock.material()
                    .map(FeedMaterial::caution)
                    .filter(caution -> !caution.words().isEmpty() && stock.kgPerDay() > 0)
                    .ifPresent(caution ->
                            remarks.add("feedstock", Gravity.NOTE, "%s %s.", capital(stock.name()), caution.words()));
        }
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('_', ' ');
    }
}
