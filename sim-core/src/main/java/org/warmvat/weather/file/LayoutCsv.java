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
        parts.add(hours(new LayoutRows(layout, faults).read(text), layout.time(), site, stamp));
        for (Layout.Beside beside : layout.beside()) {
            FileFaults others = new FileFaults(beside.file());
            Layout other = beside.layout();
            String words = TextFile.decode(
                    beside.file(),
                    reading.beside().bytes(beside.file()),
                    other.text().latin1());
            parts.add(hours(new LayoutRows(other, others).read(words), other.time(), site, stamp));
        }
        RawRows rows = parts.size() == 1 ? parts.get(0) : JoinedRows.of(parts, faults, notes);
        return Calendar.table(rows, stamp, layout.time().typical(), site, reading, faults, notes);
    }

    private RawRows hours(RawRows rows, Layout.Time time, Site site, Stamp wanted) {
        if (time.isHourly() && time.stamp() == wanted) {
            return time.clock() == Layout.Clock.UTC ? rows.moved(Math.round(60 * site.utcOffsetH())) : rows;
        }
        return new OntoHours(rows, time, site, wanted).hours();
    }
}
