package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
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
    private final Form form;

    Legend(Form form) {
        this.form = form;
    }

    Legend area(String label, Look look) {
        Path2D sample = new Path2D.Double(SAMPLE);
        sample.append(look.hatch().lines(SAMPLE), false);
        items.add(new LegendItem(label, null, null, null, sample, look.fill(), new BasicStroke(1), look.hatchColour()));
        return this;
    }

    /** A plain area with a thin outline. */
    Legend area(String label, Color fill) {
        items.add(new LegendItem(label, null, null, null, SAMPLE, fill, new BasicStroke(1), Look.INK));
        return this;
    }

    Legend line(String label, Look look) {
        items.add(new LegendItem(label, null, null, null, LINE, look.stroke(form), look.line()));
        return this;
    }

    /** A line with a mark on it. */
    Legend markedLine(String label, Look look, Shape mark) {
        return marked(label, look, mark, true);
    }

    /** A mark without a line. */
    Legend mark(String label, Look look, Shape mark) {
        return marked(label, look, mark, false);
    }

    private Legend marked(String label, Look look, Shape mark, boolean line) {
        Color ink = look.line();
        BasicStroke thin = new BasicStroke(1);
        items.add(new LegendItem(
                label, null, null, null, true, mark, true, ink, false, ink, thin, line, LINE, look.stroke(form), ink));
        return this;
    }

    LegendItemCollection items() {
        return items;
    }
}
