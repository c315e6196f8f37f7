package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.TextOptions;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.doubt.SunCheck;
import org.warmvat.weather.file.WarmvatCsvText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code weather convert}: any hourly text to Warmvat's own file. */
@Command(
        name = "convert",
        sortOptions = false,
        description = {
            "Writes a file of a public service, or any hourly text that a layout file describes, as a Warmvat weather file, with"
                    + " gaps filled and doubts told; puts its stamp or its clock right where asked to."
        })
final class WeatherConvertCommand implements Callable<Integer> {

    @Mixin
    private TextOptions options;

    @Parameters(index = "0", paramLabel = "FILE", description = "Hourly text.")
    private Path file;

    @Mixin
    private WeatherOptions reading;

    @Option(
            names = "--stamp",
            paramLabel = "WORD",
            description =
                    "The times name this moment of their hour, whatever the file says: hour_start, hour_middle or hour_end.")
    private Optional<Stamp> stamp = Optional.empty();

    @Option(
            names = "--utc-offset",
            paramLabel = "H",
            description = "The times are of a clock so many hours ahead of universal time, whatever the file says.")
    private Optional<Double> utcOffsetH = Optional.empty();

    @Override
    public Integer call() throws IOException {
        options.requireFree();
        utcOffsetH.ifPresent(hours -> options.within("--utc-offset", hours, -12, 14));
        HourlyTable read =
                Inputs.weatherOnly(Optional.of(file), reading.way()).weather().table();
        HourlyTable stamped = stamp.map(read::stamped).orElse(read);
        Weather weather = new Weather(utcOffsetH.map(stamped::onClock).orElse(stamped));
        options.write(WarmvatCsvText.of(weather.table(), "converted from " + file.getFileName()));
        weather.table().notes().forEach(options::tell);
        options.tell(SunCheck.sentence(weather));
        Doubts.of(weather).stream().map(Doubt::sentence).forEach(options::tell);
        return ExitCode.DONE.number();
    }
}
