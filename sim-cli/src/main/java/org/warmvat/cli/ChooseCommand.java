package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.PartAnswer;
import org.warmvat.cli.answer.choose.ChooseAnswer;
import org.warmvat.cli.file.ChoicesDocument;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.ManyRuns;
import org.warmvat.cli.option.Partable;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.option.Shard;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.question.choose.Aim;
import org.warmvat.question.choose.Catalogue;
import org.warmvat.question.choose.ChooseResult;
import org.warmvat.question.choose.ChooseStudy;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code choose}: the design found among what can be bought. */
@Command(
        name = "choose",
        sortOptions = false,
        description = {
            "Finds the design that costs least a year, or gives most net energy, or buys least energy for heat, among what can be bought"
                    + " and within limits; tells the runner-up, the five that come next, which choice matters most, and what is saved"
                    + " against the design as drawn.",
            "Prices are inputs: docs/examples/choices.yaml is an invented list to begin with. No advice to invest.",
            "Without weather the built-in invented demonstration's is used."
        })
final class ChooseCommand extends RunningCommand implements Partable {

    @Parameters(index = "0", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Path designFile;

    @Parameters(
            index = "1",
            paramLabel = "CHOICES",
            description = "What can be bought, at what prices, within what limits; YAML or JSON.")
    private Path choicesFile;

    @Parameters(
            index = "2..*",
            arity = "0..*",
            paramLabel = "WEATHER",
            description = "Weather files, hourly; one of several years is cut into them.")
    private List<Path> weatherFiles = List.of();

    @Mixin
    private WeatherOptions weather;

    @Option(
            names = "--by",
            paramLabel = "AIM",
            description = "What is to be best: cost, net or bought; wins over the file of choices.")
    private Optional<Aim> by = Optional.empty();

    @Mixin
    private ManyRuns many;

    @Override
    public ManyRuns many() {
        return many;
    }

    @Override
    public Document document() throws Exception {
        byte[] bytes = Inputs.bytes(choicesFile);
        List<ChoicesDocument.Choices> read = new ArrayList<>();
        Inputs inputs = Inputs.read(
                        Optional.of(designFile),
                        weatherFiles,
                        weather.way(),
                        design -> read.add(ChoicesDocument.read(choicesFile.toString(), bytes, design)))
                .inYears()
                .with(InputFile.of("choices", choicesFile.getFileName().toString(), bytes));
        ChoicesDocument.Choices choices = read.get(0);
        Catalogue catalogue = choices.catalogue();
        List<Weather> years = inputs.weathers();
        Aim best = by.orElse(choices.by());
        if (many.isPart()) {
            Shard part = many.part(run());
            int runs = many.on(
                    run(),
                    inputs,
                    "runs",
                    parallel -> ChooseStudy.runPart(
                            catalogue, best, years, run().engine(), parallel, part.number(), part.of()));
            return PartAnswer.of(inputs.asked(run()), "chosen", part.number(), part.of(), runs, many.journal())
                    .done();
        }
        ChooseResult result = many.on(
                run(),
                inputs,
                "runs",
                parallel -> ChooseStudy.run(catalogue, best, years, run().engine(), ChooseStudy.Way.USUAL, parallel));
        return ChooseAnswer.of(result, catalogue, inputs.asked(run()), choices.assumed());
    }
}
