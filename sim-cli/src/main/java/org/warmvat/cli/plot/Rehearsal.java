package org.warmvat.cli.plot;

import java.time.LocalDateTime;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Draws a small chart that nobody sees, on a thread of its own, while the inputs are read and the tank runs. Loading what Java
 * draws with takes longer than drawing, so the pictures are ready sooner; nothing of it reaches them.
 */
public final class Rehearsal {

    private final FutureTask<Picture> drawing = new FutureTask<>(() -> Rendering.of(sample()));

    private Rehearsal() {}

    /** Starts drawing. */
    public static Rehearsal begin() {
        System.setProperty("java.awt.headless", "true");
        Rehearsal rehearsal = new Rehearsal();
        Thread thread = new Thread(rehearsal.drawing, "rehearsal");
        thread.setDaemon(true);
        thread.start();
        return rehearsal;
    }

    /**
     * Waits until the chart is drawn. Drawing at the same time as the rehearsal would wait for it anyway, class by class.
     *
     * @throws CannotDraw on a machine without fonts or without the parts of Java that draw
     */
    public void end() throws CannotDraw {
        try {
            drawing.get();
        } catch (ExecutionException missing) {
            throw new CannotDraw(missing.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Everything that draws is made in here, so that a machine without it fails on the rehearsal's thread. */
    private static Drawing sample() {
        LineStyle line = new LineStyle(Palette.SLURRY, Palette.solid(1));
        Swatch area = new Swatch(Palette.BAND, Hatch.RISING);
        LocalDateTime from = LocalDateTime.of(2000, 1, 1, 0, 0);
        LocalDateTime to = from.plusDays(1);
        DateAxis time = Charts.time(from, to);
        XYPlot plot = Charts.plot(time, Charts.temperatures("°C", 2));
        DefaultXYDataset points = new DefaultXYDataset();
        points.addSeries("line", new double[][] {{Charts.millis(from), Charts.millis(to)}, {10, 20}});
        plot.setRenderer(Charts.lines(line));
        plot.setDataset(points);
        plot.setFixedLegendItems(
                new Legend().line("line", line).area("area", area).items());
        return new Drawing("rehearsal", "Rehearsal", "Not shown.", Charts.dressed("Rehearsal", plot), 300);
    }
}
