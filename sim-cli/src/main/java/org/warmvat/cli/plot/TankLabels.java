package org.warmvat.cli.plot;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.Map;
import org.warmvat.cli.plot.TankSection.Part;

/** Where the numbers of the parts of a cut tank stand, and what they point at. */
record TankLabels(TankPlan plan, int textPx) {

    /** Where the number stands and where its line ends. */
    Map<Part, Point2D[]> places() {
        Map<Part, Point2D[]> places = new EnumMap<>(Part.class);
        Rectangle2D outer = plan.outer();
        Rectangle2D inner = plan.inner();
        double gap = 1.5 * textPx;
        double wallX = (outer.getMaxX() + inner.getMaxX()) / 2;
        double middleY = outer.getMinY() + 0.55 * outer.getHeight();
        double lidX = outer.getMinX() + 0.24 * outer.getWidth();
        at(places, Part.CONTENTS, plan.inLiquid(0.66, 0.17), 0, 0);
        at(
                places,
                Part.GAS_SPACE,
                point(
                        inner.getMinX() + 0.3 * inner.getWidth(),
                        (inner.getMinY() + plan.liquid().getMinY()) / 2),
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
        addOpenings(places, gap);
        return places;
    }

    private void addHeating(Map<Part, Point2D[]> places, double gap) {
        at(places, Part.SOLAR_COIL, plan.inLiquid(0.88, 0.74), -gap, 0);
        if (plan.section().vessel().immersed()) {
            at(places, Part.BACKUP, plan.inLiquid(0.3, 0.8), 0, -gap);
        } else {
            at(places, Part.BACKUP, plan.inLiquid(0.12, 0.28), gap, 0);
        }
        if (plan.collectorM() > 0) {
            Point2D low = plan.collector().get(0);
            Point2D high = plan.collector().get(1);
            at(
                    places,
                    Part.COLLECTOR,
                    point(
                            low.getX() + 0.65 * (high.getX() - low.getX()),
                            low.getY() + 0.65 * (high.getY() - low.getY())),
                    -gap * 0.8,
                    -gap * 0.8);
        }
    }

    private void addOpenings(Map<Part, Point2D[]> places, double gap) {
        Rectangle2D outer = plan.outer();
        at(places, Part.MIXER, point(plan.drive().getCenterX(), plan.drive().getMinY()), 0, -0.9 * textPx);
        at(places, Part.FEED, point(outer.getMinX() - 0.3 * outer.getWidth(), outer.getMinY()), -gap, 0.3 * gap);
        Rectangle2D outlet = plan.outlet();
        at(places, Part.OUTLET, point(outlet.getMaxX(), outlet.getCenterY()), 0.8 * textPx, 0);
        Rectangle2D neck = plan.gasNeck();
        at(places, Part.GAS_NECK, point(neck.getMaxX(), neck.getMinY() + 0.3 * neck.getHeight()), gap, 0);
    }

    private static Point2D point(double x, double y) {
        return new Point2D.Double(x, y);
    }

    private static void at(Map<Part, Point2D[]> places, Part part, Point2D target, double dx, double dy) {
        places.put(part, new Point2D[] {point(target.getX() + dx, target.getY() + dy), target});
    }
}
