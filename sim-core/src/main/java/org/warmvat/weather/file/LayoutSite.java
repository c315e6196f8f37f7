package org.warmvat.weather.file;

import java.util.List;
import java.util.regex.Pattern;
import org.warmvat.weather.Site;
import org.warmvat.weather.WeatherRefused;

/** Gathers the site's data from a layout and from the lead-in lines it points at. */
final class LayoutSite {
    private final List<String> lead;
    private final Layout layout;
    private final FileFaults faults;

    LayoutSite(String text, Layout layout, FileFaults faults) {
        this.lead = text.lines().limit(layout.text().skipLines()).toList();
        this.layout = layout;
        this.faults = faults;
    }

    Site site() throws WeatherRefused {
        Layout.SiteSource source = layout.site();
        String name = text("site name", source.name());
        double latitude = number("latitude_deg", source.latitudeDeg(), -90, 90);
        double longitude = number("longitude_deg", source.longitudeDeg(), -180, 180);
        double elevation = number("elevation_m", source.elevationM(), -450, 6000);
        double offset = number("utc_offset_h", source.utcOffsetH(), -12, 14);
        faults.refuseIfAny();
        return new Site(name, latitude, longitude, elevation, offset);
    }

    private double number(String what, Layout.Source source, int least, int most) throws WeatherRefused {
        String found = text(what, source);
        String plain =
                layout.text().decimalMark() == ',' && source.cell().isPresent() ? found.replace(',', '.') : found;
        double value = Decimal.isNumber(plain) ? Double.parseDouble(plain) : Double.NaN;
        if (!(value >= least && value <= most)) {
            long line = source.cell().map(cell -> (long) cell.line()).orElse(0L);
            String fault = what + " \"" + found + "\", expected a number from " + least + " to " + most;
            if (line > 0) {
                faults.add(line, fault);
            } else {
                faults.add(fault);
            }
            return 0;
        }
        return value;
    }

    private String text(String what, Layout.Source source) throws WeatherRefused {
        if (source.cell().isEmpty()) {
            return source.typed().orElse("");
        }
        Layout.LeadCell place = source.cell().get();
        if (place.line() > lead.size()) {
            faults.add(what + " is said to stand in line " + place.line() + ", but " + lead.size()
                    + " lead-in lines are skipped");
            return "";
        }
        String[] cells = lead.get(place.line() - 1)
                .split(Pattern.quote(String.valueOf(layout.text().delimiter())), -1);
        if (place.cell() > cells.length) {
            faults.add(
                    place.line(), cells.length + " cells, but " + what + " is said to stand in cell " + place.cell());
            return "";
        }
        return cells[place.cell() - 1].strip().replaceAll("^\"|\"$", "").strip();
    }
}
