package org.warmvat.weather.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.warmvat.spelling.Nearest;
import org.warmvat.weather.Site;
import org.warmvat.weather.WeatherRefused;

/**
 * The lines {@code # key: value} at the top of Warmvat's own files, after a first line that names the kind of file and its
 * version. Trailing commas, as spreadsheets leave them, are ignored; a line of free text without a key is a remark.
 */
public final class LeadIn {
    private static final Pattern ENTRY = Pattern.compile("#\\s*([a-z_]+)\\s*:\\s*(.*?)[,;\\s]*");

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final FileFaults faults;
    private final int lines;

    private LeadIn(FileFaults faults, int lines) {
        this.faults = faults;
        this.lines = lines;
    }

    /**
     * Reads the lead-in.
     *
     * @param text of the whole file
     * @param mark how the first line begins, before the version 1
     * @param keys those that may stand here
     */
    public static LeadIn read(String text, String mark, List<String> keys, FileFaults faults) throws WeatherRefused {
        List<String> lead = text.lines().takeWhile(line -> line.startsWith("#")).toList();
        Pattern first = Pattern.compile(Pattern.quote(mark) + " 1[,;\\s]*");
        if (lead.isEmpty() || !first.matcher(lead.get(0)).matches()) {
            throw faults.refusedAt(1, "expected \"" + mark + " 1\"");
        }
        LeadIn result = new LeadIn(faults, lead.size());
        for (int i = 1; i < lead.size(); i++) {
            Matcher matcher = ENTRY.matcher(lead.get(i));
            if (matcher.matches()) {
                result.take(new Entry(i + 1, matcher.group(1), matcher.group(2)), keys);
            }
        }
        return result;
    }

    /** How many lines it has. */
    public int lines() {
        return lines;
    }

    private void take(Entry entry, List<String> keys) throws WeatherRefused {
        if (!keys.contains(entry.key)) {
            faults.add(
                    entry.line,
                    "unknown key " + FileFaults.quoted(entry.key) + ", expected one of "
                            + Nearest.listAnd(entry.key, keys));
        } else if (entries.put(entry.key, entry) != null && !entry.key.equals("note")) {
            faults.add(entry.line, "key " + entry.key + " stands twice");
        }
    }

    /** The site, with a fault for each part that is missing or out of range; refuses then. */
    Site site() throws WeatherRefused {
        String name = entries.containsKey("site") ? entries.get("site").value : "unnamed site";
        double latitude = number("latitude_deg", -90, 90);
        double longitude = number("longitude_deg", -180, 180);
        double elevation = number("elevation_m", -450, 6000);
        double offset = number("utc_offset_h", -12, 14);
        return new Site(name, latitude, longitude, elevation, offset);
    }

    /** The number under a key, within whole limits; 0 and a fault otherwise. */
    public double number(String key, int least, int most) throws WeatherRefused {
        Entry entry = entries.get(key);
        String range = least + " to " + most;
        if (entry == null) {
            faults.add("no line \"# " + key + ": ...\", expected a number from " + range);
            return 0;
        }
        boolean number = Decimal.isNumber(entry.value);
        double value = number ? Double.parseDouble(entry.value) : 0;
        if (!number || value < least || value > most) {
            faults.add(entry.line, key + " " + FileFaults.quoted(entry.value) + ", expected a number from " + range);
            return 0;
        }
        return value;
    }

    /** The entry under a key. */
    public Optional<Entry> entry(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    /**
     * One line of it.
     *
     * @param line counted from 1
     * @param key before the colon
     * @param value after it
     */
    public record Entry(int line, String key, String value) {}
}
