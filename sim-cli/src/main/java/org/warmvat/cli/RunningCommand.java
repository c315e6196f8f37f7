package org.warmvat.cli;

import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Document;
import picocli.CommandLine.Mixin;

/** A command that runs tanks and answers. */
abstract class RunningCommand implements Callable<Integer> {

    @Mixin
    private RunOptions run;

    final RunOptions run() {
        return run;
    }

    /** Checks the options, reads the inputs, runs the tanks and tells what was found. */
    abstract Document document() throws Exception;

    @Override
    public final Integer call() throws Exception {
        return run.answer(this::document);
    }
}
