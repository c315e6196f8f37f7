package org.warmvat.weather.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Reads weather files: Warmvat's own and the open TMY3 layout, told apart by their first lines. */
public final class WeatherFiles {
    private static final String DEMONSTRATION = "/org/warmvat/weather/cool-maritime-hills.csv";

    private WeatherFiles() {}

    /**
     * Reads a file.
     *
     * @throws WeatherRefused when it cannot be used, with every fault found
     * @throws IOException when it cannot be opened
     */
    public static Weather read(Path path) throws WeatherRefused, IOException {
        return parse(path.getFileName().toString(), TextFile.read(path));
    }

    /**
     * Reads the bytes of a file, for a caller that also hashes them.
     *
     * @param file its name for messages
     * @param bytes UTF-8 text, with or without a byte-order mark
     * @throws WeatherRefused when it cannot be used, with every fault found
     */
    public static Weather read(String file, byte[] bytes) throws WeatherRefused {
        return parse(file, TextFile.decode(file, bytes));
    }

    /**
     * Reads the text of a file.
     *
     * @param file its name for messages
     * @param text all of it
     */
    public static Weather parse(String file, String text) throws WeatherRefused {
        FileFaults faults = new FileFaults(file);
        if (text.startsWith(WarmvatHeader.MARK)) {
            return new Weather(new WarmvatCsv(text, faults).read());
        }
        if (Tmy3Csv.isLike(text)) {
            return new Weather(new Tmy3Csv(text, faults).read());
        }
        throw new WeatherRefused(file
                + ": is neither a Warmvat weather file (first line \"# warmvat weather 1\") nor in the open TMY3 layout;"
                + " any other hourly text can be read with a layout file (--layout)");
    }

    /**
     * Reads the bytes of any delimited hourly text by its layout.
     *
     * @param file its name for messages
     * @param bytes UTF-8 text, with or without a byte-order mark
     * @param layout how it is laid out
     * @throws WeatherRefused when it cannot be used, with every fault found
     */
    public static Weather read(String file, byte[] bytes, Layout layout) throws WeatherRefused {
        return new Weather(new LayoutCsv(TextFile.decode(file, bytes), layout, new FileFaults(file)).read());
    }

    /** The built-in invented cool maritime year, 8760 hours. */
    public static Weather demonstration() {
        return new Weather(demonstrationTable());
    }

    /** The file of the built-in year, UTF-8. */
    public static byte[] demonstrationBytes() {
        try (InputStream in = WeatherFiles.class.getResourceAsStream(DEMONSTRATION)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static HourlyTable demonstrationTable() {
        try {
            String text = new String(demonstrationBytes(), StandardCharsets.UTF_8);
            return new WarmvatCsv(text, new FileFaults(DEMONSTRATION)).read();
        } catch (WeatherRefused e) {
            throw new IllegalStateException("the built-in weather is broken", e);
        }
    }
}
