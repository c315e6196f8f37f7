package org.warmvat.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.YearByYear;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
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
     * Reads both.
     *
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files
     */
    public Inputs read() {
        return read(design -> {});
    }

    /** Reads the design and the weather of one or several years, in one or several files. */
    public Inputs readYears() {
        return Inputs.read(designFile, weatherFiles, weather.way(), design -> {});
    }

    /** The years of files that were read, each named by its file, by its year too where the file holds several. */
    public List<WeatherYear> years(Inputs inputs) {
        List<String> names = new ArrayList<>();
        List<WeatherYear> years = new ArrayList<>();
        for (int i = 0; i < inputs.weathers().size(); i++) {
            String name = weatherFiles.isEmpty()
                    ? "built-in demonstration"
                    : weatherFiles.get(i).getFileName().toString();
            long before = names.stream().filter(name::equals).count();
            names.add(name);
            years.addAll(WeatherYear.of(
                    before == 0 ? name : name + " (" + (before + 1) + ")",
                    inputs.weathers().get(i)));
        }
        return years;
    }

    /** The same with the weather year by year, for a question that looks at all years at once. */
    public Inputs inYears() {
        Inputs all = readYears();
        return new Inputs(
                all.given(), years(all).stream().map(WeatherYear::weather).toList(), all.files(), all.invented());
    }

    /** A question asked of one year. */
    @FunctionalInterface
    public interface Question {
        /** The answer in the weather of its inputs, which is one year's. */
        Document answer(Inputs inputs) throws Exception;
    }

    /**
     * Asks a question of each year in turn; of one year its answer is the answer.
     *
     * @param question asked of each
     * @param badness of the figures of an answer: the more, the worse the year
     */
    public Document eachYear(Question question, ToDoubleFunction<Map<String, Object>> badness) throws Exception {
        Inputs all = readYears();
        List<WeatherYear> years = years(all);
        if (years.size() == 1) {
            return question.answer(all);
        }
        List<YearByYear.Told> told = new ArrayList<>();
        for (WeatherYear year : years) {
            Inputs one = new Inputs(all.given(), List.of(year.weather()), all.files(), all.invented());
            told.add(new YearByYear.Told(year.name(), question.answer(one)));
        }
        return YearByYear.of(told, badness);
    }

    /**
     * Reads both.
     *
     * @param check what else is asked of the design
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files and of the check
     */
    public Inputs read(Consumer<DesignDocument> check) {
        if (weatherFiles.size() > 1) {
            throw new InputRefused(
                    List.of(weatherFiles.size() + " weather files, expected one: this question takes no several"));
        }
        return Inputs.read(designFile, weatherFiles, weather.way(), check);
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
