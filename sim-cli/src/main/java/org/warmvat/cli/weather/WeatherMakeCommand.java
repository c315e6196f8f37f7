package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.TextOptions;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.WarmvatCsvText;
import org.warmvat.weather.made.MadeYear;
import org.warmvat.weather.made.MadeYears;
import org.warmvat.weather.made.Normals;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code weather make}: a year of hours from twelve monthly means. */
@Command(
        name = "make",
        sortOptions = false,
        description = {
            "Makes a year of hourly weather from twelve monthly means: synthetic weather with the right means, spread and"
                    + " persistence, always the same for the same file and seed. With --years several years that differ as real ones do."
        })
final class WeatherMakeCommand implements Callable<Integer> {

    @Mixin
    private TextOptions options;

    @Parameters(index = "0", paramLabel = "NORMALS", description = "File of monthly normals.")
    private Path normalsFile;

    @Option(names = "--seed", paramLabel = "N", description = "Another of many typical years (the file's seed).")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--years",
            paramLabel = "N",
            description =
                    "Make N years in a row with seeds 1 to N, each month's air and sun drawn anew about the normals.")
    private Optional<Integer> years = Optional.empty();

    @Override
    public Integer call() throws IOException {
        options.requireFree();
        if (seed.isPresent() && (seed.get() < 0 || seed.get() > NormalsFile.MOST_SEED)) {
            throw options.wrong(
                    "--seed " + seed.get() + ", expected a whole number from 0 to " + NormalsFile.MOST_SEED);
        }
        if (years.isPresent() && (seed.isPresent() || years.get() < 1 || years.get() > MadeYears.MOST_YEARS)) {
            throw options.wrong(
                    "--years " + years.get() + ", expected 1 to " + MadeYears.MOST_YEARS + " and no --seed beside it");
        }
        try {
            Normals read = NormalsFile.read(normalsFile);
            options.write(years.isPresent() ? many(read, years.get()) : one(read));
        } catch (WeatherRefused refused) {
            throw new InputRefused(named(refused.faults()));
        } catch (NoSuchFileException missing) {
            throw new InputRefused(normalsFile + ": no such file");
        }
        return ExitCode.DONE.number();
    }

    private String one(Normals read) throws WeatherRefused {
        Normals normals = seed.map(read::withSeed).orElse(read);
        return WarmvatCsvText.of(MadeYear.of(normals), MadeYear.origin(normals));
    }

    private String many(Normals normals, int count) throws WeatherRefused {
        String origin = MadeYears.origin(normals, count);
        options.tell("Made " + origin + ".");
        return WarmvatCsvText.of(MadeYears.of(normals, count), origin);
    }

    /** Faults that only making the year brings to light do not know the file. */
    private List<String> named(List<String> faults) {
        String name = normalsFile.getFileName().toString();
        List<String> named = new ArrayList<>();
        faults.forEach(fault -> named.add(fault.startsWith(name) ? fault : name + ": " + fault));
        return named;
    }
}
