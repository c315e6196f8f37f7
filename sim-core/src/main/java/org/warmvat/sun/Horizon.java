package org.warmvat.sun;

import java.util.Comparator;
import java.util.List;
import org.warmvat.physics.Require;

/**
 * The line of hills, houses and woods above which the sky begins: straight between its points, round the circle (equation 13.1).
 *
 * @param points in rising azimuth, none twice; one point is a ring of that height, none an open place
 */
public record Horizon(List<Point> points) {

    /** Nothing in the way. */
    public static final Horizon OPEN = new Horizon(List.of());

    private static final int SECTORS = 360;
    private static final int WALL_PLANES = 8;

    /**
     * A point of the line.
     *
     * @param azimuthDeg clockwise from north, 0 up to but not including 360; 360 is taken as 0
     * @param elevationDeg 0 up to but not including 90
     */
    public record Point(double azimuthDeg, double elevationDeg) {

        /** Refuses angles out of range. */
        public Point {
            Require.within("azimuth of the horizon in degrees", azimuthDeg, 0, 360);
            Require.within("elevation of the horizon in degrees", elevationDeg, 0, Math.nextDown(90.0));
            azimuthDeg = azimuthDeg == 360 ? 0 : azimuthDeg;
        }
    }

    /** Puts the points in order and refuses an azimuth that returns. */
    public Horizon {
        points = points.stream()
                .sorted(Comparator.comparingDouble(Point::azimuthDeg))
                .toList();
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).azimuthDeg() == points.get(i - 1).azimuthDeg()) {
                throw new IllegalArgumentException("azimuth of the horizon "
                        + points.get(i).azimuthDeg() + " stands there twice, expected each azimuth once (360 is 0)");
            }
        }
    }

    /** Whether nothing is in the way. */
    public boolean isOpen() {
        return points.stream().allMatch(point -> point.elevationDeg() == 0);
    }

    /** Elevation of the line, degrees, at an azimuth clockwise from north. */
    public double elevationDeg(double azimuthDeg) {
        if (points.isEmpty()) {
            return 0;
        }
        double azimuth = azimuthDeg - 360 * Math.floor(azimuthDeg / 360);
        int after = 0;
        while (after < points.size() && points.get(after).azimuthDeg() <= azimuth) {
            after++;
        }
        Point left = points.get(after == 0 ? points.size() - 1 : after - 1);
        Point right = points.get(after == points.size() ? 0 : after);
        double fromLeft = turned(azimuth - left.azimuthDeg());
        double gap = points.size() == 1 ? 360 : turned(right.azimuthDeg() - left.azimuthDeg());
        return left.elevationDeg() + fromLeft / gap * (right.elevationDeg() - left.elevationDeg());
    }

    private static double turned(double degrees) {
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /**
     * Share of the isotropic sky light on a plane that comes from above the line (F of equation 13.1): sectors of one degree, closed
     * form in elevation.
     *
     * @param plane the plane
     * @return 0 to 1; 1 for a plane that sees no sky at all
     */
    public double skyFactor(Plane plane) {
        if (isOpen()) {
            return 1;
        }
        double above = 0;
        double all = 0;
        for (int i = 0; i < SECTORS; i++) {
            double azimuth = i + 0.5;
            double turn = Math.toRadians(azimuth - plane.azimuthDeg());
            double own = ownEdge(plane, turn);
            above += sector(plane, turn, Math.max(Math.toRadians(elevationDeg(azimuth)), own));
            all += sector(plane, turn, own);
        }
        return all <= 0 ? 1 : above / all;
    }

    /** The same for an upright wall that faces all ways, the mean of eight. */
    public double wallSkyFactor() {
        double sum = 0;
        for (int i = 0; i < WALL_PLANES; i++) {
            sum += skyFactor(new Plane(90, i * 360.0 / WALL_PLANES));
        }
        return sum / WALL_PLANES;
    }

    /** The same for a level lid. */
    public double lidSkyFactor() {
        return skyFactor(new Plane(0, 0));
    }

    /** Elevation below which a direction lies behind the plane, rad. */
    private static double ownEdge(Plane plane, double turn) {
        double cosTurn = Math.cos(turn);
        return cosTurn < 0 ? Math.atan(-Math.tan(Math.toRadians(plane.tiltDeg())) * cosTurn) : 0;
    }

    private static double sector(Plane plane, double turn, double from) {
        double tilt = Math.toRadians(plane.tiltDeg());
        double cosine = Math.cos(from);
        return Math.cos(tilt) * cosine * cosine / 2
                + Math.sin(tilt) * Math.cos(turn) * ((Math.PI / 2 - from) / 2 - Math.sin(2 * from) / 4);
    }
}
