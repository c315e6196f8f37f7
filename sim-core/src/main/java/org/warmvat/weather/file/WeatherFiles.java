package org.warmvat.weather.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.service.Recognised;

/** Reads weather files: Warmvat's own, those of public services, told by what stands in them, and any other by its layout. */
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
        return read(file, bytes, Reading.USUAL);
    }

    /**
     * Reads the bytes of a file in a stated way.
     *
     * @param file its name for messages
     * @param bytes text, UTF-8 unless its layout says otherwise
     * @throws WeatherRefused when it cannot be used, with every fault found
     */
    public static Weather read(String file, byte[] bytes, Reading reading) throws WeatherRefused {
        if (reading.layout().isPresent()) {
            Layout layout = reading.layout().get();
            String text = TextFile.decode(file, bytes, layout.text().latin1());
            return new Weather(new LayoutCsv(layout, reading, new FileFaults(file)).read(text, new ArrayList<>()));
        }
        return parse(file, TextFile.decode(file, bytes), reading);
    }

    /**
     * Reads the text of a file.
     *
     * @param file its name for messages
     * @param text all of it
     */
    public static Weather parse(String file, String text) throws WeatherRefused {
        return parse(file, text, Reading.USUAL);
    }

    private static Weather parse(String file, String text, Reading reading) throws WeatherRefused {
        FileFaults faults = new FileFaults(file);
        if (text.startsWith(WarmvatHeader.MARK)) {
            return new Weather(new WarmvatCsv(text, reading, faults).read());
        }
        Optional<Recognised> recognised = Recognised.in(text);
        if (recognised.isPresent()) {
            List<String> notes = new ArrayList<>(List.of(recognised.get().sentence()));
            return new Weather(new LayoutCsv(recognised.get().layout(), reading, faults)
                    .read(text, notes)
                    .onPlane(recognised.get().slopeDeg()));
        }
        throw new WeatherRefused(file + ": " + Unrecognised.sentence(text));
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
            return new WarmvatCsv(text, Reading.USUAL, new FileFaults(DEMONSTRATION)).read();
        } catch (WeatherRefused e) {
            throw new IllegalStateException("the built-in weather is broken", e);
        }
    }
}
