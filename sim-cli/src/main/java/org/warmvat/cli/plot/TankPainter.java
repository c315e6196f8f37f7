package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.warmvat.cli.plot.TankSection.Part;

/** Paints a cut tank. */
final class TankPainter {

    private static final Color STEEL = new Color(0x4A4F55);
    private static final Color WOOD = new Color(0xC9A877);
    private static final Color INSULATION = new Color(0xF7EFCF);
    private static final Color GAS = new Color(0xEDF4E4);
    private static final Color GROUND = new Color(0xB9AB93);
    private static final int TURNS = 5;
    private static final double THINNEST_PX = 1.4;

    private final Graphics2D g2;
    private final Form form;
    private final TankPlan plan;
    private final TankSection section;

    TankPainter(Graphics2D g2, Form form, TankPlan plan) {
        this.g2 = g2;
        this.form = form;
        this.plan = plan;
        this.section = plan.section();
    }

    void paint(double fromPx, double toPx) {
        ground(fromPx, toPx);
        contents();
        envelope();
        heating();
        mixer();
        ways();
        if (section.has(Part.COLLECTOR)) {
            collector();
        }
    }

    private void ground(double fromPx, double toPx) {
        double ground = plan.groundPx();
        g2.setPaint(GROUND);
        g2.setStroke(form.solid(1));
        g2.draw(Hatch.RISING.lines(new Rectangle2D.Double(fromPx, ground, toPx - fromPx, 0.5 * form.textPx())));
        line(fromPx, ground, toPx, ground, 1.6f, Look.INK);
        Rectangle2D outer = plan.outer();
        if (!section.vessel().onGround()) {
            double leg = Math.max(3, 0.035 * outer.getWidth());
            for (double share : new double[] {0.08, 0.92}) {
                double left = outer.getMinX() + share * outer.getWidth() - leg / 2;
                fill(new Rectangle2D.Double(left, outer.getMaxY(), leg, ground - outer.getMaxY()), STEEL);
            }
        }
    }

    private void contents() {
        fill(plan.inner(), GAS);
        fill(plan.liquid(), Look.SLURRY.fill());
        Rectangle2D liquid = plan.liquid();
        line(liquid.getMinX(), liquid.getMinY(), liquid.getMaxX(), liquid.getMinY(), 1.6f, Look.SLURRY.line());
    }

    /** Walls over the inner height, lid and base over the whole width. */
    private void envelope() {
        Rectangle2D outer = plan.outer();
        Rectangle2D inner = plan.inner();
        double in = inner.getMinX();
        double out = inner.getMaxX();
        for (TankSection.Sheet sheet : section.wall()) {
            double thick = plan.px(sheet.thicknessM());
            sheet(new Rectangle2D.Double(in - thick, inner.getMinY(), thick, inner.getHeight()), sheet.kind());
            sheet(new Rectangle2D.Double(out, inner.getMinY(), thick, inner.getHeight()), sheet.kind());
            in -= thick;
            out += thick;
        }
        double top = inner.getMinY();
        for (TankSection.Sheet sheet : section.lid()) {
            double thick = plan.px(sheet.thicknessM());
            top -= thick;
            sheet(new Rectangle2D.Double(outer.getMinX(), top, outer.getWidth(), thick), sheet.kind());
        }
        double bottom = inner.getMaxY();
        for (TankSection.Sheet sheet : section.base()) {
            double thick = plan.px(sheet.thicknessM());
            sheet(new Rectangle2D.Double(outer.getMinX(), bottom, outer.getWidth(), thick), sheet.kind());
            bottom += thick;
        }
        g2.setPaint(Look.INK);
        g2.setStroke(form.solid(1.2f));
        g2.draw(outer);
        g2.draw(inner);
    }

    private void sheet(Rectangle2D area, TankSection.Kind kind) {
        double wide = Math.max(THINNEST_PX, area.getWidth());
        double high = Math.max(THINNEST_PX, area.getHeight());
        Rectangle2D seen = new Rectangle2D.Double(area.getMinX(), area.getMinY(), wide, high);
        switch (kind) {
            case METAL -> fill(seen, STEEL);
            case OTHER -> fill(seen, WOOD);
            case INSULATION -> {
                fill(seen, INSULATION);
                g2.setPaint(GROUND);
                g2.setStroke(form.solid(0.8f));
                g2.draw(Hatch.CROSSED.lines(seen));
            }
        }
    }

    private void heating() {
        if (section.has(Part.SOLAR_COIL)) {
            coil(0.56, 0.92, Look.SUN);
            Point2D foot = plan.collector().get(0);
            Point2D in = plan.inLiquid(0.88, 0.92);
            if (section.has(Part.COLLECTOR)) {
                pipe(
                        Look.SUN,
                        foot,
                        new Point2D.Double(plan.outer().getMaxX() + plan.px(0.1 * section.outerWidthM()), foot.getY()),
                        new Point2D.Double(plan.outer().getMaxX() + plan.px(0.1 * section.outerWidthM()), in.getY()),
                        in);
            }
        }
        if (section.has(Part.BACKUP)) {
            Rectangle2D heater = plan.heater();
            Point2D from = new Point2D.Double(heater.getCenterX(), heater.getMinY());
            Point2D in = plan.inLiquid(0.12, section.vessel().immersed() ? 0.8 : 0.45);
            pipe(Look.BACKUP, from, new Point2D.Double(from.getX(), in.getY()), in);
            box(heater, Look.BACKUP);
            if (section.vessel().immersed()) {
                Point2D end = plan.inLiquid(0.42, 0.8);
                line(in.getX(), in.getY(), end.getX(), end.getY(), 5, Look.BACKUP.line());
            } else {
                coil(0.12, 0.45, Look.BACKUP);
            }
        }
    }

