package org.warmvat.cli;

import java.util.concurrent.Callable;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.LayoutDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code schema}: prints the JSON Schema of the design file or the layout file, for editors that complete and check keys. */
@Command(name = "schema", description = "Prints the JSON Schema of the design file, or of the layout file.")
final class SchemaCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Option(names = "--layout", description = "Print the schema of layout files instead.")
    private boolean layout;

    @Override
    public Integer call() {
        String schema = layout ? LayoutDocument.schema() : DesignDocument.schema();
        spec.commandLine().getOut().println(schema.strip());
        spec.commandLine().getOut().flush();
        return ExitCode.DONE.number();
    }
}
