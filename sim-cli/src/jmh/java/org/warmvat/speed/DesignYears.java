package org.warmvat.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.question.Parallel;
import org.warmvat.question.Variations;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;

/**
 * Times of whole runs on the demonstration. What belongs to the weather and the collector's plane is prepared before the clock
 * starts, as it is shared by all runs of a study; assembling the network and its steady start are inside.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DesignYears {

    /** The demonstration as shipped, for either engine. */
    @State(Scope.Benchmark)
    public static class AnyEngine {

        /** Which engine. */
        @Param({"reference", "fast"})
        public String engine;

        private Design design;
        private Runner runner;

        /** Prepares weather and sun. */
        @Setup(Level.Trial)
        public void prepare() {
            design = Demonstration.design();
            runner = new Runner(Demonstration.weather(1), Demonstration.engine(engine));
            runner.start(design, 0);
        }
    }

    /** The demonstration in weather that repeats. */
    @State(Scope.Benchmark)
    public static class Lengthened {

        /** Years of weather. */
        @Param({"1", "2", "5", "10"})
        public int years;

        private Design design;
        private Runner runner;

        /** Prepares weather and sun. */
        @Setup(Level.Trial)
        public void prepare() {
            design = Demonstration.design();
            runner = new Runner(Demonstration.weather(years), Demonstration.engine("fast"));
            runner.start(design, 0);
        }
    }

    /** The demonstration with its foam cut finer. */
    @State(Scope.Benchmark)
    public static class Fine {

        /** Nodes of the network. */
        @Param({"20", "40", "80"})
        public int nodes;

        private Design design;
        private Runner runner;

        /** Prepares weather and sun. */
        @Setup(Level.Trial)
        public void prepare() {
            design = Demonstration.design(nodes);
            runner = new Runner(Demonstration.weather(1), Demonstration.engine("fast"));
            runner.start(design, 0);
        }
    }

    /** Eight designs that differ in their collectors. */
    @State(Scope.Benchmark)
    public static class Many {

        private static final int DESIGNS = 8;

        /** Threads that share the designs. */
        @Param({"1", "2"})
        public int threads;

        private final List<Design> designs = new ArrayList<>();
        private Runner runner;
        private Parallel parallel;

        /** Prepares weather, sun and threads. */
        @Setup(Level.Trial)
        public void prepare() {
            runner = new Runner(Demonstration.weather(1), Demonstration.engine("fast"));
            for (int i = 0; i < DESIGNS; i++) {
                designs.add(Variations.withCollectorArea(Demonstration.design(), 1 + 0.25 * i));
                runner.start(designs.get(i), 0);
            }
            parallel = new Parallel(threads, Parallel.Progress.SILENT);
        }

        /** Stops the threads. */
        @TearDown(Level.Trial)
        public void stop() {
            parallel.close();
        }
    }

    /** A year from a steady start, no run-in. */
    @Benchmark
    public double year(AnyEngine any) {
        return run(any.runner, any.design);
    }

    /** A year with its run-in, summed up by months as the studies do. */
    @Benchmark
    public BriefYear yearAndRunIn(AnyEngine any) throws StudyRefused {
        return BriefYear.run(any.design, any.runner);
    }

    /** Some years on end. */
    @Benchmark
    public double hours(Lengthened one) {
        return run(one.runner, one.design);
    }

    /** A year of a network of some nodes. */
    @Benchmark
    public double nodes(Fine one) {
        return run(one.runner, one.design);
    }

    /** Eight years that have nothing to do with each other. */
    @Benchmark
    public List<Double> threads(Many many) {
        return many.parallel.map(many.designs, design -> run(many.runner, design));
    }

    private static double run(Runner runner, Design design) {
        TankRun run = runner.start(design, 0);
        run.over(new Hours(0, runner.file().hours()), HourSink.IGNORE);
        return run.slurryC();
    }
}
