package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.option.CommonOptions;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.doubt.SunCheck;
import org.warmvat.weather.file.WarmvatCsvText;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** {@code weather convert}: any hourly text to Warmvat's own file. */
@Command(
        name = "convert",
        sortOptions = false,
        description = {
            "Writes a file of a public service, or any hourly text that a layout file describes, as a Warmvat weather file, with"
                    + " gaps filled and doubts told; puts its stamp or its clock right where asked to."
        })
final class WeatherConvertCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE", description = "Hourly text.")
    private Path file;

    @Mixin
    private WeatherOptions reading;

    @Option(
            names = "--stamp",
            paramLabel = "WORD",
            converter = StampConverter.class,
            description =
                    "The times name this moment of their hour, whatever the file says: hour_start, hour_middle or hour_end.")
    private Optional<Stamp> stamp = Optional.empty();

    @Option(
            names = "--utc-offset",
            paramLabel = "H",
            description = "The times are of a clock so many hours ahead of universal time, whatever the file says.")
    private Optional<Double> utcOffsetH = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the weather (standard output).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        WeatherText.requireFree(spec, out, replace);
        if (utcOffsetH.isPresent() && !(utcOffsetH.get() >= -12 && utcOffsetH.get() <= 14)) {
            throw new ParameterException(
                    spec.commandLine(), "--utc-offset " + utcOffsetH.get() + ", expected hours from -12 to 14");
        }
        HourlyTable read = Inputs.weather(Optional.of(file), reading.way(), new ArrayList<>())
                .table();
        HourlyTable stamped = stamp.map(read::stamped).orElse(read);
        Weather weather = new Weather(utcOffsetH.map(stamped::onClock).orElse(stamped));
        WeatherText.write(spec, out, WarmvatCsvText.of(weather.table(), "converted from " + file.getFileName()));
        if (!common.quiet()) {
            weather.table().notes().forEach(spec.commandLine().getErr()::println);
            SunCheck.sentence(weather).ifPresent(spec.commandLine().getErr()::println);
            Doubts.of(weather).stream()
                    .map(Doubt::sentence)
                    .forEach(spec.commandLine().getErr()::println);
        }
        return ExitCode.DONE.number();
    }

    /** Stamps by the words of weather files. */
    static final class StampConverter implements ITypeConverter<Stamp> {
        @Override
        public Stamp convert(String word) {
            return Arrays.stream(Stamp.values())
                    .filter(stamp -> stamp.key().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(
                            "\"" + word + "\", expected hour_start, hour_middle or hour_end"));
        }
    }
}
