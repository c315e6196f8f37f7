package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.compare.CompareAnswer;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.question.compare.CompareResult;
import org.warmvat.question.compare.CompareStudy;
import org.warmvat.weather.WeatherYear;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code compare}: designs in weather files, side by side. */
@Command(
        name = "compare",
        sortOptions = false,
        description = {
            "Runs every design through every weather file and holds them against each other: what differs in the inputs, key"
                    + " figures with their differences, courses laid over each other, and which is better at what.",
            "There must be at least two designs or two weather files. Without weather the built-in invented demonstration is used."
        })
final class CompareCommand extends RunningCommand {

    private static final int MOST_COLUMNS = 24;

    @Parameters(index = "0..*", arity = "0..*", paramLabel = "DESIGN", description = "Design files, YAML or JSON.")
    private List<Path> designFiles = List.of();

    @Option(names = "--weather", paramLabel = "W", description = "A weather file, hourly; may be given several times.")
    private List<Path> weatherFiles = List.of();

    @Mixin
    private WeatherOptions reading;

    /** What was read. */
    private record Read(List<DesignDocument> designs, List<WeatherYear> years, Subject.InputReading all) {}

    @Override
    public Document document() throws Exception {
        Read read = read();
        int columns = read.designs().size() * read.years().size();
        if (columns < 2) {
            throw run().wrong("There is nothing to compare with, expected a second DESIGN or a second --weather");
        }
        if (columns > MOST_COLUMNS) {
            throw run().wrong(columns + " columns, expected at most " + MOST_COLUMNS);
        }
        CompareResult result = run().parallel(
                        "runs",
                        parallel -> CompareStudy.run(
                                read.designs().stream()
                                        .map(DesignDocument::design)
                                        .toList(),
                                read.years().stream().map(WeatherYear::weather).toList(),
                                run().engine(),
                                parallel));
        String name = run().spec().name();
        String engine = run().engine().name();
        Subject asked = new Subject(name, Optional.empty(), read.years(), engine, read.all());
        List<Subject> each = result.columns().stream()
                .map(column -> new Subject(
                        name,
                        Optional.of(column.drawn()),
                        List.of(read.years().get(column.file())),
                        engine,
                        reading(read, column.design())))
                .toList();
        return CompareAnswer.of(result, asked, each, names(read, result));
    }

    private static Subject.InputReading reading(Read read, int design) {
        DesignDocument document = read.designs().get(design);
        return new Subject.InputReading(List.of(), List.of(), document.assumed(), document.cautions());
    }

    private Read read() {
        List<String> faults = new ArrayList<>();
        List<InputFile> files = new ArrayList<>();
        List<DesignDocument> designs = new ArrayList<>();
        List<Optional<Path>> named = designFiles.isEmpty()
                ? List.of(Optional.empty())
                : designFiles.stream().map(Optional::of).toList();
        for (Optional<Path> file : named) {
            Inputs.tried(() -> Inputs.design(file, files), faults).ifPresent(designs::add);
        }
        List<WeatherYear> weathers = Inputs.weathers(weatherFiles, reading.way(), files, faults);
        InputRefused.ifAny(faults);
        List<String> invented = Inputs.invented(designFiles.isEmpty(), weatherFiles.isEmpty());
        return new Read(designs, years(weathers), new Subject.InputReading(files, invented, List.of(), List.of()));
    }

    /** The years of the files, each by what tells its file apart and, where a file holds several, its year. */
    private List<WeatherYear> years(List<WeatherYear> files) {
        if (weatherFiles.isEmpty()) {
            return files;
        }
        List<String> names = apart(weatherFiles);
        return Inputs.cut(IntStream.range(0, files.size())
                .mapToObj(i -> new WeatherYear(names.get(i), files.get(i).weather()))
                .toList());
    }

    /** Each column by what tells it apart: its design's file, its weather file, or both. */
    private List<String> names(Read read, CompareResult result) {
        List<String> designs = apart(designFiles);
        List<String> files = read.years().stream().map(WeatherYear::name).toList();
        return result.columns().stream()
                .map(column -> read.years().size() == 1
                        ? designs.get(column.design())
                        : read.designs().size() == 1
                                ? files.get(column.file())
                                : designs.get(column.design()) + " in " + files.get(column.file()))
                .toList();
    }

    /** Names that differ: those of the files without their endings, else whole, else numbered too. */
    private static List<String> apart(List<Path> paths) {
        List<String> names =
                paths.stream().map(path -> path.getFileName().toString()).toList();
        List<String> bare = names.stream()
                .map(name -> name.replaceFirst("(?<=.)\\.[^.]*$", ""))
                .toList();
        List<String> whole = paths.stream().map(Path::toString).toList();
        return Stream.of(bare, names, whole)
                .filter(all -> all.stream().distinct().count() == all.size())
                .findFirst()
                .orElseGet(() -> IntStream.range(0, bare.size())
                        .mapToObj(i -> bare.get(i) + " (" + (i + 1) + ")")
                        .toList());
    }
}
