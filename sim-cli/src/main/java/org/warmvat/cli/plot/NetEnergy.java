package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** Gas made, what was eaten for it, and what is left, month by month. */
final class NetEnergy {

    private static final String TITLE = "Gas and net energy, by month";
    private static final List<Swatch> SWATCHES =
            List.of(Palette.GAS_AREA, Palette.BACKUP_AREA, Palette.ELECTRICITY_AREA);
    private static final List<String> NAMES = List.of("gas made", "bought for the backup", "electricity");
    private static final LineStyle NET = new LineStyle(Palette.INK, Palette.solid(2f));
    private static final Shape DIAMOND = diamond();

    private NetEnergy() {}

    static Drawing of(RunResult run) {
        NumberAxis values = Charts.amounts("kWh a month");
        CategoryPlot plot = new CategoryPlot(bars(run.months()), Months.axis(run.months()), values, barRenderer());
        Charts.dress(plot);
        plot.setRenderer(1, netRenderer());
        plot.setDataset(1, net(run.months()));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.addRangeMarker(new ValueMarker(0, Palette.INK, new BasicStroke(1.2f)));
        plot.setFixedLegendItems(legend(run));
        String caption = "Up: heating value of the gas. Down: energy bought for the backup and electricity of the"
                + " machinery. Diamonds: what is left, above the zero line a gain, below it a loss.";
        return new Drawing("gas_and_net_energy", TITLE, caption, Charts.dressed(TITLE, plot), 440);
    }

    private static LegendItemCollection legend(RunResult run) {
        boolean[] shown = {run.marks().hasGas(), run.marks().hasBackup(), true};
        Legend legend = new Legend();
        for (int bar = 0; bar < shown.length; bar++) {
            if (shown[bar]) {
                legend.area(NAMES.get(bar), SWATCHES.get(bar));
            }
        }
        return legend.markedLine("net energy", NET, DIAMOND).items();
    }

    private static StackedBarRenderer barRenderer() {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new HatchedBars(SWATCHES));
        bars.setShadowVisible(false);
        return bars;
    }

    private static DefaultCategoryDataset bars(List<Period> months) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (Period month : months) {
            String label = Months.label(month, months);
            dataset.addValue(month.gas().gasEnergyKWh(), NAMES.get(0), label);
            dataset.addValue(-month.circuits().backupBoughtKWh(), NAMES.get(1), label);
            dataset.addValue(-month.electricity().totalKWh(), NAMES.get(2), label);
        }
        return dataset;
    }

    private static DefaultCategoryDataset net(List<Period> months) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (Period month : months) {
            dataset.addValue(month.gas().netEnergyKWh(), "net energy", Months.label(month, months));
        }
        return dataset;
    }

    private static LineAndShapeRenderer netRenderer() {
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(true, true);
        renderer.setSeriesPaint(0, NET.colour());
        renderer.setSeriesStroke(0, NET.stroke());
        renderer.setSeriesShape(0, DIAMOND);
        return renderer;
    }

    private static Shape diamond() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -6);
        path.lineTo(6, 0);
        path.lineTo(0, 6);
        path.lineTo(-6, 0);
        path.closePath();
        return path;
    }
}
