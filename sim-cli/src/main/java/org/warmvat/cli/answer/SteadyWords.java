package org.warmvat.cli.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;

/** What it costs to be steady, in words. */
public final class SteadyWords {

    private SteadyWords() {}

    /** Tells it, where the sun may warm the contents by more than 1 K above the set-point. */
    public static void tell(Draft draft, Optional<Steadiness> found, Subject asked) {
        tell(draft, found, asked, "");
    }

    /** The same of the design as drawn, in an answer about several. */
    public static void tellAsDrawn(Draft draft, Optional<Steadiness> found, Subject asked) {
        tell(draft, found, asked, "As drawn: ");
    }

    private static void tell(Draft draft, Optional<Steadiness> found, Subject asked, String before) {
        found.ifPresent(steady -> draft.paragraph("What does it cost to be steady?", sentences(steady, asked, before))
                .figure("steadiness", figures(steady)));
    }

    private static List<String> sentences(Steadiness found, Subject asked, String before) {
        return List.of(
                before + "The sun may warm the slurry to " + Words.number(found.limitK())
                        + " K above the set-point; on "
                        + found.asIs().daysOver() + " days of the weather file it stands more than "
                        + Words.number(asked.design().control().dailyChange().noticeK()) + " K from the day before.",
                "With a high limit of " + Words.number(Steadiness.STEADY_K) + " K these days are "
                        + found.steady().daysOver() + ", and " + price(found, asked) + ".");
    }

    private static String price(Steadiness found, Subject asked) {
        Steadiness.Course asIs = found.asIs();
        Steadiness.Course steady = found.steady();
        if (asked.design().backup().isEmpty()) {
            return "the tank is below its minimum for " + Words.hours(steady.shortHours()) + " hours where it was for "
                    + Words.hours(asIs.shortHours());
        }
        double more = steady.heatKWh() - asIs.heatKWh();
        String share = asIs.heatKWh() > 0 ? " (" + Words.percent(Math.abs(more) / asIs.heatKWh()) + ")" : "";
        return "the backup heater gives " + Words.kWh(Math.abs(more)) + (more >= 0 ? " more" : " less") + share;
    }

    private static Map<String, Object> figures(Steadiness found) {
        return Draft.row(
                "limit_above_setpoint_k", found.limitK(),
                "days_over_guidance", found.asIs().daysOver(),
                "backup_heat_kwh", found.asIs().heatKWh(),
                "steady_days_over_guidance", found.steady().daysOver(),
                "steady_backup_heat_kwh", found.steady().heatKWh(),
                "steady_hours_below_floor", found.steady().shortHours());
    }
}
