package org.warmvat.cli.answer.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.question.fit.ClockDoubt;
import org.warmvat.question.fit.Factor;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.FittedFigure;
import org.warmvat.question.fit.Pieces;
import org.warmvat.question.fit.Suspect;
import org.warmvat.regression.Range95;

/** The answer to {@code fit} in sentences. */
final class FitWords {

    private static final int MOST_SUSPECTS = 4;
    private static final double HARDLY_DIFFERENT = 0.02;
    private static final double LARGE_RESIDUAL_K = 1;
    private static final double STRONG_MEMORY = 0.9;
    private static final double RISE_K = 3;
    private static final double HOURS_OF_HEAT = 6;
    private static final double J_PER_WH = 3600;

    private final FitResult result;
    private final YearRows years;
    private final boolean written;

    FitWords(FitResult result, YearRows years, boolean written) {
        this.result = result;
        this.years = years;
        this.written = written;
    }

    void tell(Draft draft) {
        FittedFigure ua = result.derived().uaWPerK();
        FittedFigure hours = result.derived().timeConstantH();
        draft.verdict(verdict(), but())
                .key("Loss, fitted", with(ua, "W/K"))
                .key("Loss, drawn", Numerals.three(ua.drawn()) + " W/K")
                .key("Time constant, fitted", with(hours, "h"))
                .key("Left over", Numerals.three(result.residuals().sdK()) + " K")
                .paragraph("What is the tank?", found())
                .paragraph("How well is it known?", known())
                .paragraph("What does it mean for a year?", year())
                .paragraph("What may be the reason? Questions to look at, not findings", suspects())
                .paragraph("What would tell more?", more());
    }

    private String verdict() {
        FittedFigure ua = result.derived().uaWPerK();
        if (!result.toldApart() && result.fitted().isEmpty()) {
            return result.derived()
                    .ratio()
                    .map(ratio -> "This log cannot tell loss and heat capacity apart: only their ratio is known, "
                            + Numerals.three(ratio.value()) + " times the drawn one" + interval(ratio, "") + ".")
                    .orElse("This log cannot tell apart what was asked for.");
        }
        String condition = result.toldApart() ? "The tank loses " : "With the heat capacity as drawn, the tank loses ";
        return condition + Numerals.three(ua.value()) + " W/K" + interval(ua, " W/K") + ", "
                + beside(ua.value(), ua.drawn()) + ".";
    }

    private static String beside(double value, double drawn) {
        double more = value / drawn - 1;
        if (Math.abs(more) < HARDLY_DIFFERENT) {
            return "as drawn (" + Numerals.three(drawn) + ")";
        }
        return Words.percent(Math.abs(more)) + (more > 0 ? " more" : " less") + " than drawn (" + Numerals.three(drawn)
                + ")";
    }

    private static String interval(FittedFigure estimate, String unit) {
        return estimate.wider()
                .map(range ->
                        " (95 %: " + Numerals.three(range.low()) + " to " + Numerals.three(range.high()) + unit + ")")
                .orElse("");
    }

    private static String with(FittedFigure estimate, String unit) {
        return estimate.wider()
                .map(range -> Numerals.three(range.low()) + " to " + Numerals.three(range.high()) + " " + unit)
                .orElse("not told");
    }

    private List<String> but() {
        List<String> but = new ArrayList<>();
        if (result.units().any()) {
            but.add(units());
        }
        result.factors().forEach((factor, found) -> {
            if (found.isAtTheEnd()) {
                but.add("The factor " + factor.key()
                        + " stands at the end of what is tried, 0.1 to 10: log and design do not go"
                        + " together. Look for a wrong unit, a heat that was not logged, a design of another tank.");
            }
        });
        if (!result.toldApart()) {
            but.add(
                    "This log cannot tell them apart: a tank that only cools shows how fast it does, not how much heat that is.");
        }
        if (!result.pieces().isOneValue()) {
            but.add(oneValue());
        }
        result.clock().ifPresent(doubt -> but.add(clock(doubt)));
        if (result.residuals().sdK() > LARGE_RESIDUAL_K) {
            but.add("The model misses the log by "
                    + Numerals.three(result.residuals().sdK())
                    + " K (standard deviation): something went on that neither log nor design tells.");
        }
        return but;
    }

