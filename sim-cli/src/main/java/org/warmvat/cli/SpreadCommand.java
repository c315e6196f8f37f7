package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.PartAnswer;
import org.warmvat.cli.answer.spread.SpreadAnswer;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.file.UncertainDocument;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.ManyRuns;
import org.warmvat.cli.option.Partable;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.option.Shard;
import org.warmvat.design.Design;
import org.warmvat.question.Figures;
import org.warmvat.question.spread.DrawRefused;
import org.warmvat.question.spread.SpreadStudy;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.question.spread.UncertainTank;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code spread}: how far may the answer lie? */
@Command(
        name = "spread",
        sortOptions = false,
        description = {
            "Says how far the year's figures may lie when inputs are not known well and years differ: bands, the chance that the net"
                    + " energy is above zero and that no hour is short, and which inputs the spread comes from.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class SpreadCommand extends RunningCommand implements Partable {

    private static final double MOST_SEED = Integer.MAX_VALUE;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--uncertain",
            paramLabel = "FILE",
            description = "File of uncertain inputs, KEY: {low, high} (the program's proposal).")
    private Optional<Path> uncertainFile = Optional.empty();

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "200",
            description =
                    "How many draws the bands and chances come from (${DEFAULT-VALUE}). To say which inputs the spread comes"
                            + " from takes about half as many runs again for each input.")
    private int draws;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Another of many samples of draws (${DEFAULT-VALUE}).")
    private long seed;

    @Mixin
    private ManyRuns many;

    @Override
    public ManyRuns many() {
        return many;
    }

    @Override
    public Document document() throws Exception {
        run().within("--draws", draws, SpreadStudy.FEWEST, SpreadStudy.MOST);
        run().within("--seed", (double) seed, 0, MOST_SEED);
        Inputs read = arguments.read().inYears();
        Inputs inputs = uncertainFile
                .map(file ->
                        read.with(InputFile.of("uncertain", file.getFileName().toString(), Inputs.bytes(file))))
                .orElse(read);
        Design design = inputs.design().design();
        List<Uncertain> uncertain = uncertainFile
                .map(file -> UncertainDocument.read(file.toString(), Inputs.bytes(file), design))
                .orElseGet(() -> UncertainDocument.proposal(design));
        SpreadStudy study =
                new SpreadStudy(new UncertainTank(design, uncertain), inputs.years(), run().engine(), draws, seed);
        Shard part = many.part(run());
        List<Figures> runs = runs(study, inputs, part.from(study.runs()), part.to(study.runs()));
        return many.isPart()
                ? PartAnswer.of(inputs.asked(run()), "spread", part.number(), part.of(), runs.size(), many.journal())
                        .done()
                : SpreadAnswer.of(study.result(runs), inputs.asked(run()), uncertainFile.isEmpty());
    }

    private List<Figures> runs(SpreadStudy study, Inputs inputs, int from, int to) throws Exception {
        List<Figures> runs = new ArrayList<>(to - from);
        try {
            study.check();
            return many.on(run(), inputs, "runs", parallel -> {
                parallel.runs(to - from, index -> from + index, index -> study.run(from + index), runs::add);
                return runs;
            });
        } catch (DrawRefused refused) {
            throw new InputRefused(
                    uncertainFile.map(Path::toString).orElse("the proposal") + ": " + refused.getMessage());
        }
    }
}
