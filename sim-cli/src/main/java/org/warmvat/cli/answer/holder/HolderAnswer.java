package org.warmvat.cli.answer.holder;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.holder.HolderStudy;

/** The answer to {@code holder}. */
public final class HolderAnswer {

    private static final Columns<HolderStudy.Year> CURVE = new Columns<HolderStudy.Year>()
            .number("useful_m3", "useful, m³", HolderStudy.Year::usefulM3, Words::number)
            .number("unmet_share", "unmet, share", HolderStudy.Year::unmetShare, Words::percentCell)
            .cell("unmet, kWh", year -> Words.number(year.unmetKWh()))
            .number("surplus_nm3", "surplus, Nm³", HolderStudy.Year::surplusNm3, Words::number);

    private HolderAnswer() {}

    /** Tells what was found. */
    public static Document of(HolderStudy.Result result, Subject asked) {
        return Draft.of(asked, "which gas holder?")
                .verdict(verdict(result), but(result))
                .figure(
                        "holder",
                        Draft.row(
                                "smallest_m3", result.smallestM3(),
                                "unmet_share", result.smallest().unmetShare(),
                                "curve", CURVE.rows(result.curve())))
                .table(CURVE.table("Unmet use and surplus by the holder's useful volume", result.curve()))
                .csv("curve.csv", CURVE.csv(result.curve()))
                .pictures(() -> List.of(picture(result)))
                .warn(result.smallest().warnings())
                .assume(
                        "Use and gas are those of the weather file, a year or less; what is burnt by the tank's own heater comes first,"
                                + " by the holder's reserve.",
                        "The useful volume is what can be filled and emptied; a holder that stands in the sun or the frost holds"
                                + " less.")
                .done();
    }

    private static String verdict(HolderStudy.Result result) {
        if (result.smallestM3().isEmpty()) {
            return "No holder serves the uses: with " + HolderStudy.MOST_DAYS_OF_GAS + " days' gas, "
                    + m3(result.smallest().usefulM3()) + ", "
                    + Words.percent(result.smallest().unmetShare())
                    + " of what they want stays unmet, more than the " + Words.percent(result.allowedShare())
                    + " allowed: "
                    + (result.smallest().surplusNm3() > 0
                            ? "gas is short in one part of the year and left over in another."
                            : "they want more gas than there is.");
        }
        double m3 = result.smallestM3().getAsDouble();
        return "The smallest holder that leaves no more than " + Words.percent(result.allowedShare())
                + " of what the uses want unmet has " + m3(m3) + " of useful volume, "
                + Words.fixed(m3 / result.daysGasM3(), 2) + " of a day's gas.";
    }

    private static List<String> but(HolderStudy.Result result) {
        HolderStudy.Year own = result.asDesigned();
        HolderStudy.Year smallest = result.smallest();
        return new Telling()
                .say("The design's own " + m3(own.usefulM3()) + " leave " + Words.percent(own.unmetShare())
                        + " unmet and " + nm3(own.surplusNm3()) + " of surplus.")
                .when(
                        smallest.surplusNm3() > 0,
                        () -> "With " + m3(smallest.usefulM3()) + " "
                                + nm3(smallest.surplusNm3())
                                + " still find no room: surplus goes to a flare, never to open air.")
                .done();
    }

    private static Drawing picture(HolderStudy.Result result) {
        double most = result.curve().get(result.curve().size() - 1).usefulM3();
        LineChart chart = LineChart.over("holder", "Unmet use and surplus by size", "useful volume, m³", 0, most)
                .caption(
                        "Top: share of what the uses want that stays unmet. Bottom: gas that finds no room and goes to the flare.")
                .stripWithZero("unmet, %", 5)
                .dotted("unmet", Look.NEED, points(result, year -> 100 * year.unmetShare()))
                .level("allowed", Look.MINIMUM, 100 * result.allowedShare())
                .stripWithZero("surplus, Nm³", 1)
                .dotted("surplus", Look.GAS, points(result, HolderStudy.Year::surplusNm3));
        result.smallestM3().ifPresent(m3 -> chart.upright("smallest", m3));
        return chart;
    }

    private static Points points(HolderStudy.Result result, ToDoubleFunction<HolderStudy.Year> value) {
        return new Points(
                result.curve().stream().mapToDouble(HolderStudy.Year::usefulM3).toArray(),
                result.curve().stream().mapToDouble(value).toArray());
    }

    private static String m3(double value) {
        return Words.number(value) + " m³";
    }

    private static String nm3(double value) {
        return Words.number(value) + " Nm³";
    }
}