    private String units() {
        String which = result.units().slurry() ? result.units().air() ? "slurry and air" : "slurry" : "air";
        return "The temperatures of the log's " + which
                + " look like degrees Fahrenheit, and were taken as °C: a layout"
                + " (--log-layout) with unit: f turns them.";
    }

    private static String clock(ClockDoubt doubt) {
        String by = doubt.bySun() ? "sun" : "air";
        String ahead = "By its " + by + " the log's clock is " + minutes(doubt.aheadAtStartS())
                + " the weather file's at its beginning and " + minutes(doubt.aheadAtEndS()) + " at its end: ";
        return ahead + (doubt.drifts() ? "it drifts" : "one of the two is set wrong")
                + ". Sun, feeding times and whatever else is not logged then come at the wrong time.";
    }

    private static String minutes(double aheadS) {
        return Math.round(Math.abs(aheadS) / 60) + " minutes " + (aheadS < 0 ? "behind" : "ahead of");
    }

    private String oneValue() {
        Pieces pieces = result.pieces();
        double least =
                pieces.pieces().stream().mapToDouble(Pieces.Piece::value).min().orElse(0);
        double most =
                pieces.pieces().stream().mapToDouble(Pieces.Piece::value).max().orElse(0);
        List<String> apart = pieces.pieces().stream()
                .filter(Pieces.Piece::isApart)
                .map(piece -> Words.day(piece.from().toLocalDate(), true))
                .toList();
        return "The log does not follow one value: its " + (pieces.ofStretches() ? "stretches" : "days") + " give "
                + Numerals.three(least) + " to " + Numerals.three(most) + " times the drawn loss, "
                + Numerals.three(pieces.scatterRatio()) + " times as far apart as their errors allow. The tank changed,"
                + " or something went in or out that was not logged"
                + (apart.isEmpty() ? "." : "; look first at " + Words.list(apart) + ".");
    }

    private List<String> found() {
        List<String> sentences = new ArrayList<>();
        result.factors().forEach((factor, found) -> sentences.add(sentence(factor, found)));
        FittedFigure hours = result.derived().timeConstantH();
        sentences.add("Its time constant is " + Numerals.three(hours.value()) + " h" + interval(hours, " h")
                + ", drawn " + Numerals.three(hours.drawn())
                + " h: after it, left alone, a third of the temperature difference is left.");
        if (written) {
            sentences.add("The design file " + FitAnswer.DESIGN_FILE
                    + " has what was found under adjust; all other commands honour it.");
        }
        return sentences;
    }

    private static String sentence(Factor factor, FitResult.Found found) {
        String name = switch (factor) {
            case ENVELOPE -> "Walls, lid, base and edges lose";
            case FITTINGS -> "The fittings lose";
            case CAPACITY -> "The contents hold";
            case SOLAR_COIL -> "The solar coil passes";
            case BACKUP_COIL -> "The backup coil passes";
            case COLLECTOR -> "The collector takes up";
        };
        if (found.held()) {
            double value = found.estimate().value();
            return name + (value == 1 ? "" : " " + Numerals.three(value) + " times")
                    + " what is drawn: held, not found.";
        }
        if (found.estimate().wider().isEmpty()) {
            return name + " what this log cannot tell by itself (factor " + factor.key() + ").";
        }
        return name + " " + Numerals.three(found.estimate().value()) + " times what is drawn"
                + interval(found.estimate(), "") + ".";
    }

