package org.warmvat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.BackupReport;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.study.BackupResult;
import org.warmvat.study.BackupStudy;
import org.warmvat.study.Parallel;
import org.warmvat.study.StudyRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code backup}: which heater to buy? */
@Command(
        name = "backup",
        sortOptions = false,
        description = {
            "Says which heater to buy: the smallest that keeps the tank warm through one or several weather files and warms it up"
                    + " in time, the next common size, and whether coil and flow temperature are the limit instead.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class BackupCommand implements Callable<Integer> {

    private static final double MOST_HOURS = 8784;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private StudyOptions study;

    @Parameters(index = "0", arity = "0..1", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Optional<Path> designFile = Optional.empty();

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "WEATHER", description = "Weather files, hourly.")
    private List<Path> weatherFiles = List.of();

    @Option(names = "--layout", paramLabel = "L", description = "Layout file that says how every WEATHER is laid out.")
    private Optional<Path> layoutFile = Optional.empty();

    @Option(names = "--ignore-sun", description = "Leave the solar circuit out of account.")
    private boolean ignoreSun;

    @Option(
            names = "--short-hours",
            paramLabel = "N",
            defaultValue = "0",
            description = "Hours below the floor that are allowed in each file (${DEFAULT-VALUE}).")
    private double shortHours;

    @Option(
            names = "--warm-up-days",
            paramLabel = "N",
            defaultValue = "7",
            description = "Days within which a cold fill must be at the set-point (${DEFAULT-VALUE}).")
    private int warmUpDays;

    @Option(
            names = "--fill",
            paramLabel = "C",
            defaultValue = "10",
            description = "Temperature of a cold fill, °C (${DEFAULT-VALUE}).")
    private double fillC;

    @Option(
            names = "--sizes",
            paramLabel = "W",
            split = ",",
            defaultValue = "100,150,200,300,500,750,1000,1500,2000,3000,4500,6000,9000,12000,18000,24000",
            description = "Sizes of heaters that can be bought, W, with commas between (${DEFAULT-VALUE}).")
    private List<Double> sizesW;

    @Option(
            names = "--cold-spell",
            paramLabel = "K",
            defaultValue = "0",
            description = "Lower the air of the coldest week by so many kelvins (${DEFAULT-VALUE}).")
    private double coldSpellK;

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        BackupStudy.Question question = question();
        ResultsFolder folder = study.folder(BackupReport.TABLES, BackupReport.PICTURES);
        Inputs inputs = Inputs.read(designFile, weatherFiles, layoutFile, design -> {});
        BackupResult result;
        try (Parallel parallel = study.parallel(common.quiet(), "runs")) {
            result = BackupStudy.run(inputs.design().design(), inputs.weathers(), study.engine(), question, parallel);
        }
        Asked asked = inputs.asked(study.engine().name());
        study.tell(
                BackupReport.of(result, asked, question, study.pictures(() -> BackupReport.pictures(result, asked))),
                inputs,
                folder);
        return ExitCode.DONE.number();
    }

    private BackupStudy.Question question() {
        Amount.within(spec.commandLine(), "--short-hours", shortHours, 0, MOST_HOURS);
        Amount.within(spec.commandLine(), "--warm-up-days", warmUpDays, 1, 365);
        Amount.within(spec.commandLine(), "--fill", fillC, 0, 75);
        Amount.within(spec.commandLine(), "--cold-spell", coldSpellK, 0, 40);
        sizesW.forEach(size -> Amount.within(spec.commandLine(), "--sizes", size, 1, 1_000_000));
        return new BackupStudy.Question(
                shortHours, new BackupStudy.WarmUp(fillC, warmUpDays), ignoreSun, coldSpellK, sizesW);
    }
}
