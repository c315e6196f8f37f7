package org.warmvat.speed;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and prints each time as a multiple of the first of its kind in the same run. */
public final class Speed {

    private static final String ALLOCATED = "gc.alloc.rate.norm";
    private static final double BYTES_PER_KB = 1024;

    private Speed() {}

    /**
     * Runs all benchmarks, or those whose names match.
     *
     * @param args regular expressions of names
     */
    public static void main(String[] args) throws RunnerException {
        OptionsBuilder options = new OptionsBuilder();
        for (String name : args) {
            options.include(name);
        }
        options.jvmArgs("-XX:+UseSerialGC", "-Xmx1g").addProfiler(GCProfiler.class);
        print(new Runner(options.build()).run(), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    private static void print(Collection<RunResult> results, PrintStream to) {
        Map<String, Double> baselines = new HashMap<>();
        to.printf("%n%-14s %-10s %10s %8s %10s %12s%n", "benchmark", "case", "ms", "+-", "x first", "kB per run");
        for (RunResult result : results) {
            BenchmarkParams params = result.getParams();
            String name = params.getBenchmark().replaceFirst(".*\\.", "");
            Result<?> time = result.getPrimaryResult();
            double first = baselines.computeIfAbsent(name, key -> time.getScore());
            to.printf(
                    Locale.ROOT,
                    "%-14s %-10s %10.2f %8.2f %10.3f %12.0f%n",
                    name,
                    chosen(params),
                    time.getScore(),
                    time.getScoreError(),
                    time.getScore() / first,
                    result.getSecondaryResults().get(ALLOCATED).getScore() / BYTES_PER_KB);
        }
    }

    private static String chosen(BenchmarkParams params) {
        StringBuilder text = new StringBuilder();
        for (String key : params.getParamsKeys()) {
            text.append(text.length() == 0 ? "" : " ").append(params.getParam(key));
        }
        return text.toString();
    }
}
