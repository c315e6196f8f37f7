package org.warmvat.cli.weather;

import org.warmvat.cli.option.CommonOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code weather}: inspects, makes and converts weather files. */
@Command(
        name = "weather",
        description = "Inspects, makes, converts and describes weather files.",
        subcommands = {
            WeatherLookCommand.class,
            WeatherMakeCommand.class,
            WeatherConvertCommand.class,
            WeatherLayoutCommand.class
        })
public final class WeatherCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say which: look, make, convert or layout.");
    }
}
