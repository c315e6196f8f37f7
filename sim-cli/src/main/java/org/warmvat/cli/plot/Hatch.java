package org.warmvat.cli.plot;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Hatchings that tell areas apart without colour, as strokes that fill a rectangle and end at its edges. */
enum Hatch {
    NONE,
    RISING,
    FALLING,
    CROSSED,
    LEVEL,
    UPRIGHT;

    private static final double SPACING = 6;

    Path2D lines(Rectangle2D area) {
        Path2D lines = new Path2D.Double();
        switch (this) {
            case NONE -> lines.moveTo(area.getMinX(), area.getMinY());
            case RISING -> diagonals(lines, area, true);
            case FALLING -> diagonals(lines, area, false);
            case CROSSED -> {
                diagonals(lines, area, true);
                diagonals(lines, area, false);
            }
            case LEVEL -> level(lines, area);
            case UPRIGHT -> upright(lines, area);
        }
        return lines;
    }

    /** Lines at 45 degrees; in picture coordinates y runs downwards, so x + y is constant along a rising one. */
    private static void diagonals(Path2D lines, Rectangle2D area, boolean rising) {
        double top = area.getMinY();
        double bottom = area.getMaxY();
        double reach = area.getWidth() + area.getHeight();
        for (double along = SPACING / 2; along < reach; along += SPACING) {
            double from = Math.max(0, along - area.getHeight());
            double to = Math.min(area.getWidth(), along);
            double yFrom = along - from;
            double yTo = along - to;
            lines.moveTo(area.getMinX() + from, rising ? top + yFrom : bottom - yFrom);
            lines.lineTo(area.getMinX() + to, rising ? top + yTo : bottom - yTo);
        }
    }

    private static void level(Path2D lines, Rectangle2D area) {
        for (double y = area.getMaxY() - SPACING / 2; y > area.getMinY(); y -= SPACING) {
            lines.moveTo(area.getMinX(), y);
            lines.lineTo(area.getMaxX(), y);
        }
    }

    private static void upright(Path2D lines, Rectangle2D area) {
        for (double x = area.getMinX() + SPACING / 2; x < area.getMaxX(); x += SPACING) {
            lines.moveTo(x, area.getMinY());
            lines.lineTo(x, area.getMaxY());
        }
    }
}
