package org.warmvat.cli.option;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Subject;
import org.warmvat.question.Steadiness;
import org.warmvat.tank.Runner;
import picocli.CommandLine.Mixin;

/** A command that runs tanks and answers. */
public abstract class RunningCommand implements Answering, Callable<Integer> {

    @Mixin
    private RunOptions run;

    /** How the tank is run. */
    public final RunOptions run() {
        return run;
    }

    /** What it costs to be steady, over the first year of the weather by the everyday engine. */
    public final Optional<Steadiness> steadiness(Subject asked) throws Exception {
        return run.parallel("runs", parallel -> Steadiness.of(asked.design(), firstYear(asked), parallel));
    }

    /** The first year of the weather by the everyday engine: what is asked of it is far more than what the engines differ by. */
    public static Runner firstYear(Subject asked) {
        return new Runner(asked.weather(), EngineChoice.FAST.engine());
    }

    @Override
    public final Integer call() throws Exception {
        return run.answer(this::document);
    }
}
