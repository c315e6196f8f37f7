package org.warmvat.question;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * Does many tasks on some threads and hands their results over in the order of the tasks, so that nothing depends on how many
 * threads there are. When the calling thread is interrupted, all tasks are.
 */
public final class Parallel implements AutoCloseable {

    private static final int AHEAD_PER_THREAD = 8;

    private final ExecutorService threads;
    private final int ahead;
    private final Progress progress;
    private final Kept kept;
    private int before;
    private int expected;

    /** Is told how far the tasks of one call have come, on the calling thread. */
    @FunctionalInterface
    public interface Progress {
        /** Takes no notice. */
        Progress SILENT = (done, all) -> {};

        /** Some of all tasks are done. */
        void reached(int done, int all);
    }

    /**
     * Starts the threads.
     *
     * @param threads how many, at least 1
     * @param progress told after each task
     */
    public Parallel(int threads, Progress progress) {
        this(threads, progress, Kept.NOTHING);
    }

    /**
     * Starts the threads.
     *
     * @param threads how many, at least 1
     * @param progress told after each task
     * @param kept knows numbered runs that were done before, and keeps those that are done
     */
    public Parallel(int threads, Progress progress, Kept kept) {
        this.progress = progress;
        this.kept = kept;
        ahead = AHEAD_PER_THREAD * threads;
        AtomicInteger count = new AtomicInteger();
        this.threads = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "study " + count.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Says how many tasks all calls together will have, so that progress can be told of the whole. */
    public void expect(int tasks) {
        expected = tasks;
        before = 0;
    }

    /** All results, in the order of the tasks. */
    public <A, B> List<B> map(List<A> tasks, Function<A, B> work) {
        List<B> results = new ArrayList<>(tasks.size());
        each(tasks.size(), index -> work.apply(tasks.get(index)), results::add);
        return results;
    }

    /** Work on each of some with each of others, such as designs in weather files: a list for each of the former, in the order of the latter. */
    public <A, C, B> List<List<B>> cross(List<A> some, List<C> others, BiFunction<A, C, B> work) {
        int each = others.size();
        List<Integer> tasks = IntStream.range(0, some.size() * each).boxed().toList();
        List<B> results = map(tasks, task -> work.apply(some.get(task / each), others.get(task % each)));
        return IntStream.range(0, some.size())
                .mapToObj(i -> results.subList(i * each, (i + 1) * each))
                .toList();
    }

    /**
     * Does tasks and hands their results over one by one; only a few of them are held at a time.
     *
     * @param count how many tasks
     * @param work the task of an index
     * @param inOrder receives the results in order of the index, on the calling thread
     * @throws CancellationException when the calling thread is interrupted
     */
    public <B> void each(int count, IntFunction<B> work, Consumer<B> inOrder) {
        ArrayDeque<Future<B>> waiting = new ArrayDeque<>();
        try {
            int next = 0;
            for (int done = 0; done < count; done++) {
                for (; next < count && waiting.size() < ahead; next++) {
                    int index = next;
                    waiting.add(threads.submit(() -> work.apply(index)));
                }
                inOrder.accept(result(waiting.remove()));
                progress.reached(before + done + 1, Math.max(expected, before + count));
            }
            before = expected == 0 ? 0 : before + count;
        } finally {
            waiting.forEach(future -> future.cancel(true));
        }
    }

    /**
     * Does numbered runs, those that are kept not again, and hands over what they gave one by one.
     *
     * @param count how many runs
     * @param number number of a run by its index
     * @param work the run of an index
     * @param inOrder receives what they gave in order of the index, on the calling thread
     * @throws CancellationException when the calling thread is interrupted
     */
    public void runs(int count, IntToLongFunction number, IntFunction<Figures> work, Consumer<Figures> inOrder) {
        AtomicInteger next = new AtomicInteger();
        each(count, index -> kept.of(number.applyAsLong(index)).orElseGet(() -> work.apply(index)), figures -> {
            kept.keep(number.applyAsLong(next.getAndIncrement()), figures);
            inOrder.accept(figures);
        });
    }

    private <B> B result(Future<B> future) {
        try {
            return future.get();
        } catch (InterruptedException stopped) {
            threads.shutdownNow();
            Thread.currentThread().interrupt();
            throw (CancellationException) new CancellationException("stopped").initCause(stopped);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw failed.getCause() instanceof RuntimeException ours
                    ? ours
                    : new IllegalStateException(failed.getCause());
        }
    }

    /** Stops all threads. */
    @Override
    public void close() {
        threads.shutdownNow();
    }
}
