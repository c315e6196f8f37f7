package org.warmvat.cli.plot;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultTableXYDataset;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.data.xy.XYSeries;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** Heat by source against need, week by week. */
final class HeatBySource {

    private static final String TITLE = "Heat by source against need, by week";
    private static final double HOUR_MS = 3.6e6;
    private static final double WEEK_MS = 168 * HOUR_MS;
    private static final LineStyle NEED = new LineStyle(Palette.INK, Palette.solid(2f));
    private static final Shape DOT = new Ellipse2D.Double(-3.5, -3.5, 7, 7);

    private record Source(String name, Swatch swatch, ToDoubleFunction<Period> kWh) {}

    private HeatBySource() {}

    static Drawing of(RunResult run) {
        List<Week> weeks = Week.split(run.days());
        List<Source> sources = sources(run);
        NumberAxis values = Charts.amounts("kWh a day");
        XYPlot plot = Charts.plot(time(weeks), values);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setRenderer(0, bars(sources));
        plot.setDataset(0, stack(weeks, sources));
        plot.setRenderer(1, needRenderer());
        plot.setDataset(1, need(weeks));
        plot.setFixedLegendItems(legend(sources));
        String caption = "Bars: what warmed the slurry, a day's mean in each week. Line: what it lost through envelope,"
                + " fittings and gas, and what the feed took. Bars above the line warm the tank, bars below it let it"
                + " cool.";
        return new Drawing("heat_by_source", TITLE, caption, Charts.dressed(TITLE, plot), 440);
    }

    private static DateAxis time(List<Week> weeks) {
        return Charts.time(
                weeks.get(0).start(), weeks.get(weeks.size() - 1).start().plusDays(7));
    }

    private static List<Source> sources(RunResult run) {
        List<Source> sources = new ArrayList<>();
        if (run.marks().hasBackup()) {
            sources.add(
                    new Source("backup", Palette.BACKUP_AREA, day -> day.heats().backupKWh()));
        }
        if (run.marks().hasSolar()) {
            sources.add(new Source("sun", Palette.SUN_AREA, day -> day.heats().solarKWh()));
        }
        sources.add(new Source(
                "mixer's shaft", Palette.SHAFT_AREA, day -> day.heats().shaftKWh()));
        if (run.year().heats().reactionKWh() != 0) {
            sources.add(new Source(
                    "reaction", Palette.REACTION_AREA, day -> day.heats().reactionKWh()));
        }
        return sources;
    }

    private static double need(Period day) {
        return day.losses().totalKWh() + day.heats().feedKWh() + day.heats().gasKWh();
    }

    private static double middle(Week week) {
        return Charts.millis(week.start()) + WEEK_MS / 2;
    }

    private static DefaultTableXYDataset stack(List<Week> weeks, List<Source> sources) {
        DefaultTableXYDataset stack = new DefaultTableXYDataset(false);
        for (Source source : sources) {
            XYSeries series = new XYSeries(source.name(), true, false);
            weeks.forEach(week -> series.add(middle(week), week.perDay(source.kWh())));
            stack.addSeries(series);
        }
        stack.setIntervalWidth(WEEK_MS * 0.82);
        return stack;
    }

    private static StackedXYBarRenderer bars(List<Source> sources) {
        StackedXYBarRenderer renderer = new StackedXYBarRenderer();
        renderer.setBarPainter(
                new HatchedBars(sources.stream().map(Source::swatch).toList()));
        renderer.setShadowVisible(false);
        return renderer;
    }

    private static DefaultXYDataset need(List<Week> weeks) {
        DefaultXYDataset line = new DefaultXYDataset();
        line.addSeries("need", new double[][] {
            weeks.stream().mapToDouble(HeatBySource::middle).toArray(),
            weeks.stream().mapToDouble(week -> week.perDay(HeatBySource::need)).toArray()
        });
        return line;
    }

    private static XYLineAndShapeRenderer needRenderer() {
        XYLineAndShapeRenderer renderer = Charts.lines(NEED);
        renderer.setDefaultShapesVisible(true);
        renderer.setSeriesShape(0, DOT);
        return renderer;
    }

    private static LegendItemCollection legend(List<Source> sources) {
        Legend legend = new Legend();
        sources.forEach(source -> legend.area(source.name(), source.swatch()));
        return legend.markedLine("need", NEED, DOT).items();
    }
}
