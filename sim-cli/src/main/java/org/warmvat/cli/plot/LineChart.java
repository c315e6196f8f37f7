package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.ui.Layer;

/**
 * Lines and bands in one strip or several over one axis, time or a quantity, with spells shaded and places marked. What is added
 * goes into the last strip.
 */
public final class LineChart extends Drawing {

    private static final double HOUR_MS = 3.6e6;
    private static final int WIDE_STRIP_PX = 240;
    private static final int NARROW_STRIP_PX = 150;
    private static final int WIDE_ONLY_STRIP_PX = 300;
    private static final int NARROW_ONLY_STRIP_PX = 200;

    private record Spell(String label, double from, double to) {}

    private final Optional<LocalDateTime> start;
    private final String quantity;
    private final double from;
    private final double to;
    private final List<Strip> strips = new ArrayList<>();
    private final List<Spell> spells = new ArrayList<>();
    private final Pins uprights = new Pins();

    private LineChart(
            String name, String title, Optional<LocalDateTime> start, String quantity, double from, double to) {
        super(name, title);
        this.start = start;
        this.quantity = quantity;
        this.from = from;
        this.to = to;
    }

    /** A chart over time; x is hours since {@code from}. */
    public static LineChart overTime(String name, String title, LocalDateTime from, LocalDateTime to) {
        double hours = Duration.between(from, to).toSeconds() / 3600.0;
        return new LineChart(name, title, Optional.of(from), "", 0, hours);
    }

    /** A chart over a quantity with its unit, such as {@code rated power, W}. */
    public static LineChart over(String name, String title, String quantity, double from, double to) {
        return new LineChart(name, title, Optional.empty(), quantity, from, to > from ? to : from + 1);
    }

    /** How to read it. */
    public LineChart caption(String how) {
        explain(how);
        return this;
    }

    /** A further strip, around the values shown, at least so high. */
    public LineChart strip(String label, double leastSpan) {
        strips.add(new Strip(label, leastSpan, false));
        return this;
    }

    /** A further strip, with zero in it, at least so high. */
    public LineChart stripWithZero(String label, double leastSpan) {
        strips.add(new Strip(label, leastSpan, true));
        return this;
    }

    /** A line. */
    public LineChart line(String label, Look look, Points points) {
        last().line(label, look, points, false);
        return this;
    }

    /** A line with a dot on each point. */
    public LineChart dotted(String label, Look look, Points points) {
        last().line(label, look, points, true);
        return this;
    }

    /** A level line. */
    public LineChart level(String label, Look look, double value) {
        return line(label, look, new Points(new double[] {from, to}, new double[] {value, value}));
    }

    /** A band with a line in it. */
    public LineChart band(String lineLabel, String bandLabel, Look look, Band band) {
        last().band(lineLabel, bandLabel, look, band);
        return this;
    }

    /** A point marked and named. */
    public LineChart mark(String label, double x, double y) {
        last().pins().point(label, x, y);
        return this;
    }

    /** An upright line through all strips, named on the first. */
    public LineChart upright(String label, double x) {
        uprights.upright(label, x);
        return this;
    }

    /** A spell shaded in all strips. */
    public LineChart spell(String label, double spellFrom, double spellTo) {
        spells.add(new Spell(label, spellFrom, spellTo));
        return this;
    }

    private Strip last() {
        return strips.get(strips.size() - 1);
    }

    @Override
    Sheet on(Form form) {
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(axis(form));
        all.setGap(14);
        Legend legend = new Legend(form);
        for (Strip strip : strips) {
            var plot = strip.plot(form, this::place, place(from), place(to), legend);
            uprights.addTo(plot, this::place, (place(from) + place(to)) / 2, strip.equals(strips.get(0)), form);
            spells.forEach(spell -> plot.addDomainMarker(shade(spell), Layer.BACKGROUND));
            all.add(plot, 1);
        }
        spells.stream().map(Spell::label).distinct().forEach(label -> legend.area(label, Look.SPELL));
        all.setFixedLegendItems(legend.items());
        return Charts.sheet(title(), all, form, heightPx(form));
    }

    private IntervalMarker shade(Spell spell) {
        return new IntervalMarker(
                place(spell.from()), place(spell.to()), Look.SPELL, new BasicStroke(0.6f), Look.INK, null, 1);
    }

    private int heightPx(Form form) {
        boolean wide = form == Form.WIDE;
        if (strips.size() == 1) {
            return form.heightPx(5.5, wide ? WIDE_ONLY_STRIP_PX : NARROW_ONLY_STRIP_PX);
        }
        return form.heightPx(wide ? 6 : 7.5, strips.size() * (double) (wide ? WIDE_STRIP_PX : NARROW_STRIP_PX));
    }

    private ValueAxis axis(Form form) {
        if (start.isPresent()) {
            return Charts.time(place(from), place(to), form);
        }
        NumberAxis axis = Charts.amounts(quantity, form);
        double margin = strips.stream().anyMatch(Strip::hasDots) ? 0.02 * (to - from) : 0; // no dot is cut in half
        axis.setRange(from - margin, to + margin);
        return axis;
    }

    /** From hours or the quantity to the axis. */
    private double place(double x) {
        return start.map(zero -> zero.toEpochSecond(ZoneOffset.UTC) * 1000.0 + x * HOUR_MS)
                .orElse(x);
    }

    @Override
    public String alternative() {
        StringBuilder told = new StringBuilder(title()).append(", ");
        told.append(
                start.isPresent()
                        ? named(from) + " to " + named(to)
                        : "over " + quantity + " from " + Told.number(from) + " to " + Told.number(to));
        strips.forEach(strip -> told.append(". ").append(strip.told(this::at)));
        told.append('.');
        spells.forEach(spell -> told.append(
                " Shaded: " + spell.label() + ", " + named(spell.from()) + " to " + named(spell.to()) + "."));
        told.append(uprights.told(this::at));
        strips.forEach(strip -> told.append(strip.pins().told(this::at)));
        return told.toString();
    }

    private String at(double x) {
        return (start.isPresent() ? "on " : "at ") + named(x);
    }

    private String named(double x) {
        if (start.isEmpty()) {
            return Told.number(x);
        }
        LocalDateTime when = start.orElseThrow().plusSeconds(Math.round(x * 3600));
        String pattern = to - from > 8784 ? "d MMMM yyyy" : to - from > 240 ? "d MMMM" : "d MMMM HH:mm";
        return when.format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
    }
}
