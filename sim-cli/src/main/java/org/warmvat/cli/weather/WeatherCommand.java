package org.warmvat.cli.weather;

import org.warmvat.cli.option.CommonOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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

    @Mixin
    private CommonOptions common;

    @Override
    public void run() {
        throw common.wrong("Say which: look, make, convert or layout.");
    }
}