    /** A coil is cut twice in each turn: rings on both sides. How it is wound is not known. */
    private void coil(double fromDown, double toDown, Look look) {
        double radius = Math.max(2.2, Math.min(6, 0.022 * plan.inner().getWidth()));
        for (int turn = 0; turn < TURNS; turn++) {
            for (double across : new double[] {0.12, 0.88}) {
                Point2D at = plan.inLiquid(across, fromDown + (toDown - fromDown) * turn / (TURNS - 1));
                Ellipse2D ring = new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
                fill(ring, look.fill());
                g2.setPaint(look.line());
                g2.setStroke(form.solid(1.6f));
                g2.draw(ring);
            }
        }
    }

    private void mixer() {
        if (!section.has(Part.MIXER)) {
            return;
        }
        Rectangle2D drive = plan.drive();
        box(drive, Look.SIXTH);
        Point2D end = plan.inLiquid(0.5, 0.9);
        line(end.getX(), drive.getMaxY(), end.getX(), end.getY(), 3, STEEL);
        for (double down : new double[] {0.3, 0.6, 0.9}) {
            Point2D left = plan.inLiquid(0.26, down);
            Point2D right = plan.inLiquid(0.74, down);
            line(left.getX(), left.getY(), right.getX(), right.getY(), 4, STEEL);
        }
    }

    /** Auger, outlet and gas neck. */
    private void ways() {
        if (section.has(Part.FEED)) {
            feed(plan.outer(), plan.inLiquid(0.05, 0.22));
        }
        if (section.has(Part.OUTLET)) {
            box(plan.outlet(), Look.SLURRY);
        }
        if (section.has(Part.GAS_NECK)) {
            box(plan.gasNeck(), Look.GAS);
        }
    }

    private void feed(Rectangle2D outer, Point2D in) {
        double x = outer.getMinX() - plan.px(0.3 * section.outerWidthM());
        double y = outer.getMinY() - plan.px(0.02 * section.outerHeightM());
        float bore = (float) Math.max(5, plan.px(0.09 * section.outerWidthM()));
        g2.setStroke(new BasicStroke(bore, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g2.setPaint(Look.INK);
        g2.draw(new Line2D.Double(x, y, in.getX(), in.getY()));
        g2.setStroke(new BasicStroke(bore - 2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g2.setPaint(Look.FEED.fill());
        g2.draw(new Line2D.Double(x, y, in.getX(), in.getY()));
        hopper(x, y, bore);
    }

    private void hopper(double x, double y, double bore) {
        Path2D hopper = new Path2D.Double();
        hopper.moveTo(x - bore, y - 1.3 * bore);
        hopper.lineTo(x + bore, y - 1.3 * bore);
        hopper.lineTo(x + 0.5 * bore, y + 0.2 * bore);
        hopper.lineTo(x - 0.5 * bore, y + 0.2 * bore);
        hopper.closePath();
        fill(hopper, Look.FEED.fill());
        g2.setPaint(Look.INK);
        g2.setStroke(form.solid(1.2f));
        g2.draw(hopper);
    }

    private void collector() {
        List<Point2D> ends = plan.collector();
        Point2D low = ends.get(0);
        Point2D high = ends.get(1);
        line(low.getX(), low.getY(), high.getX(), high.getY(), 7, Look.SUN.line());
        line(low.getX(), low.getY(), high.getX(), high.getY(), 3.6f, Look.SUN.fill());
        line(high.getX(), high.getY(), high.getX(), plan.groundPx(), 1.6f, STEEL);
        if (plan.collectorIsCutShort()) {
            double x = (low.getX() + high.getX()) / 2;
            double y = (low.getY() + high.getY()) / 2;
            line(x - 6, y + 8, x + 2, y - 8, 3, Color.WHITE);
            line(x - 2, y + 8, x + 6, y - 8, 3, Color.WHITE);
        }
    }

    private void pipe(Look look, Point2D... through) {
        Path2D path = new Path2D.Double();
        path.moveTo(through[0].getX(), through[0].getY());
        for (Point2D point : through) {
            path.lineTo(point.getX(), point.getY());
        }
        g2.setPaint(look.line());
        g2.setStroke(look.stroke(form));
        g2.draw(path);
    }

    private void box(Rectangle2D area, Look look) {
        HatchedBars.paint(g2, look, form, area);
    }

    private void fill(Shape shape, Color colour) {
        g2.setPaint(colour);
        g2.fill(shape);
    }

    private void line(double x1, double y1, double x2, double y2, float width, Color colour) {
        g2.setPaint(colour);
        g2.setStroke(form.solid(width));
        g2.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
