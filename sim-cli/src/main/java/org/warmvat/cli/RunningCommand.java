package org.warmvat.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;

/** A command that runs tanks and answers. */
abstract class RunningCommand implements Answering, Callable<Integer> {

    @Mixin
    private RunOptions run;

    final RunOptions run() {
        return run;
    }

    @Override
    public final Integer call() throws Exception {
        return run.answer(this::document);
    }
}
