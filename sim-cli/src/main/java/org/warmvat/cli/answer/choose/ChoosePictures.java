package org.warmvat.cli.answer.choose;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.PointChart;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.plot.RankedBars;
import org.warmvat.cli.words.Words;
import org.warmvat.question.choose.Aim;
import org.warmvat.question.choose.Candidate;
import org.warmvat.question.choose.ChooseResult;

/** Pictures of the choice: the best compromises, and what a wrong choice costs. */
record ChoosePictures(ChooseResult result, String currency) {

    List<Drawing> all() {
        List<Drawing> pictures = new ArrayList<>();
        if (!result.front().all().isEmpty()) {
            pictures.add(front());
        }
        if (result.mattersMost().change() > 0) {
            pictures.add(influence());
        }
        return pictures;
    }

    private Drawing front() {
        Aim across = result.front().first();
        Aim up = result.front().second();
        PointChart chart = PointChart.of(
                        "front",
                        ChooseWords.name(up, currency) + " against " + ChooseWords.name(across, currency),
                        ChooseWords.name(across, currency),
                        ChooseWords.name(up, currency))
                .caption(
                        "Each mark is a design that keeps to the limits; along the line no other is better in both figures.")
                .points("keeps to the limits", Look.SIXTH, points(result.front().all(), across, up))
                .front(
                        "best compromises",
                        Look.OTHER_SLURRY,
                        points(result.front().designs(), across, up))
                .mark("best", figure(result.best(), across), figure(result.best(), up));
        if (Double.isFinite(result.drawn().perYear())) {
            chart.mark("as drawn", drawn(across), drawn(up));
        }
        return chart;
    }

    private static double figure(Candidate one, Aim aim) {
        return aim == Aim.NET ? -one.aim(aim) : one.aim(aim);
    }

    private double drawn(Aim aim) {
        return switch (aim) {
            case COST -> result.drawn().perYear();
            case NET -> result.drawn().yearly().net().meanKWh();
            case BOUGHT -> result.drawn().yearly().energy().boughtKWh();
        };
    }

    private static Points points(List<Candidate> designs, Aim across, Aim up) {
        return new Points(
                designs.stream().mapToDouble(one -> figure(one, across)).toArray(),
                designs.stream().mapToDouble(one -> figure(one, up)).toArray());
    }

    private Drawing influence() {
        String unit = result.by() == Aim.COST ? "a year, " + currency : "kWh";
        RankedBars bars = RankedBars.of("influence", "What a wrong choice costs, " + unit)
                .caption(
                        "By how much the best design gets worse when one choice alone is taken at the worst of its options that keeps to"
                                + " the limits.");
        result.influence().stream()
                .sorted((a, b) -> Double.compare(b.change(), a.change()))
                .forEach(one -> bars.bar(
                        ChooseWords.named(one.choice(), one.worst()),
                        Look.FIRST,
                        one.change(),
                        Words.number(one.change()) + " at " + ChooseWords.shown(one.choice(), one.worst())));
        return bars;
    }
}
