package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.warmvat.cli.plot.TankSection.Part;

/** A tank cut open and drawn to scale, its parts numbered, with a key. */
public final class TankDrawing {

    private static final double DIMENSION_GAP = 1.9;

    private final TankSection section;
    private final Form form;
    private final FontMetrics metrics;

    private TankDrawing(TankSection section, Form form) {
        this.section = section;
        this.form = form;
        Graphics2D scratch = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        this.metrics = scratch.getFontMetrics(form.text());
        scratch.dispose();
    }

    /** The drawing of a tank. */
    public static Drawing of(String name, String title, String caption, TankSection section) {
        Drawing drawing = new Drawing(name, title) {
            @Override
            public String alternative() {
                return title + ". " + String.join("; ", new TreeMap<>(section.words()).values()) + ".";
            }

            @Override
            Sheet on(Form form) {
                return new TankDrawing(section, form).sheet(title);
            }
        };
        drawing.explain(caption);
        return drawing;
    }

    /** A line of the key: words of a part, broken so that they fit. */
    private record Entry(int number, List<String> lines) {}

    private Drawing.Sheet sheet(String title) {
        boolean wide = form == Form.WIDE;
        double titlePx = 2.6 * form.textPx();
        double roomPx = wide ? 400 : 250;
        Rectangle2D room = wide
                ? new Rectangle2D.Double(12, titlePx + 14, 540, roomPx)
                : new Rectangle2D.Double(4, titlePx + 10, 340, roomPx);
        double keyLeft = wide ? 590 : 4;
        TankPlan plan = TankPlan.within(section, room);
        List<Entry> key = key(plan, form.widthPx() - keyLeft - 2.6 * form.textPx());
        int lines = key.stream().mapToInt(entry -> entry.lines().size()).sum();
        double keyPx = lines * linePx() + key.size() * 0.45 * form.textPx();
        double footPx = plan.groundPx() + 3.4 * form.textPx();
        double keyTop = wide ? titlePx + 10 : footPx + 0.6 * form.textPx();
        int height = (int) Math.ceil(Math.max(footPx, keyTop + keyPx) + 8);
        return new Drawing.Sheet(height, g2 -> {
            g2.setPaint(Look.INK);
            g2.setFont(form.title());
            g2.drawString(title, wide ? 14 : 4, (float) (1.7 * form.textPx()));
            new TankPainter(g2, form, plan).paint(room.getMinX(), room.getMaxX());
            sizes(g2, plan);
            bubbles(g2, plan);
            key(g2, key, keyLeft, keyTop);
        });
    }

    private double linePx() {
        return 1.35 * form.textPx();
    }

    private List<Entry> key(TankPlan plan, double widthPx) {
        List<Entry> key = new ArrayList<>();
        for (Part part : Part.values()) {
            if (section.has(part)) {
                boolean cut = part == Part.COLLECTOR && plan.collectorIsCutShort();
                String words = section.words().get(part) + (cut ? "; drawn shorter than it is" : "");
                key.add(new Entry(key.size() + 1, broken(words, widthPx)));
            }
        }
        return key;
    }

    private List<String> broken(String words, double widthPx) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.replaceAll("(?<=\\d) ", "\u00a0").split(" ")) {
            if (!line.isEmpty() && metrics.stringWidth(line + " " + word) > widthPx) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private void key(Graphics2D g2, List<Entry> key, double left, double top) {
        double y = top;
        for (Entry entry : key) {
            bubble(g2, entry.number(), new Point2D.Double(left + 0.9 * form.textPx(), y + 0.7 * form.textPx()));
            g2.setFont(form.text());
            for (String line : entry.lines()) {
                g2.drawString(line, (float) (left + 2.3 * form.textPx()), (float) (y + 1.05 * form.textPx()));
                y += linePx();
            }
            y += 0.45 * form.textPx();
        }
    }

    /** Outer width below the tank, outer height beside it. */
    private void sizes(Graphics2D g2, TankPlan plan) {
        Rectangle2D outer = plan.outer();
        double y = plan.groundPx() + DIMENSION_GAP * form.textPx();
        span(g2, outer.getMinX(), y, outer.getMaxX(), y);
        String width = metres(section.outerWidthM());
        g2.drawString(width, (float) (outer.getCenterX() - metrics.stringWidth(width) / 2.0), (float)
                (y + 1.25 * form.textPx()));
        double x = plan.outlet().getMaxX() + 2.1 * form.textPx();
        span(g2, x, outer.getMinY(), x, outer.getMaxY());
        g2.drawString(metres(section.outerHeightM()), (float) x + 4, (float) (outer.getMinY() - 4));
    }

    private void span(Graphics2D g2, double x1, double y1, double x2, double y2) {
        g2.setPaint(Look.INK);
        g2.setFont(form.text());
        g2.setStroke(form.solid(1));
        g2.draw(new Line2D.Double(x1, y1, x2, y2));
        boolean level = y1 == y2;
        for (double[] end : new double[][] {{x1, y1}, {x2, y2}}) {
            g2.draw(new Line2D.Double(
                    end[0] - (level ? 0 : 4),
                    end[1] - (level ? 4 : 0),
                    end[0] + (level ? 0 : 4),
                    end[1] + (level ? 4 : 0)));
        }
    }

    private static String metres(double metres) {
        return Told.number(metres) + " m";
    }

    private void bubbles(Graphics2D g2, TankPlan plan) {
        Map<Part, Point2D[]> places = plan.numbers(form.textPx());
        int number = 1;
        for (Part part : Part.values()) {
            if (section.has(part)) {
                Point2D[] place = places.get(part);
                g2.setPaint(Look.INK);
                g2.setStroke(form.solid(1));
                g2.draw(new Line2D.Double(place[0], place[1]));
                bubble(g2, number++, place[0]);
            }
        }
    }

    private void bubble(Graphics2D g2, int number, Point2D at) {
        double radius = 0.75 * form.textPx();
        Ellipse2D disc = new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
        g2.setPaint(Color.WHITE);
        g2.fill(disc);
        g2.setPaint(Look.INK);
        g2.setStroke(form.solid(1.2f));
        g2.draw(disc);
        g2.setFont(form.strong().deriveFont(0.85f * form.textPx()));
        String text = Integer.toString(number);
        g2.drawString(text, (float) (at.getX() - g2.getFontMetrics().stringWidth(text) / 2.0), (float)
                (at.getY() + 0.31 * form.textPx()));
    }
}
