package org.warmvat.weather.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;

/**
 * How a delimited hourly text is laid out, so that it can be read as weather.
 *
 * @param text lines, cells and numbers
 * @param time where times stand and what they mean
 * @param columns where each quantity stands and in which unit
 * @param missing cells that mean no value, beside empty ones; numbers are compared as numbers
 * @param site where the site's data come from
 */
public record Layout(Text text, Time time, Map<Quantity, Column> columns, Set<String> missing, SiteSource site) {
    /** Copies. */
    public Layout {
        columns = Map.copyOf(columns);
        missing = Set.copyOf(missing);
    }

    /**
     * Lines, cells and numbers.
     *
     * @param skipLines lead-in lines before the headings or the first row
     * @param headings whether a line of column names follows the lead-in
     * @param delimiter between cells
     * @param decimalMark point or comma
     */
    public record Text(int skipLines, boolean headings, char delimiter, char decimalMark) {}

    /** Where a column stands. */
    public sealed interface Place {
        /** As a fault would name it. */
        String words();
    }

    /**
     * A column by its number.
     *
     * @param column counted from 1
     */
    public record ByNumber(int column) implements Place {
        @Override
        public String words() {
            return "column " + column;
        }
    }

    /**
     * A column by the line of column names.
     *
     * @param name as it stands there
     */
    public record ByHeading(String name) implements Place {
        @Override
        public String words() {
            return "column \"" + name + "\"";
        }
    }

    /**
     * Times.
     *
     * @param columns their cells are joined by single spaces
     * @param form how the joined text reads: Y, M, D, h and m stand for digits, any other character for itself
     * @param stamp which moment of its hour a row names
     * @param utc whether the clock is universal time rather than local standard time
     * @param typical whether the months may come from different years and are to be laid onto one
     */
    public record Time(List<Place> columns, TimeForm form, Stamp stamp, boolean utc, boolean typical) {
        /** Copies. */
        public Time {
            columns = List.copyOf(columns);
        }
    }

    /**
     * A quantity's column: its value is {@code cell x factor + offset} in the quantity's own unit.
     *
     * @param place where
     * @param factor multiplies the cell
     * @param offset is then added
     */
    public record Column(Place place, double factor, double offset) {}

    /**
     * The site's data, each typed in or standing in a cell of a lead-in line.
     *
     * @param name what to call it; a typed one or the text of a cell
     * @param latitudeDeg north positive
     * @param longitudeDeg east positive
     * @param elevationM above sea level
     * @param utcOffsetH local standard time less universal time
     */
    public record SiteSource(
            Source name, Source latitudeDeg, Source longitudeDeg, Source elevationM, Source utcOffsetH) {}

    /**
     * One datum.
     *
     * @param typed as given in the layout
     * @param cell or where it stands in the lead-in
     */
    public record Source(Optional<String> typed, Optional<LeadCell> cell) {
        /** Typed in. */
        public static Source of(String typed) {
            return new Source(Optional.of(typed), Optional.empty());
        }

        /** From a lead-in line and a cell of it, both counted from 1. */
        public static Source at(int line, int cell) {
            return new Source(Optional.empty(), Optional.of(new LeadCell(line, cell)));
        }
    }

    /**
     * A cell of the lead-in.
     *
     * @param line counted from 1
     * @param cell of that line, counted from 1
     */
    public record LeadCell(int line, int cell) {}
}
