package org.warmvat.weather.file;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;

/** Reads weather by a {@link Layout}: rows, onto hours where they are none, joined with those of files beside, without holes. */
final class LayoutCsv {
    private final Layout layout;
    private final Reading reading;
    private final FileFaults faults;

    LayoutCsv(Layout layout, Reading reading, FileFaults faults) {
        this.layout = layout;
        this.reading = reading;
        this.faults = faults;
    }

    HourlyTable read(String text, List<String> notes) throws WeatherRefused {
        Site site = new LayoutSite(text, layout, faults).site();
        Stamp stamp = layout.time().hourStamp();
        List<RawRows> parts = new ArrayList<>();
        parts.add(hours(ordered(new LayoutRows(layout, faults).read(text), faults), layout.time(), site, stamp));
        for (Layout.Beside beside : layout.beside()) {
            FileFaults others = new FileFaults(beside.file());
            Layout other = beside.layout();
            String words = TextFile.decode(
                    beside.file(),
                    reading.beside().bytes(beside.file()),
                    other.text().latin1());
            parts.add(hours(ordered(new LayoutRows(other, others).read(words), others), other.time(), site, stamp));
        }
        RawRows rows = parts.size() == 1 ? parts.get(0) : JoinedRows.of(parts, faults, notes);
        return Calendar.table(rows, stamp, layout.time().typical(), site, reading, faults, notes);
    }

    /** Rows that are to be joined have to follow each other; those of a file alone are looked at later, where months may jump. */
    private RawRows ordered(RawRows rows, FileFaults owner) throws WeatherRefused {
        if (!layout.beside().isEmpty()) {
            JoinedRows.requireOrder(rows, owner);
        }
        return rows;
    }

    private RawRows hours(RawRows rows, Layout.Time time, Site site, Stamp wanted) {
        if (time.isHourly() && time.stamp() == wanted) {
            RawRows local = time.clock() == Layout.Clock.UTC ? rows.moved(Math.round(60 * site.utcOffsetH())) : rows;
            // a clock of half hours puts a file alone on hours of its own, but several onto those of the place
            if (layout.beside().isEmpty() || Math.floorMod(local.stampMinute(0) - wanted.minutesIntoHour(), 60) == 0) {
                return local;
            }
        }
        return new OntoHours(rows, time, site, wanted).hours();
    }
}
