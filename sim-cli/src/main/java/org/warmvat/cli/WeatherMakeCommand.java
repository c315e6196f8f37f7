package org.warmvat.cli;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.input.InputRefused;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.WarmvatCsvText;
import org.warmvat.weather.made.MadeYear;
import org.warmvat.weather.made.Normals;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code weather make}: a year of hours from twelve monthly means. */
@Command(
        name = "make",
        sortOptions = false,
        description = {
            "Makes a year of hourly weather from twelve monthly means: synthetic weather with the right means, spread and"
                    + " persistence, always the same for the same file and seed."
        })
final class WeatherMakeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "NORMALS", description = "File of monthly normals.")
    private Path normalsFile;

    @Option(names = "--seed", paramLabel = "N", description = "Another of many typical years (the file's seed).")
    private Optional<Long> seed = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the year (standard output).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        WeatherText.requireFree(spec, out, replace);
        if (seed.isPresent() && (seed.get() < 0 || seed.get() > NormalsFile.MOST_SEED)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--seed " + seed.get() + ", expected a whole number from 0 to " + NormalsFile.MOST_SEED);
        }
        try {
            Normals read = NormalsFile.read(normalsFile);
            Normals normals = seed.map(read::withSeed).orElse(read);
            String text = WarmvatCsvText.of(MadeYear.of(normals), MadeYear.origin(normals));
            WeatherText.write(spec, out, text);
        } catch (WeatherRefused refused) {
            throw new InputRefused(named(refused.faults()));
        } catch (NoSuchFileException missing) {
            throw new InputRefused(List.of(normalsFile + ": no such file"));
        }
        return ExitCode.DONE.number();
    }

    /** Faults that only making the year brings to light do not know the file. */
    private List<String> named(List<String> faults) {
        String name = normalsFile.getFileName().toString();
        List<String> named = new ArrayList<>();
        faults.forEach(fault -> named.add(fault.startsWith(name) ? fault : name + ": " + fault));
        return named;
    }
}
