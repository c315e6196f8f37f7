package org.warmvat.cli.plot;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.warmvat.cli.plot.TankSection.Part;

/**
 * Where the parts of a cut tank lie on paper, at one scale for all, y downwards.
 *
 * @param section the tank
 * @param unitPx pixels of a metre
 * @param leftPx outer face of the left wall
 * @param groundPx level of the ground
 * @param collectorM length of the collector as drawn; one that would dwarf the tank is cut short
 */
record TankPlan(TankSection section, double unitPx, double leftPx, double groundPx, double collectorM) {

    /** Room left of the tank for auger and heater, right of it for the outlet, and above it, as shares of its size. */
    private static final double LEFT = 0.56;

    private static final double RIGHT = 0.5;
    private static final double ABOVE = 0.26;
    private static final double LARGEST_COLLECTOR = 2;

    /** Fits a tank with its collector into a room, from its top; what is not needed of its height is left free below. */
    static TankPlan within(TankSection section, Rectangle2D room) {
        double width = section.outerWidthM();
        double height = section.outerHeightM();
        double side = Math.sqrt(section.collector().areaM2());
        double collector = Math.min(side, LARGEST_COLLECTOR * Math.max(width, height));
        double tilt = Math.toRadians(section.collector().tiltDeg());
        double across = width * (1 + LEFT + RIGHT) + collector * Math.cos(tilt) + (collector > 0 ? 0.1 * width : 0);
        double up = Math.max(section.legM() + height * (1 + ABOVE), collector * Math.sin(tilt) + 0.1 * height);
        double unit = Math.min(room.getWidth() / across, room.getHeight() / up);
        double left = room.getMinX() + (room.getWidth() - across * unit) / 2 + LEFT * width * unit;
        return new TankPlan(section, unit, left, room.getMinY() + up * unit, collector);
    }

    boolean collectorIsCutShort() {
        return collectorM * collectorM < section.collector().areaM2() * 0.999;
    }

    double px(double metres) {
        return metres * unitPx;
    }

    Rectangle2D outer() {
        double height = px(section.outerHeightM());
        return new Rectangle2D.Double(
                leftPx, groundPx - px(section.legM()) - height, px(section.outerWidthM()), height);
    }

    Rectangle2D inner() {
        double wall = px(TankSection.thicknessM(section.wall()));
        double lid = px(TankSection.thicknessM(section.lid()));
        double base = px(TankSection.thicknessM(section.base()));
        Rectangle2D outer = outer();
        return new Rectangle2D.Double(
                outer.getMinX() + wall,
                outer.getMinY() + lid,
                outer.getWidth() - 2 * wall,
                outer.getHeight() - lid - base);
    }

    Rectangle2D liquid() {
        Rectangle2D inner = inner();
        double depth = px(section.vessel().liquidM());
        return new Rectangle2D.Double(inner.getMinX(), inner.getMaxY() - depth, inner.getWidth(), depth);
    }

    /** A place inside the liquid, as shares of its width and of its depth from the surface. */
    Point2D inLiquid(double across, double down) {
        Rectangle2D liquid = liquid();
        return new Point2D.Double(
                liquid.getMinX() + across * liquid.getWidth(), liquid.getMinY() + down * liquid.getHeight());
    }

    /** Lower and upper end of the collector. */
    List<Point2D> collector() {
        double tilt = Math.toRadians(section.collector().tiltDeg());
        double x = outer().getMaxX() + px(section.outerWidthM()) * (RIGHT + 0.05);
        double y = groundPx - px(0.05 * section.outerHeightM());
        return List.of(
                new Point2D.Double(x, y),
                new Point2D.Double(x + px(collectorM) * Math.cos(tilt), y - px(collectorM) * Math.sin(tilt)));
    }

    /** Where the outlet leaves, how high above the ground it ends, and the like are not known: they are drawn at usual places. */
    Rectangle2D outlet() {
        Rectangle2D outer = outer();
        double bore = px(0.08 * section.outerWidthM());
        return new Rectangle2D.Double(
                outer.getMaxX(), liquid().getMinY(), px(0.2 * section.outerWidthM()), Math.max(4, bore));
    }

