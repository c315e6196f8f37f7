package org.warmvat.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.YearByYear;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.WeatherYear;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The design and the weather that most commands are asked about. */
public final class InputArguments {

    @Parameters(index = "0", arity = "0..1", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Optional<Path> designFile = Optional.empty();

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "WEATHER",
            description =
                    "Weather file, hourly; several, or one of several years, where the question takes years one by one.")
    private List<Path> weatherFiles = List.of();

    @Mixin
    private WeatherOptions weather;

    /** Whether a weather file is named. */
    public boolean hasWeather() {
        return !weatherFiles.isEmpty();
    }

    /**
     * Reads both, the weather file by file.
     *
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files
     */
    public Inputs read() {
        return read(design -> {});
    }

    /**
     * Reads both, the weather file by file.
     *
     * @param check what else is asked of the design
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files and of the check
     */
    public Inputs read(Consumer<DesignDocument> check) {
        return Inputs.read(designFile, weatherFiles, weather.way(), check);
    }

    /** A question asked of one year. */
    @FunctionalInterface
    public interface Question {
        /** The answer in the weather of its inputs, which is one year's. */
        YearByYear.Judged answer(Inputs inputs) throws Exception;
    }

    /** Asks a question of each year in turn. */
    public Document eachYear(Question question) throws Exception {
        return eachYear(read().inYears(), question);
    }

    /** The same of inputs that were read. */
    public static Document eachYear(Inputs all, Question question) throws Exception {
        List<YearByYear.Told> told = new ArrayList<>();
        for (WeatherYear year : all.years()) {
            told.add(new YearByYear.Told(year.name(), question.answer(all.in(year))));
        }
        return YearByYear.of(told);
    }

    /**
     * Reads the design alone.
     *
     * @throws org.warmvat.cli.file.InputRefused with its faults
     */
    public Inputs readDesign() {
        return Inputs.designOnly(designFile);
    }
}
