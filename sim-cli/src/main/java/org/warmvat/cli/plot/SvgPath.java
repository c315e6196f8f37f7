package org.warmvat.cli.plot;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.Arrays;

/** Shapes and numbers as they are written in an SVG. */
final class SvgPath {

    /** Parts of a unit to which lengths are given. */
    static final int TENTHS = 10;

    private static final String LETTERS = "MLQCZ";
    private static final int[] COORDINATES = {2, 2, 4, 6, 0};

    private SvgPath() {}

    /** Adds the outline of a shape. */
    static void add(StringBuilder out, Shape shape) {
        double[] at = new double[6];
        int before = PathIterator.SEG_CLOSE;
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int segment = i.currentSegment(at);
            // a letter holds for the coordinates that follow, but after a first place these would be lines
            out.append(segment == before && segment != PathIterator.SEG_MOVETO ? ' ' : LETTERS.charAt(segment));
            numbers(out, Arrays.copyOf(at, COORDINATES[segment]), TENTHS);
            before = segment;
        }
    }

    /** Adds numbers, to one part of so many. */
    static void numbers(StringBuilder out, double[] values, int parts) {
        for (int i = 0; i < values.length; i++) {
            number(i == 0 ? out : out.append(' '), values[i], parts);
        }
    }

    /** Adds a number, to one part of so many. */
    static void number(StringBuilder out, double value, int parts) {
        long rounded = Math.round(value * parts);
        if (rounded < 0) {
            out.append('-');
            rounded = -rounded;
        }
        out.append(rounded / parts);
        long rest = rounded % parts;
        if (rest != 0) {
            out.append('.');
            for (int part = parts / 10; rest != 0; part /= 10) {
                out.append(rest / part);
                rest %= part;
            }
        }
    }
}