    Rectangle2D gasNeck() {
        Rectangle2D outer = outer();
        double bore = Math.max(4, px(0.07 * section.outerWidthM()));
        double height = px(0.13 * section.outerHeightM());
        return new Rectangle2D.Double(
                outer.getMinX() + 0.72 * outer.getWidth(), outer.getMinY() - height, bore, height);
    }

    Rectangle2D drive() {
        Rectangle2D outer = outer();
        double width = px(0.14 * section.outerWidthM());
        double height = px(0.12 * section.outerHeightM());
        return new Rectangle2D.Double(outer.getCenterX() - width / 2, outer.getMinY() - height, width, height);
    }

    Rectangle2D heater() {
        double side = px(0.2 * Math.min(section.outerWidthM(), section.outerHeightM()));
        return new Rectangle2D.Double(leftPx - px(0.32 * section.outerWidthM()), groundPx - side, side, side);
    }

    /** Where the number of each part stands and where its line ends, for letters of a size. */
    Map<Part, Point2D[]> numbers(int textPx) {
        Map<Part, Point2D[]> places = new EnumMap<>(Part.class);
        Rectangle2D outer = outer();
        Rectangle2D inner = inner();
        double gap = 1.5 * textPx;
        double wallX = (outer.getMaxX() + inner.getMaxX()) / 2;
        double middleY = outer.getMinY() + 0.55 * outer.getHeight();
        double lidX = outer.getMinX() + 0.24 * outer.getWidth();
        at(places, Part.CONTENTS, inLiquid(0.66, 0.17), 0, 0);
        at(
                places,
                Part.GAS_SPACE,
                point(inner.getMinX() + 0.3 * inner.getWidth(), (inner.getMinY() + liquid().getMinY()) / 2),
                0,
                0);
        at(places, Part.WALL, point(wallX, middleY), outer.getMaxX() - wallX + 0.9 * textPx, 0);
        at(
                places,
                Part.LID,
                point(lidX, (outer.getMinY() + inner.getMinY()) / 2),
                0,
                outer.getMinY() - gap - (outer.getMinY() + inner.getMinY()) / 2);
        double baseY = (outer.getMaxY() + inner.getMaxY()) / 2;
        at(
                places,
                Part.BASE,
                point(outer.getCenterX(), baseY),
                0,
                Math.max(outer.getMaxY() + 0.9 * textPx, baseY) - baseY);
        addHeating(places, gap);
        addOpenings(places, gap, textPx);
        return places;
    }

    private void addHeating(Map<Part, Point2D[]> places, double gap) {
        at(places, Part.SOLAR_COIL, inLiquid(0.88, 0.74), -gap, 0);
        if (section.vessel().immersed()) {
            at(places, Part.BACKUP, inLiquid(0.3, 0.8), 0, -gap);
        } else {
            at(places, Part.BACKUP, inLiquid(0.12, 0.28), gap, 0);
        }
        if (collectorM > 0) {
            Point2D low = collector().get(0);
            Point2D high = collector().get(1);
            double x = low.getX() + 0.65 * (high.getX() - low.getX());
            double y = low.getY() + 0.65 * (high.getY() - low.getY());
            at(places, Part.COLLECTOR, point(x, y), -gap * 0.8, -gap * 0.8);
        }
    }

    private void addOpenings(Map<Part, Point2D[]> places, double gap, int textPx) {
        Rectangle2D outer = outer();
        at(places, Part.MIXER, point(drive().getCenterX(), drive().getMinY()), 0, -0.9 * textPx);
        at(places, Part.FEED, point(outer.getMinX() - 0.3 * outer.getWidth(), outer.getMinY()), -gap, 0.3 * gap);
        Rectangle2D outlet = outlet();
        at(places, Part.OUTLET, point(outlet.getMaxX(), outlet.getCenterY()), 0.8 * textPx, 0);
        Rectangle2D neck = gasNeck();
        at(places, Part.GAS_NECK, point(neck.getMaxX(), neck.getMinY() + 0.3 * neck.getHeight()), gap, 0);
    }

    private static Point2D point(double x, double y) {
        return new Point2D.Double(x, y);
    }

    private static void at(Map<Part, Point2D[]> places, Part part, Point2D target, double dx, double dy) {
        places.put(part, new Point2D[] {point(target.getX() + dx, target.getY() + dy), target});
    }
}
