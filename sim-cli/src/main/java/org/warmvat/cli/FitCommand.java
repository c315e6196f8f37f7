package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.fit.FitAnswer;
import org.warmvat.cli.file.AdjustedText;
import org.warmvat.cli.option.FitInputs;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.design.Design;
import org.warmvat.question.fit.Factor;
import org.warmvat.question.fit.FitQuestion;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.FitStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fit}: what is the tank, by a log of it? */
@Command(
        name = "fit",
        sortOptions = false,
        description = {
            "Finds what a built tank is, not what the drawing says, from a log of its temperature: loss and heat capacity with"
                    + " intervals, what that means for a year, and a design file with what was found under adjust.",
            "A log is CSV with a first line of column names: time, slurry_c (or slurry_NAME_c for several sensors) and, where"
                    + " they were logged, air_c, global_w_m2, wind_m_s, backup_electric_w or backup_heat_w, solar_heat_w, feed_kg,"
                    + " mixer_on. What it has replaces what design and weather would say.",
            "docs/measure-your-tank.md says what to measure, how long, and what can go wrong."
        })
final class FitCommand extends RunningCommand {

    @Parameters(index = "0", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Path designFile;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "LOG", description = "Log file or files, in any order.")
    private List<Path> logFiles;

    @Option(
            names = "--weather",
            paramLabel = "W",
            description =
                    "Weather file for what the log lacks, several times for several; of each whole year the answer tells what the"
                            + " fit means for it.")
    private List<Path> weatherFiles = List.of();

    @Mixin
    private WeatherOptions weather;

    @Option(names = "--log-layout", paramLabel = "L", description = "Layout file that says how the logs are laid out.")
    private Optional<Path> logLayoutFile = Optional.empty();

    @Option(
            names = "--factors",
            paramLabel = "NAME",
            split = ",",
            description =
                    "What to find, with commas between: envelope, fittings, capacity, solar_coil, backup_coil, collector"
                            + " (envelope,capacity; capacity is held where the log cannot tell it).")
    private List<String> factors = List.of();

    @Option(names = "--sensor", paramLabel = "NAME", description = "Which sensor of several (the mean of all).")
    private Optional<String> sensor = Optional.empty();

    @Override
    public Document document() throws Exception {
        FitQuestion question = question();
        FitInputs inputs = FitInputs.read(
                new FitInputs.Named(designFile, logFiles, weatherFiles), weather.way(), logLayoutFile, sensor);
        Inputs all = inputs.all();
        Inputs years = all.inYears();
        Design design = all.design().design();
        FitResult result = run().parallel(
                        "runs of the year",
                        parallel -> FitStudy.run(
                                design,
                                inputs.log(),
                                all.weathers(),
                                years.weathers(),
                                question,
                                run().engine(),
                                parallel));
        return FitAnswer.of(
                result,
                years.asked(run()),
                result.fitted().map(fitted -> AdjustedText.of(inputs.designText(), fitted)));
    }

    private FitQuestion question() {
        if (factors.isEmpty()) {
            return FitQuestion.USUAL;
        }
        Set<Factor> wanted = new LinkedHashSet<>();
        for (String name : factors) {
            wanted.add(Factor.ofKey(name.strip())
                    .orElseThrow(() -> run().wrong("--factors " + name
                            + ", expected envelope, fittings, capacity, solar_coil, backup_coil or collector")));
        }
        return new FitQuestion(new ArrayList<>(wanted), true);
    }
}
