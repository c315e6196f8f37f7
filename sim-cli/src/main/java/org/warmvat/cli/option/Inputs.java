package org.warmvat.cli.option;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.file.LayoutDocument;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.WeatherYear;
import org.warmvat.weather.file.Reading;
import org.warmvat.weather.file.TextFile;
import org.warmvat.weather.file.WeatherFiles;
import org.warmvat.weather.layout.Layout;

/**
 * Design and weather of a command, each from its file or from the built-in demonstration.
 *
 * @param given the design, absent where only weather is asked about
 * @param years the weather, each by the name by which answers tell it: as read of whole files, as {@link #inYears} of single years; none
 *     where only a design is asked about
 * @param files what they were read from, hashed
 * @param invented one sentence for each that is the built-in demonstration
 */
public record Inputs(
        Optional<DesignDocument> given, List<WeatherYear> years, List<InputFile> files, List<String> invented) {

    private static final String DEMONSTRATION = "built-in demonstration";
    private static final String INVENTED_DESIGN =
            "No design was given: this is the built-in demonstration, an invented tank.";
    private static final String INVENTED_WEATHER =
            "No weather was given: this is the built-in demonstration, an invented year.";

    /**
     * Reads all.
     *
     * @param designFile the design, absent for the demonstration
     * @param weatherFiles the weather, none for the demonstration
     * @param way how every weather file is read
     * @param check what else is asked of the design; throws {@link InputRefused}
     * @throws InputRefused with the faults of all files
     */
    public static Inputs read(
            Optional<Path> designFile,
            List<Path> weatherFiles,
            WeatherOptions.Way way,
            Consumer<DesignDocument> check) {
        List<String> faults = new ArrayList<>();
        List<InputFile> files = new ArrayList<>();
        Optional<DesignDocument> design = tried(() -> design(designFile, files), faults);
        design.ifPresent(read -> tried(() -> checked(read, check), faults));
        List<WeatherYear> weathers = weathers(weatherFiles, way, files, faults);
        InputRefused.ifAny(faults);
        return new Inputs(design, weathers, files, invented(designFile.isEmpty(), weatherFiles.isEmpty()));
    }

    /** A sentence for each input that is the built-in demonstration. */
    public static List<String> invented(boolean design, boolean weather) {
        return Stream.of(design ? INVENTED_DESIGN : "", weather ? INVENTED_WEATHER : "")
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    /** The same with a further file, which stands behind the design. */
    public Inputs with(InputFile file) {
        List<InputFile> all = new ArrayList<>(files);
        all.add(1, file);
        return new Inputs(given, years, all, invented);
    }

    /** Reads a design alone. */
    static Inputs designOnly(Optional<Path> designFile) {
        List<InputFile> files = new ArrayList<>();
        DesignDocument design = design(designFile, files);
        return new Inputs(Optional.of(design), List.of(), files, invented(designFile.isEmpty(), false));
    }

    /** Reads weather alone. */
    public static Inputs weatherOnly(Optional<Path> weatherFile, WeatherOptions.Way way) {
        List<InputFile> files = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        List<WeatherYear> weathers = weathers(weatherFile.stream().toList(), way, files, faults);
        InputRefused.ifAny(faults);
        return new Inputs(Optional.empty(), weathers, files, invented(false, weatherFile.isEmpty()));
    }

    /** The design; only where there is one. */
    public DesignDocument design() {
        return given.orElseThrow();
    }

    private static DesignDocument checked(DesignDocument design, Consumer<DesignDocument> check) {
        check.accept(design);
        return design;
    }

    /** The weather of all years. */
    public List<Weather> weathers() {
        return years.stream().map(WeatherYear::weather).toList();
    }

    /** The weather, the first where there are several. */
    public Weather weather() {
        return years.get(0).weather();
    }

    /** The same with every file of several years cut into them, for a question that looks at all years at once. */
    public Inputs inYears() {
        return new Inputs(given, cut(years), files, invented);
    }

    /** Files cut into their years. */
    public static List<WeatherYear> cut(List<WeatherYear> files) {
        List<WeatherYear> years = new ArrayList<>();
        for (WeatherYear file : files) {
            List<WeatherYear> own = WeatherYear.of(file.name(), file.weather());
            boolean oneOfSeveral = own.size() == 1 && files.size() > 1;
            years.addAll(oneOfSeveral ? List.of(file.withYear()) : own);
        }
        return years;
    }

    /** The same in one of the years alone. */
    public Inputs in(WeatherYear year) {
        return new Inputs(given, List.of(year), files, invented);
    }

    /** What a command is asked about. */
    public Subject asked(RunOptions run) {
        return asked(run.spec().name(), run.engine().name());
    }

    /** What a command is asked about. */
    public Subject asked(String command, String engine) {
        return new Subject(
                command,
                given.map(DesignDocument::design),
                years,
                engine,
                new Subject.InputReading(
                        files,
                        invented,
                        given.map(DesignDocument::assumed).orElse(List.of()),
                        given.map(DesignDocument::cautions).orElse(List.of())));
    }

    /** Reads a design. */
    public static DesignDocument design(Optional<Path> file, List<InputFile> files) {
        byte[] bytes = file.map(Inputs::bytes).orElseGet(DesignDocument::demonstrationBytes);
        files.add(InputFile.of("design", name(file), bytes));
        return DesignDocument.read(file.map(Path::toString).orElse(DEMONSTRATION), bytes);
    }

    /** Reads weather files, the demonstration where none is named, each by its own name; adds to files and faults. */
    public static List<WeatherYear> weathers(
            List<Path> weatherFiles, WeatherOptions.Way way, List<InputFile> files, List<String> faults) {
        Optional<Path> layoutFile = way.layoutFile();
        if (layoutFile.isPresent() && weatherFiles.isEmpty()) {
            faults.add(layoutFile.get() + ": a layout was given but no weather file, expected both");
            return List.of();
        }
        Optional<Layout> layout =
                layoutFile.flatMap(file -> tried(() -> LayoutDocument.read(file.toString(), bytes(file)), faults));
        List<Optional<Path>> all = weatherFiles.isEmpty()
                ? List.of(Optional.empty())
                : weatherFiles.stream().map(Optional::of).toList();
        List<WeatherYear> weathers = new ArrayList<>();
        Map<String, Integer> before = new HashMap<>();
        for (Optional<Path> file : all) {
            // without its layout a file cannot be read, but it can be missing
            boolean unreadable = layoutFile.isPresent() && layout.isEmpty();
            tried(() -> hashed(file, files), faults)
                    .filter(bytes -> !unreadable)
                    .flatMap(bytes -> tried(() -> weather(file, bytes, reading(file, layout, way, files)), faults))
                    .ifPresent(weather -> weathers.add(new WeatherYear(apart(name(file), before), weather)));
        }
        layout.ifPresent(unused -> files.add(InputFile.of("layout", name(layoutFile), bytes(layoutFile.get()))));
        return weathers;
    }

    /** The name of a file, numbered where others had the same. */
    private static String apart(String name, Map<String, Integer> before) {
        int times = before.merge(name, 1, Integer::sum);
        return times == 1 ? name : name + " (" + times + ")";
    }

    private static byte[] hashed(Optional<Path> file, List<InputFile> files) {
        byte[] bytes = file.map(Inputs::bytes).orElseGet(WeatherFiles::demonstrationBytes);
        files.add(InputFile.of("weather", name(file), bytes));
        return bytes;
    }

    private static Weather weather(Optional<Path> file, byte[] bytes, Reading reading) {
        String shown = file.map(Path::toString).orElse(DEMONSTRATION);
        try {
            return WeatherFiles.read(shown, bytes, reading);
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }

    /** Files that a layout names are looked for beside the weather file, and hashed as it is. */
    private static Reading reading(
            Optional<Path> file, Optional<Layout> layout, WeatherOptions.Way way, List<InputFile> files) {
        return new Reading(layout, way.fillHolesH(), name -> {
            byte[] bytes = bytes(file.map(path -> path.resolveSibling(name)).orElseGet(() -> Path.of(name)));
            files.add(InputFile.of("weather", name, bytes));
            return bytes;
        });
    }

    private static String name(Optional<Path> file) {
        return file.map(path -> path.getFileName().toString()).orElse(DEMONSTRATION);
    }

    /** What was read, empty where it is refused, its faults added to those of the other files. */
    public static <T> Optional<T> tried(Supplier<T> reading, List<String> faults) {
        try {
            return Optional.of(reading.get());
        } catch (InputRefused refused) {
            faults.addAll(refused.faults());
            return Optional.empty();
        }
    }

    /** All bytes of an input file. */
    public static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new InputRefused(file + ": is a folder, expected a file");
            }
            TextFile.refuseLarge(file.toString(), Files.size(file));
            return Files.readAllBytes(file);
        } catch (WeatherRefused large) {
            throw new InputRefused(large.faults());
        } catch (ClosedByInterruptException stopped) {
            throw (CancellationException) new CancellationException("stopped").initCause(stopped);
        } catch (IOException unreadable) {
            boolean missing = unreadable instanceof NoSuchFileException;
            String why = missing ? "no such file" : "cannot be read (" + unreadable.getMessage() + ")";
            throw new InputRefused(file + ": " + why);
        }
    }
}
