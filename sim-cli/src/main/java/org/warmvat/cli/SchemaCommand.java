package org.warmvat.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.LayoutDocument;
import org.warmvat.cli.file.LogLayoutDocument;
import org.warmvat.cli.option.CommonOptions;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.design.feeding.FeedMaterial;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code schema}: prints the JSON Schema of the design file or of a layout file, for editors that complete and check keys. */
@Command(name = "schema", description = "Prints the JSON Schema of the design file, or of a layout file.")
final class SchemaCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Option(names = "--layout", description = "Print the schema of layout files of weather instead.")
    private boolean layout;

    @Option(names = "--log-layout", description = "Print the schema of layout files of logs instead.")
    private boolean logLayout;

    @Option(
            names = "--feedstocks",
            description = "Print the catalogue of feedstocks instead: low, middle and high of each.")
    private boolean feedstocks;

    @Override
    public Integer call() {
        String schema =
                layout ? LayoutDocument.schema() : logLayout ? LogLayoutDocument.schema() : DesignDocument.schema();
        common.print((feedstocks ? catalogue() : schema.strip()) + System.lineSeparator());
        return ExitCode.DONE.number();
    }

    private static String catalogue() {
        StringBuilder table =
                new StringBuilder(row("material", "total solids", "volatile of total", "Nm3 CH4/kg VS", "rate 1/day"));
        for (FeedMaterial material : FeedMaterial.values()) {
            table.append(row(
                    material.word(),
                    band(material.totalSolids()),
                    band(material.volatileOfTotal()),
                    band(material.methaneNm3PerKgVs()),
                    band(material.ratePerDay())));
        }
        return table.append("Low, middle, high; sources stand in docs/design-file.md.")
                .toString();
    }

    private static String band(FeedMaterial.Band band) {
        return String.format(Locale.ROOT, "%.2f %.2f %.2f", band.low(), band.middle(), band.high());
    }

    private static String row(String... cells) {
        return String.format(Locale.ROOT, "%-18s  %-17s  %-17s  %-17s  %s%n", (Object[]) cells);
    }
}
