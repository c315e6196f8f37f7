package org.warmvat.weather.file;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.weather.WeatherRefused;

/** The faults of one file as they are found; stops at twenty, since the rest is seldom news. */
public final class FileFaults {
    private static final int MOST = 20;
    private static final int MOST_LETTERS = 60;

    private final String file;
    private final List<String> found = new ArrayList<>();

    /** Faults of a file, by its name for messages. */
    public FileFaults(String file) {
        this.file = file;
    }

    /** A text in quotes, cut where long, with control characters made visible. */
    public static String quoted(String text) {
        String shown = text.length() > MOST_LETTERS ? text.substring(0, MOST_LETTERS) + "..." : text;
        return '"' + shown.replaceAll("\\p{Cntrl}", "?") + '"';
    }

    /** Its name. */
    public String file() {
        return file;
    }

    /** A fault of the whole file. */
    public void add(String fault) throws WeatherRefused {
        found.add(file + ": " + fault);
        if (found.size() == MOST) {
            found.add(file + ": more faults may follow; reading stopped after " + MOST);
            refuseIfAny();
        }
    }

    /** A fault of a line, counted from 1. */
    public void add(long line, String fault) throws WeatherRefused {
        found.add(file + " line " + line + ": " + fault);
        if (found.size() == MOST) {
            found.add(file + ": more faults may follow; reading stopped after " + MOST);
            refuseIfAny();
        }
    }

    /** Ends the reading when anything was found. */
    public void refuseIfAny() throws WeatherRefused {
        if (!found.isEmpty()) {
            throw new WeatherRefused(found);
        }
    }

    /** Ends the reading with one more fault. */
    public WeatherRefused refusedAt(long line, String fault) {
        found.add(file + " line " + line + ": " + fault);
        return new WeatherRefused(found);
    }
}
