package org.warmvat.weather.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.warmvat.weather.Site;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.LineCells;

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
        String name = text("site name", source.name()).orElse("");
        double latitude = number("latitude_deg", source.latitudeDeg(), -90, 90);
        double longitude = number("longitude_deg", source.longitudeDeg(), -180, 180);
        double elevation = number("elevation_m", source.elevationM(), -450, 6000);
        double offset = number("utc_offset_h", source.utcOffsetH(), -12, 14);
        faults.refuseIfAny();
        return new Site(name, latitude, longitude, elevation, offset);
    }

    private double number(String what, Layout.Source source, int least, int most) throws WeatherRefused {
        Optional<String> place = text(what, source);
        if (place.isEmpty()) {
            return 0;
        }
        String found = place.get();
        boolean comma = layout.text().decimalMark() == ',' && source.typed().isEmpty();
        String plain = comma ? found.replace(',', '.') : found;
        double value = Decimal.isNumber(plain) ? Double.parseDouble(plain) : Double.NaN;
        if (!(value >= least && value <= most)) {
            long line = source.cell().map(cell -> (long) cell.line()).orElse(0L);
            String fault = what + " " + FileFaults.quoted(found) + ", expected a number from " + least + " to " + most;
            if (line > 0) {
                faults.add(line, fault);
            } else {
                faults.add(fault);
            }
            return 0;
        }
        return value;
    }

    private Optional<String> text(String what, Layout.Source source) throws WeatherRefused {
        if (source.typed().isPresent()) {
            return source.typed();
        }
        return source.pattern().isPresent()
                ? matched(what, source.pattern().get())
                : cell(what, source.cell().orElseThrow());
    }

    private Optional<String> matched(String what, String regex) throws WeatherRefused {
        Pattern pattern = Pattern.compile(regex);
        for (String line : lead) {
            Matcher matcher = pattern.matcher(line);
            if (matcher.find()) {
                String group = matcher.group(1);
                return Optional.of(group == null ? "" : group.strip());
            }
        }
        faults.add("no line of the " + lead.size() + " lead-in lines holds " + what + " by the pattern "
                + FileFaults.quoted(regex)
                + "; a layout may state it (\"warmvat weather layout FILE\" writes one)");
        return Optional.empty();
    }

    private Optional<String> cell(String what, Layout.LeadCell place) throws WeatherRefused {
        if (place.line() > lead.size()) {
            faults.add(what + " is said to stand in line " + place.line() + ", but " + lead.size()
                    + " lead-in lines are skipped");
            return Optional.empty();
        }
        List<String> cells =
                LineCells.of(lead.get(place.line() - 1), layout.text().delimiter());
        if (place.cell() > cells.size()) {
            faults.add(
                    place.line(), cells.size() + " cells, but " + what + " is said to stand in cell " + place.cell());
            return Optional.empty();
        }
        return Optional.of(cells.get(place.cell() - 1));
    }
}
