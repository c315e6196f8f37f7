package org.warmvat.weather.file;

import java.util.List;
import java.util.Optional;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;

/**
 * The lead-in of Warmvat's own weather file.
 *
 * @param site where
 * @param stamp which moment of its hour a row names
 * @param lines how many lines the lead-in has
 */
record WarmvatHeader(Site site, Stamp stamp, int lines) {
    /** How such a file begins. */
    static final String MARK = "# warmvat weather";

    private static final List<String> KEYS =
            List.of("site", "latitude_deg", "longitude_deg", "elevation_m", "utc_offset_h", "stamp", "origin", "note");

    static WarmvatHeader read(String text, FileFaults faults) throws WeatherRefused {
        LeadIn lead = LeadIn.read(text, MARK, KEYS, faults);
        Site site = lead.site();
        Stamp stamp = stamp(lead.entry("stamp"), faults);
        faults.refuseIfAny();
        return new WarmvatHeader(site, stamp, lead.lines());
    }

    private static Stamp stamp(Optional<LeadIn.Entry> entry, FileFaults faults) throws WeatherRefused {
        for (Stamp stamp : Stamp.values()) {
            if (entry.isPresent() && stamp.key().equals(entry.get().value())) {
                return stamp;
            }
        }
        String expected = "expected hour_start, hour_middle or hour_end";
        if (entry.isEmpty()) {
            faults.add("no line \"# stamp: ...\", " + expected);
        } else {
            faults.add(entry.get().line(), "stamp \"" + entry.get().value() + "\", " + expected);
        }
        return Stamp.HOUR_END;
    }
}