    private List<String> known() {
        FitResult.Residuals left = result.residuals();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Of " + left.readings() + " readings over " + Numerals.three(left.hours()) + " h the model leaves "
                        + Numerals.three(left.sdK()) + " K (standard deviation); neighbouring residuals correlate by "
                        + Numerals.fixed(left.lag1(), 2) + ".");
        if (left.lag1() > STRONG_MEMORY) {
            sentences.add(
                    "Errors that remember like this tell far less than so many readings by themselves would; the intervals"
                            + " take that into account.");
        }
        sentences.add(
                "Two intervals were made, from errors that remember and from moving blocks of the residuals; the sentences"
                        + " take the wider, the table has both.");
        return sentences;
    }

    private List<String> year() {
        List<String> sentences = new ArrayList<>(years.sentences());
        result.year()
                .map(year -> List.of(
                        "The backup heater buys " + both(year.backupBoughtKWh())
                                + (sentences.isEmpty() ? " in the year of the weather file." : " in the worst year."),
                        year.gas()
                                .map(ends -> "The net energy of that year is " + both(year.netEnergyKWh())
                                        + "; as fitted it is "
                                        + GasWords.three(
                                                ends.low().netKWh(),
                                                year.netEnergyKWh().value(),
                                                ends.high().netKWh())
                                        + ".")
                                .orElse("No gas is computed, so that its net energy cannot be judged.")))
                .ifPresent(sentences::addAll);
        return sentences;
    }

    private static String both(FittedFigure estimate) {
        return Words.kWh(estimate.value()) + interval(estimate, " kWh") + ", as drawn " + Words.kWh(estimate.drawn());
    }

    /** Questions only where the log says that something differs. */
    private List<String> suspects() {
        FittedFigure ua = result.derived().uaWPerK();
        boolean asDrawn = ua.wider().map(range -> range.holds(ua.drawn())).orElse(true);
        if (asDrawn || result.fitted().isEmpty()) {
            return List.of();
        }
        boolean more = ua.value() > ua.drawn();
        return result.suspects().stream()
                .limit(MOST_SUSPECTS)
                .map(suspect -> question(suspect, more))
                .toList();
    }

    private static String question(Suspect suspect, boolean more) {
        String part = part(suspect.part());
        String what = more
                ? switch (suspect.part()) {
                    case WALL, DRY_WALL ->
                        "Is the insulation of the " + part + " wet, thinner than drawn or open at its seams?";
                    case LID -> "Does the lid close, and is its insulation dry and as thick as drawn?";
                    case BASE ->
                        "Is the insulation under the base wet or pressed flat, or does the base stand on more than is drawn?";
                    case EDGES -> "Do metal sheets or frames bridge the insulation where wall, lid and base meet?";
                    case FITTINGS ->
                        "Are pipes, legs, shaft, hatches or straps missing from the fittings, or their insulation?";
                }
                : switch (suspect.part()) {
                    case FITTINGS -> "Are fittings drawn that are not there, or better insulated?";
                    case EDGES -> "Does the insulation run through where wall, lid and base meet?";
                    default ->
                        "Is the insulation of the " + part + " thicker or better than drawn, or the wind there weaker?";
                };
        String strain = suspect.drawnWPerK() > 0
                ? "drawn " + Numerals.three(suspect.drawnWPerK()) + ", " + Numerals.three(suspect.factor()) + " times"
                : "none drawn";
        return what + " Alone, the " + part + " would have to lose " + Numerals.three(suspect.neededWPerK()) + " W/K ("
                + strain + ").";
    }

    private static String part(Suspect.Part part) {
        return switch (part) {
            case WALL -> "wall beside the slurry";
            case DRY_WALL -> "wall beside the gas space";
            case LID -> "lid";
            case BASE -> "base";
            case EDGES -> "thermal bridges at the edges";
            case FITTINGS -> "fittings";
        };
    }

    private List<String> more() {
        if (result.toldApart()) {
            return List.of();
        }
        double watts = result.derived().capacityJPerK() * RISE_K / (HOURS_OF_HEAT * J_PER_WH);
        return List.of(
                "A known heat tells loss and capacity apart: " + Numerals.three(watts) + " W of electricity for "
                        + Numerals.three(HOURS_OF_HEAT) + " h would raise this tank by " + Numerals.three(RISE_K)
                        + " K; log it as backup_electric_w and let the tank cool for some days after.",
                "Only a heater that is made for the tank will do, covered by slurry all the time and behind a residual-current"
                        + " device; to fit one is an electrician's work.");
    }

    /** What is worth a look, for other programs too. */
    List<String> hints() {
        List<String> hints = new ArrayList<>(but());
        hints.addAll(suspects());
        hints.addAll(more());
        return hints;
    }

    static List<String> row(String name, FittedFigure estimate, String unit) {
        return List.of(
                unit.isEmpty() ? name : name + ", " + unit,
                Numerals.three(estimate.drawn()),
                Numerals.three(estimate.value()),
                cell(estimate.remembered()),
                cell(estimate.blocks()));
    }

    static List<String> row(Pieces.Piece piece) {
        return List.of(
                piece.from().toString(),
                Numerals.three(piece.value()),
                Numerals.three(piece.sd()),
                piece.isApart() ? "far from the others" : "");
    }

    private static String cell(Optional<Range95> range) {
        return range.map(ends -> Numerals.three(ends.low()) + " to " + Numerals.three(ends.high()))
                .orElse("");
    }
}
