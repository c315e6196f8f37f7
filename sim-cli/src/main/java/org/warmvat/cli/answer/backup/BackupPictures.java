package org.warmvat.cli.answer.backup;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.answer.SetpointLines;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.tank.Course;

/** Pictures of the powers tried, and of the spell that decides. */
record BackupPictures(BackupResult result, Design design) {

    List<Drawing> all() {
        return List.of(curve(), spell());
    }

    private Drawing curve() {
        List<BackupResult.Point> points = result.curve().points();
        LineChart chart = LineChart.over(
                        "curve",
                        "Hours short and energy bought, by power of the heater",
                        "rated power of the heater, W",
                        0,
                        points.get(points.size() - 1).ratedW())
                .caption(
                        "Top: hours below the minimum temperature, in the worst of the weather files. Middle: degree-hours"
                                + " below it. Bottom: energy bought; once nothing is short, more power buys no more. Upright lines: the"
                                + " smallest heater that is enough, and the common size above it.")
                .stripWithZero("hours short", 1)
                .line("hours short", Look.SLURRY, curve(points, BackupResult.Point::shortHours))
                .stripWithZero("kelvin-hours short", 1)
                .line("kelvin-hours short", Look.OTHER_SLURRY, curve(points, BackupResult.Point::shortKelvinHours))
                .stripWithZero("bought, kWh", 1)
                .line("energy bought", Look.NEED, curve(points, BackupResult.Point::boughtKWh));
        result.need().smallestW().ifPresent(w -> chart.upright(watts("smallest", w), w));
        result.need().commonW().ifPresent(w -> chart.upright(watts("common size", w), w));
        return chart;
    }

    private static String watts(String what, double w) {
        return what + ": " + Words.fixed(w, 0) + " W";
    }

    private static Points curve(List<BackupResult.Point> points, ToDoubleFunction<BackupResult.Point> value) {
        return new Points(
                points.stream().mapToDouble(BackupResult.Point::ratedW).toArray(),
                points.stream().mapToDouble(value).toArray());
    }

    private Drawing spell() {
        BackupResult.Spell spell = result.spell();
        Course chosen = spell.chosen();
        LineChart chart = LineChart.overTime(
                        "coldest_spell", "The spell that decides", chosen.start(), chosen.end(chosen.hours() - 1))
                .caption(
                        "Top: the slurry with the chosen heater and with a smaller one, a tenth below what the minimum temperature asks"
                                + " for. Middle: outdoor air. Bottom: heat from backup heater and sun with the chosen heater, as means of each"
                                + " hour.")
                .strip("slurry, °C", 1.5)
                .line(watts("chosen", spell.chosenW()), Look.SLURRY, Points.ends(chosen.slurryC()))
                .line(
                        watts("smaller", spell.smallerW()),
                        Look.OTHER_SLURRY,
                        Points.ends(spell.smaller().slurryC()));
        SetpointLines.setpoint(chart, design, chosen.start(), chosen.hours());
        return SetpointLines.minimum(chart, design, chosen.start(), chosen.hours())
                .strip("air, °C", 5)
                .line("outdoor air", Look.AIR, Points.ends(chosen.airC()))
                .stripWithZero("heat, W", 50)
                .line(
                        "heat from the backup",
                        Look.FIFTH,
                        Points.means(chosen.heat().backupW(), 1))
                .line("heat from the sun", Look.SUN, Points.means(chosen.heat().solarW(), 1));
    }
}
