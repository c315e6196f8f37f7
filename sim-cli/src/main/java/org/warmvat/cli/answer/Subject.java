package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherYear;

/**
 * What a command was asked about.
 *
 * @param command name of the command
 * @param given the design, absent where only weather is asked about
 * @param years the weather, file by file or year by year as the question takes it; none where only a design is asked about
 * @param engine name of the engine, empty where nothing runs
 * @param reading what the reading of both said
 */
public record Subject(
        String command, Optional<Design> given, List<WeatherYear> years, String engine, InputReading reading) {

    private static final int LEAP_YEAR_HOURS = 8784;
    private static final String NOT_GIVEN = " not given: ";

    /**
     * What the reading of the inputs said.
     *
     * @param files the files, hashed, in the order of the command line
     * @param invented one sentence for each input that is the built-in demonstration
     * @param assumed every default of the design that is used
     * @param cautions what the design file is allowed but deserves a word
     */
    public record InputReading(
            List<InputFile> files, List<String> invented, List<String> assumed, List<String> cautions) {}

    /** The design; only where there is one. */
    public Design design() {
        return given.orElseThrow();
    }

    /** The weather of all years. */
    public List<Weather> weathers() {
        return years.stream().map(WeatherYear::weather).toList();
    }

    /** The weather, the first where there are several. */
    public Weather weather() {
        return years.get(0).weather();
    }

    String title() {
        return given.map(Design::title).orElseGet(() -> weather().site().name());
    }

    /** The lines of the design's title block. */
    List<String> titleBlock() {
        return given.flatMap(Design::project).stream()
                .flatMap(project -> Stream.of(
                        project.client().map(text -> "For: " + text),
                        project.author().map(text -> "By: " + text),
                        project.date().map(text -> "Date: " + text),
                        project.note().map(text -> "Note: " + text)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Tank, weather and engine in a line. */
    String subtitle() {
        StringBuilder line = new StringBuilder();
        given.ifPresent(design -> line.append(Words.fixed(design.tank().liquidVolumeM3() * 1000, 0))
                .append(" litres of slurry, set-point ")
                .append(Words.celsius(design.control().setpointC()))
                .append(", minimum ")
                .append(minimum()));
        if (!years.isEmpty()) {
            line.append(line.isEmpty() ? "Weather of " : "; weather of ")
                    .append(Words.list(
                            weathers().stream().map(Subject::named).distinct().toList()));
        }
        return line.append(engine.isEmpty() ? "" : "; " + engine + " engine").toString();
    }

    private static String named(Weather weather) {
        return weather.site().name() + ", " + weather.hours() + " hours from "
                + Words.day(weather.start().toLocalDate(), true);
    }

    /** One of several years by its name. */
    public String yearName(int year) {
        return years.get(year).name();
    }

    /** The minimum temperature in words. */
    public String minimum() {
        return Words.celsius(design().control().minimumC());
    }

    /** The months of the calendar that the first weather file holds hours of. */
    public List<Month> months() {
        return IntStream.range(0, weather().hours())
                .mapToObj(hour -> weather().start().plusHours(hour).getMonth())
                .distinct()
                .sorted()
                .toList();
    }

    /** Keys of the design file that are left to their defaults. */
    public Set<String> unstated() {
        return reading.assumed().stream()
                .filter(sentence -> sentence.contains(NOT_GIVEN))
                .map(sentence -> sentence.substring(0, sentence.indexOf(NOT_GIVEN)))
                .collect(Collectors.toSet());
    }

    /** Whether the design leaves out a price that counts, so that sums of money are but examples. */
    public boolean pricesAreExamples() {
        Set<String> unstated = unstated();
        return priced().stream().anyMatch(energy -> unstated.contains("prices." + energy + "_per_kwh"));
    }

    private List<String> priced() {
        boolean fuel = design().backup()
                .map(BackupCircuit::source)
                .filter(BackupSource.FUEL::equals)
                .isPresent();
        List<String> priced = new ArrayList<>(List.of("electricity"));
        if (fuel) {
            priced.add("fuel");
        }
        if (design().gas().isPresent()) {
            priced.add("gas_worth");
        }
        return priced;
    }

    /** Name of the money of a year: the design's own, or a word that its prices of energy are but examples. */
    public String currency() {
        return pricesAreExamples()
                ? MoneySentences.AT_EXAMPLES
                : design().prices().currency();
    }

    /** Name of the money paid once: the design's own where it states every price of what is bought, else the same word. */
    public String currencyOnce() {
        return unstated().stream().anyMatch(key -> key.matches("prices\\..*_per_(m3|m2|kw)"))
                ? MoneySentences.AT_EXAMPLES
                : design().prices().currency();
    }

    /** Name of the money where what is paid once is held against what a year saves. */
    public String currencyOfPayback() {
        return pricesAreExamples() ? currency() : currencyOnce();
    }

    /** A day in words, with its year where days of the year come more than once. */
    public String day(LocalDate date) {
        return Words.day(date, withYear());
    }

    /** Whether a date needs its year to be told. */
    private boolean withYear() {
        return weathers().stream().anyMatch(weather -> weather.hours() > LEAP_YEAR_HOURS);
    }
}
