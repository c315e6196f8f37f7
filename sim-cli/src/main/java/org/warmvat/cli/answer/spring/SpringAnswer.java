package org.warmvat.cli.answer.spring;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.question.Steadiness;
import org.warmvat.question.spring.SpringStudy;

/** The answer to {@code spring}. */
public final class SpringAnswer {

    private static final int NO_LEAP_YEAR = 2025;
    private static final int DAYS = 365;

    private SpringAnswer() {}

    /** Tells what was found. */
    public static Document of(SpringStudy.Result result, Optional<Steadiness> steadiness, Subject asked) {
        boolean useful =
                asked.design().gas().filter(gas -> !gas.uses().isEmpty()).isPresent();
        Columns<SpringStudy.Start> columns = columns(useful);
        Draft draft = Draft.of(asked, "when to start it cold?")
                .verdict(verdict(result, useful), but(result, asked.design()))
                .figure(
                        "spring",
                        Draft.row(
                                "starts", columns.rows(result.starts()),
                                "earliest_that_pays", result.earliestThatPays().map(start -> text(start.date()))))
                .table(columns.table("Starts of a cold tank", result.starts()))
                .csv("starts.csv", columns.csv(result.starts()))
                .assume(
                        "On each date slurry and insulation are as cold as the ground, and no biodegradable solids are in the tank:"
                                + " gas comes only as fast as the feed brings them. The weather file is taken round.",
                        "How long the digestion itself takes to start, its microbes to grow, is not part of the model: common"
                                + " practice allows some weeks after the set-point is reached.");
        draft.warn(Warnings.worst(
                result.starts().stream().map(SpringStudy.Start::warnings).toList()));
        if (result.starts().size() > 1) {
            draft.pictures(() -> List.of(picture(result)));
        }
        SteadyWords.tellAsDrawn(draft, steadiness, asked);
        return draft.done();
    }

    private static String verdict(SpringStudy.Result result, boolean useful) {
        if (result.starts().stream().anyMatch(start -> start.gas().isEmpty())) {
            return "No gas is computed for this design, so that no start can be said to pay back its heat.";
        }
        String what = useful ? "useful gas" : "gas";
        return result.earliestThatPays()
                .map(start -> "A cold start on " + said(start.date())
                        + " is the earliest of the dates from which the tank gives more " + what
                        + " within a year than it takes, the heat to start it included"
                        + start.daysBackup().stream()
                                .mapToObj(days -> "; it is at the set-point after " + days(days) + ".")
                                .findFirst()
                                .orElse("; it does not reach the set-point within the year.")
                        + start.gas()
                                .map(ends -> " Its " + (useful ? "useful " : "") + "net energy over that year is "
                                        + GasWords.three(
                                                ends.low().leadingKWh(),
                                                start.netKWh(),
                                                ends.high().leadingKWh())
                                        + ".")
                                .orElse(""))
                .orElse("From none of the dates does the tank give more " + what
                        + " within a year than it takes, the heat to start it included.");
    }

    private static List<String> but(SpringStudy.Result result, Design design) {
        Optional<SpringStudy.Start> sun = result.starts().stream()
                .filter(start -> start.daysSun().isPresent())
                .min(Comparator.comparingDouble(start -> start.daysSun().getAsDouble()));
        Optional<SpringStudy.Start> cooler = result.starts().stream()
                .filter(start -> setpointC(design, start) < design.control().setpointC() - 1)
                .findFirst();
        return new Telling()
                .say(sun.map(start -> "By the sun alone a start on " + said(start.date()) + " is the quickest, after "
                                + days(start.daysSun().getAsDouble()) + ".")
                        .orElse("The sun alone brings it to the set-point within a year from none of the dates."))
                .say(cooler.map(start -> "At the set-point means at that of the calendar: a start on "
                        + said(start.date()) + " has but " + Words.celsius(setpointC(design, start)) + " to reach."))
                .say(
                        "A first fill and a cold start pass through the explosive range of biogas in air: keep flames and sparks away and let the"
                                + " first gas off in the open, by your local code.")
                .done();
    }

