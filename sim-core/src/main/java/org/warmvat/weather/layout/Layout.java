package org.warmvat.weather.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;

/**
 * How a text of rows by the hour, or by a part of it, is laid out, so that it can be read as weather.
 *
 * @param text lines, cells and numbers
 * @param time where times stand and what they mean
 * @param columns where each quantity stands and in which unit
 * @param missing cells that mean no value, beside empty ones; numbers are compared as numbers
 * @param site where the site's data come from
 * @param beside other files that hold more quantities of the same hours
 */
public record Layout(
        Text text,
        Time time,
        Map<Quantity, Column> columns,
        Set<String> missing,
        SiteSource site,
        List<Beside> beside) {
    /** Copies. */
    public Layout {
        columns = Map.copyOf(columns);
        missing = Set.copyOf(missing);
        beside = List.copyOf(beside);
    }

    /** The layout of a file that stands alone. */
    public Layout(Text text, Time time, Map<Quantity, Column> columns, Set<String> missing, SiteSource site) {
        this(text, time, columns, missing, site, List.of());
    }

    /** The same rows in a text of other delimiters, numbers or letters. */
    public Layout in(Text other) {
        return new Layout(other, time, columns, missing, site, beside);
    }

    /**
     * Another file.
     *
     * @param file its name, in the folder of the first one
     * @param layout how it is laid out; its site is the first one's
     */
    public record Beside(String file, Layout layout) {}

    /**
     * Lines, cells and numbers.
     *
     * @param skipLines lead-in lines before the headings or the first row
     * @param headings whether a line of column names follows the lead-in
     * @param delimiter between cells; {@link #WHOLE_LINE} where columns are positions in the line
     * @param decimalMark point or comma
     * @param until a regular expression: the rows end before the first line after the lead-in in which it is found
     * @param latin1 whether the bytes are Latin-1 (ISO 8859-1) rather than UTF-8
     */
    public record Text(
            int skipLines, boolean headings, char delimiter, char decimalMark, Optional<String> until, boolean latin1) {
        /** The delimiter of a text without cells. */
        public static final char WHOLE_LINE = '\u001F';

        /** UTF-8, with rows to the end. */
        public Text(int skipLines, boolean headings, char delimiter, char decimalMark) {
            this(skipLines, headings, delimiter, decimalMark, Optional.empty(), false);
        }

        /** With cells parted anew. */
        public Text parted(char newDelimiter, char newDecimalMark) {
            return new Text(skipLines, headings, newDelimiter, newDecimalMark, until, latin1);
        }

        /** In Latin-1 or in UTF-8. */
        public Text inLatin1(boolean older) {
            return new Text(skipLines, headings, delimiter, decimalMark, until, older);
        }

        /** The text without what follows the rows. */
        public String rowsOf(String whole) {
            return until.isEmpty() ? whole : whole.substring(0, end(whole, Pattern.compile(until.get())));
        }

        private int end(String whole, Pattern last) {
            int from = 0;
            for (int line = 0; from < whole.length(); line++) {
                int newline = whole.indexOf('\n', from);
                int to = newline < 0 ? whole.length() : newline;
                String text = whole.substring(from, to).stripTrailing();
                if (line > skipLines && last.matcher(text).find()) {
                    return from;
                }
                from = to + 1;
            }
            return whole.length();
        }
    }

    /** Where a column stands. */
    public sealed interface Place {}

    /**
     * A column by its number.
     *
     * @param column counted from 1
     */
    public record ByNumber(int column) implements Place {}

    /**
     * A column by the line of column names.
     *
     * @param name as it stands there
     */
    public record ByHeading(String name) implements Place {}

    /**
     * A column by the positions of its characters in the line.
     *
     * @param from first position, counted from 1
     * @param to last position
     */
    public record ByPosition(int from, int to) implements Place {}

    /** What a time is told by. */
    public enum Clock {
        /** Local standard time all year. */
        LOCAL,
        /** Universal time. */
        UTC,
        /** True solar time: noon is where the sun is highest. */
        SOLAR
    }

    /**
     * Times.
     *
     * @param columns their cells are joined by single spaces
     * @param form how the joined text reads: Y, M, D, h and m stand for digits, any other character for itself
     * @param stamp which moment of its step a row names
     * @param clock what times are told by
     * @param typical whether the months may come from different years and are to be laid onto one
     * @param stepMinutes from row to row: 60, or a part of it that divides it
     * @param instantMinutes from a row's time to the instant of its irradiance, where that is no mean of the step
     */
    public record Time(
            List<Place> columns,
            TimeForm form,
            Stamp stamp,
            Clock clock,
            boolean typical,
            int stepMinutes,
            OptionalDouble instantMinutes) {
        /** Copies. */
        public Time {
            columns = List.copyOf(columns);
        }

        /** Rows by the hour with means of irradiance. */
        public Time(List<Place> columns, TimeForm form, Stamp stamp, Clock clock, boolean typical) {
            this(columns, form, stamp, clock, typical, 60, OptionalDouble.empty());
        }

        /** Whether a row is an hour of a clock that runs evenly. */
        public boolean isHourly() {
            return stepMinutes == 60 && instantMinutes.isEmpty() && clock != Clock.SOLAR;
        }

        /** The stamp of the hours that come of the rows. */
        public Stamp hourStamp() {
            return stepMinutes < 60 ? Stamp.HOUR_MIDDLE : stamp;
        }
    }

    /**
     * A quantity's column: its value is {@code cell x factor + offset} in the quantity's own unit.
     *
     * @param places where; the cells of several are added up
     * @param factor multiplies the cell
     * @param offset is then added
     * @param missing cells that mean no value here, beside those of the whole file
     */
    public record Column(List<Place> places, double factor, double offset, Set<String> missing) {
        /** Copies. */
        public Column {
            places = List.copyOf(places);
            missing = Set.copyOf(missing);
        }

        /** A single column. */
        public Column(Place place, double factor, double offset) {
            this(List.of(place), factor, offset, Set.of());
        }

        /** The column, or the first of several. */
        public Place place() {
            return places.get(0);
        }
    }

    /**
     * The site's data, each typed in, or standing in a cell of a lead-in line, or found in the lead-in by a pattern.
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
     * @param pattern or a regular expression whose first group it is, in the first lead-in line in which it is found
     */
    public record Source(Optional<String> typed, Optional<LeadCell> cell, Optional<String> pattern) {
        /** Typed in. */
        public static Source of(String typed) {
            return new Source(Optional.of(typed), Optional.empty(), Optional.empty());
        }

        /** From a lead-in line and a cell of it, both counted from 1. */
        public static Source at(int line, int cell) {
            return new Source(Optional.empty(), Optional.of(new LeadCell(line, cell)), Optional.empty());
        }

        /** What the first group of a regular expression finds in the lead-in. */
        public static Source found(String pattern) {
            return new Source(Optional.empty(), Optional.empty(), Optional.of(pattern));
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
