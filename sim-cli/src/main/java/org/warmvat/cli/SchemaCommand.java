package org.warmvat.cli;

import java.util.concurrent.Callable;
import org.warmvat.cli.input.DesignDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code schema}: prints the JSON Schema of the design file, for editors that complete and check keys. */
@Command(name = "schema", description = "Prints the JSON Schema of the design file.")
final class SchemaCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Override
    public Integer call() {
        spec.commandLine().getOut().println(DesignDocument.schema().strip());
        spec.commandLine().getOut().flush();
        return ExitCode.DONE.number();
    }
}
