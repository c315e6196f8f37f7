package org.warmvat.speed;

import com.sun.management.ThreadMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.tank.Runner;
import org.warmvat.tank.TankRun;

/**
 * The same runs as {@link DesignYears} on one thread, told in the thread's own processor time, for machines that others use at the
 * same time: the cases take turns, and the median of the rounds is shown.
 */
public final class ProcessorTimes {

    private static final int WARMING_ROUNDS = 4;
    private static final double NS_PER_MS = 1e6;
    private static final double BYTES_PER_KB = 1024;

    private final String name;
    private final Design design;
    private final Runner runner;
    private final List<Double> ms = new ArrayList<>();
    private double allocatedKB;

    private ProcessorTimes(String name, Design design, String engine, int years) {
        this.name = name;
        this.design = design;
        runner = new Runner(Demonstration.weather(years), Demonstration.engine(engine));
        runner.start(design, 0);
    }

    /**
     * Runs all cases.
     *
     * @param args how many rounds count; 9 when absent
     */
    public static void main(String[] args) {
        int rounds = args.length == 0 ? 9 : Integer.parseInt(args[0]);
        List<ProcessorTimes> cases = new ArrayList<>();
        for (int years : new int[] {1, 2, 5, 10}) {
            cases.add(new ProcessorTimes("fast, years: " + years, Demonstration.design(), "fast", years));
        }
        for (int nodes : new int[] {20, 40, 80}) {
            cases.add(new ProcessorTimes("fast, nodes: " + nodes, Demonstration.design(nodes), "fast", 1));
        }
        cases.add(new ProcessorTimes("reference, years: 1", Demonstration.design(), "reference", 1));
        for (int round = -WARMING_ROUNDS; round < rounds; round++) {
            for (ProcessorTimes one : cases) {
                one.run(round >= 0);
            }
        }
        print(cases, new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    private void run(boolean counts) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        TankRun run = runner.start(design, 0);
        long bytes = threads.getCurrentThreadAllocatedBytes();
        long begin = threads.getCurrentThreadCpuTime();
        run.over(new Hours(0, runner.file().hours()), HourSink.IGNORE);
        if (counts) {
            ms.add((threads.getCurrentThreadCpuTime() - begin) / NS_PER_MS);
            allocatedKB = (threads.getCurrentThreadAllocatedBytes() - bytes) / BYTES_PER_KB;
        }
    }

    private double median() {
        double[] sorted = ms.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void print(List<ProcessorTimes> cases, PrintStream to) {
        double first = cases.get(0).median();
        to.printf("%-22s %14s %14s %10s%n", "case", "processor ms", "x first", "kB");
        for (ProcessorTimes one : cases) {
            to.printf(
                    Locale.ROOT,
                    "%-22s %14.1f %14.2f %10.0f%n",
                    one.name,
                    one.median(),
                    one.median() / first,
                    one.allocatedKB);
        }
    }
}