    private static double setpointC(Design design, SpringStudy.Start start) {
        return design.season()
                .on(SeasonTable.dayOf(start.date().atYear(NO_LEAP_YEAR)))
                .setpointC();
    }

    private static Columns<SpringStudy.Start> columns(boolean useful) {
        return new Columns<SpringStudy.Start>()
                .value("date", start -> text(start.date()))
                .cell("start", start -> said(start.date()))
                .value("days_to_setpoint_sun", SpringStudy.Start::daysSun)
                .cell("days, sun alone", start -> cell(start.daysSun(), Words::tenth))
                .value("days_to_setpoint_backup", SpringStudy.Start::daysBackup)
                .cell("days, with backup", start -> cell(start.daysBackup(), Words::tenth))
                .value("heat_kwh", SpringStudy.Start::heatKWh)
                .cell("heat to the set-point, kWh", start -> cell(start.heatKWh(), Words::number))
                .value("bought_kwh", SpringStudy.Start::boughtKWh)
                .cell("bought for it, kWh", start -> cell(start.boughtKWh(), Words::number))
                .cell(
                        useful ? "useful net of a year, kWh" : "net of a year, kWh",
                        start -> Words.number(start.netKWh()))
                .cell(
                        "the same with low and high gas, kWh",
                        start -> start.gas()
                                .map(ends -> Words.number(ends.low().leadingKWh()) + " and "
                                        + Words.number(ends.high().leadingKWh()))
                                .orElse("–"))
                .value("pays_back", start -> start.gas().map(gas -> start.paysBack()))
                .cell("pays back", start -> start.gas().isEmpty() ? "–" : start.paysBack() ? "yes" : "no")
                .value(
                        "net_energy_low_gas_kwh",
                        start -> start.gas().map(gas -> gas.low().netKWh()))
                .value(
                        "net_energy_high_gas_kwh",
                        start -> start.gas().map(gas -> gas.high().netKWh()));
    }

    private static String cell(OptionalDouble value, DoubleFunction<String> words) {
        return value.isPresent() ? words.apply(value.getAsDouble()) : "not within a year";
    }

    private static Drawing picture(SpringStudy.Result result) {
        return LineChart.over("starts", "Cold starts through the year", "day of the year", 0, DAYS)
                .caption(
                        "Top: days until the set-point is reached, with the backup heater and by the sun alone, where it is at all"
                                + " within a year. Bottom: what is bought for it.")
                .stripWithZero("days", 10)
                .dotted("with the backup", Look.BACKUP, points(result, SpringStudy.Start::daysBackup))
                .dotted("the sun alone", Look.SUN, points(result, SpringStudy.Start::daysSun))
                .stripWithZero("bought, kWh", 10)
                .dotted("bought for the start", Look.NEED, points(result, SpringStudy.Start::boughtKWh));
    }

    private static Points points(SpringStudy.Result result, Function<SpringStudy.Start, OptionalDouble> value) {
        List<SpringStudy.Start> told = result.starts().stream()
                .filter(start -> value.apply(start).isPresent())
                .sorted((one, other) -> one.date().compareTo(other.date()))
                .toList();
        return new Points(
                told.stream()
                        .mapToDouble(start -> start.date().atYear(NO_LEAP_YEAR).getDayOfYear() - 1.0)
                        .toArray(),
                told.stream()
                        .mapToDouble(start -> value.apply(start).getAsDouble())
                        .toArray());
    }

    private static String days(double days) {
        return Words.fixed(days, 1) + " days";
    }

    private static String text(MonthDay date) {
        return String.format(Locale.ROOT, "%02d-%02d", date.getMonthValue(), date.getDayOfMonth());
    }

    private static String said(MonthDay date) {
        return date.getDayOfMonth() + " " + Words.month(date.getMonth());
    }
}
