package org.warmvat.weather;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    private static final Pattern FIRST = Pattern.compile("# warmvat weather (\\S+?)[,;\\s]*");
    private static final Pattern ENTRY = Pattern.compile("#\\s*([a-z_]+)\\s*:\\s*(.*?)[,;\\s]*");
    private static final List<String> KEYS =
            List.of("site", "latitude_deg", "longitude_deg", "elevation_m", "utc_offset_h", "stamp", "origin", "note");

    /** Reads the lead-in; trailing commas, as spreadsheets leave them, are ignored. */
    static WarmvatHeader read(String text, Faults faults) throws WeatherRefused {
        List<String> lead = text.lines().takeWhile(line -> line.startsWith("#")).toList();
        Matcher first = FIRST.matcher(lead.isEmpty() ? "" : lead.get(0));
        if (!first.matches() || !first.group(1).equals("1")) {
            throw faults.refusedAt(1, "expected \"# warmvat weather 1\"");
        }
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (int i = 1; i < lead.size(); i++) {
            Matcher matcher = ENTRY.matcher(lead.get(i));
            if (matcher.matches()) {
                take(entries, new Entry(i + 1, matcher.group(1), matcher.group(2)), faults);
            }
        }
        Lead values = new Lead(entries, faults);
        String name = entries.containsKey("site") ? entries.get("site").value : "unnamed site";
        double latitude = values.number("latitude_deg", -90, 90);
        double longitude = values.number("longitude_deg", -180, 180);
        double elevation = values.number("elevation_m", -450, 6000);
        double offset = values.number("utc_offset_h", -12, 14);
        Stamp stamp = values.stamp();
        faults.refuseIfAny();
        return new WarmvatHeader(new Site(name, latitude, longitude, elevation, offset), stamp, lead.size());
    }

    private static void take(Map<String, Entry> entries, Entry entry, Faults faults) throws WeatherRefused {
        if (!KEYS.contains(entry.key)) {
            faults.add(
                    entry.line,
                    "unknown key \"" + entry.key + "\", expected one of " + Nearest.listAnd(entry.key, KEYS));
        } else if (entries.put(entry.key, entry) != null && !entry.key.equals("note")) {
            faults.add(entry.line, "key " + entry.key + " stands twice");
        }
    }

    private record Entry(int line, String key, String value) {}

    /** The entries, with faults for what is missing or out of range. */
    private record Lead(Map<String, Entry> entries, Faults faults) {
        double number(String key, double least, double most) throws WeatherRefused {
            Entry entry = entries.get(key);
            String range = (int) least + " to " + (int) most;
            if (entry == null) {
                faults.add("no line \"# " + key + ": ...\", expected a number from " + range);
                return 0;
            }
            boolean number = Decimal.isNumber(entry.value);
            double value = number ? Double.parseDouble(entry.value) : 0;
            if (!number || value < least || value > most) {
                faults.add(entry.line, key + " \"" + entry.value + "\", expected a number from " + range);
                return 0;
            }
            return value;
        }

        Stamp stamp() throws WeatherRefused {
            Entry entry = entries.get("stamp");
            for (Stamp stamp : Stamp.values()) {
                if (entry != null && stamp.key().equals(entry.value)) {
                    return stamp;
                }
            }
            String expected = "expected hour_start, hour_middle or hour_end";
            if (entry == null) {
                faults.add("no line \"# stamp: ...\", " + expected);
            } else {
                faults.add(entry.line, "stamp \"" + entry.value + "\", " + expected);
            }
            return Stamp.HOUR_END;
        }
    }
}
