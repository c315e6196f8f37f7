package org.warmvat.cli;

import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.backup.BackupAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.backup.BackupStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code backup}: which heater to buy? */
@Command(
        name = "backup",
        sortOptions = false,
        description = {
            "Says which heater to buy: the smallest that keeps the tank warm through one or several weather files and warms it up"
                    + " in time, the next common size, and whether coil and flow temperature are the limit instead.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class BackupCommand extends RunningCommand {

    private static final double MOST_HOURS = 8784;

    @Mixin
    private InputArguments arguments;

    @Option(names = "--ignore-sun", description = "Leave the solar circuit out of account.")
    private boolean ignoreSun;

    @Option(
            names = "--short-hours",
            paramLabel = "N",
            defaultValue = "0",
            description = "Hours below the minimum temperature that are allowed in each file (${DEFAULT-VALUE}).")
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

    @Option(
            names = "--reserve",
            paramLabel = "K",
            defaultValue = "10",
            description =
                    "Also tell the heater for a coldest week so many kelvins colder, 0 for none (${DEFAULT-VALUE}).")
    private double reserveK;

    @Override
    public Document document() throws Exception {
        BackupStudy.Question question = question();
        Inputs inputs = arguments.read().inYears();
        BackupResult result = run().parallel(
                        "runs",
                        parallel -> BackupStudy.run(
                                inputs.design().design(), inputs.weathers(), run().engine(), question, parallel));
        Optional<BackupAnswer.Reserve> reserve =
                reserveK > coldSpellK ? Optional.of(reserve(inputs, question)) : Optional.empty();
        Subject asked = inputs.asked(run());
        return BackupAnswer.of(result, new BackupAnswer.Beside(reserve, steadiness(asked)), asked, question);
    }

    private BackupAnswer.Reserve reserve(Inputs inputs, BackupStudy.Question question) throws Exception {
        return run().parallel(
                        "runs",
                        parallel -> new BackupAnswer.Reserve(
                                reserveK,
                                BackupStudy.need(
                                        inputs.design().design(),
                                        inputs.weathers(),
                                        run().engine(),
                                        question.withColdSpell(reserveK),
                                        parallel)));
    }

    private BackupStudy.Question question() {
        run().within("--short-hours", shortHours, 0, MOST_HOURS);
        run().within("--warm-up-days", warmUpDays, 1, 365);
        run().within("--fill", fillC, 0, 75);
        run().within("--cold-spell", coldSpellK, 0, 40);
        run().within("--reserve", reserveK, 0, 40);
        sizesW.forEach(size -> run().within("--sizes", size, 1, 1_000_000));
        return new BackupStudy.Question(
                shortHours, new BackupStudy.WarmUp(fillC, warmUpDays), ignoreSun, coldSpellK, sizesW);
    }
}
