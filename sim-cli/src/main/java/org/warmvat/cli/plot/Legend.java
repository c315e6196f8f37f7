package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;

/** Builds legends whose samples show hatchings and strokes as they are in the picture. */
final class Legend {

    private static final Rectangle2D SAMPLE = new Rectangle2D.Double(-14, -7, 28, 14);
    private static final Shape LINE = new Line2D.Double(-18, 0, 18, 0);

    private final LegendItemCollection items = new LegendItemCollection();

    Legend area(String label, Swatch swatch) {
        Path2D sample = new Path2D.Double(SAMPLE);
        sample.append(swatch.hatch().lines(SAMPLE), false);
        items.add(new LegendItem(
                label, null, null, null, sample, swatch.fill(), new BasicStroke(1), swatch.hatchColour()));
        return this;
    }

    Legend line(String label, LineStyle style) {
        items.add(new LegendItem(label, null, null, null, LINE, style.stroke(), style.colour()));
        return this;
    }

    /** A line with a mark on it. */
    Legend markedLine(String label, LineStyle style, Shape mark) {
        items.add(new LegendItem(
                label,
                null,
                null,
                null,
                true,
                mark,
                true,
                style.colour(),
                false,
                style.colour(),
                new BasicStroke(1),
                true,
                LINE,
                style.stroke(),
                style.colour()));
        return this;
    }

    LegendItemCollection items() {
        return items;
    }
}
