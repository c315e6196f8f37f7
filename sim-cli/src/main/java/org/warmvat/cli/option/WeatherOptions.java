package org.warmvat.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import org.warmvat.weather.file.Reading;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options wherever weather is read. */
public final class WeatherOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--layout",
            paramLabel = "L",
            description = "Layout file that says how the weather file is laid out (every one, of several).")
    private Optional<Path> layoutFile = Optional.empty();

    @Option(
            names = "--fill-holes",
            paramLabel = "HOURS",
            defaultValue = "0",
            description = "Fill holes of up to so many hours from the days before and after, counted and marked"
                    + " (${DEFAULT-VALUE}; up to 6 hours are filled by straight lines anyway).")
    private int fillHolesH;

    /**
     * How weather is read.
     *
     * @param layoutFile layout of every file, absent where the files are to be recognised
     * @param fillHolesH longest hole that is filled
     */
    public record Way(Optional<Path> layoutFile, int fillHolesH) {}

    /** How weather files are read. */
    public Way way() {
        if (fillHolesH < 0 || fillHolesH > Reading.MOST_FILL_HOLES_H) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--fill-holes " + fillHolesH + ", expected a whole number of hours, 0 to "
                            + Reading.MOST_FILL_HOLES_H);
        }
        return new Way(layoutFile, fillHolesH);
    }
}
