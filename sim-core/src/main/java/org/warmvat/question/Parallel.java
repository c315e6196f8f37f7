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
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;

/**
 * Does many tasks on some threads and hands their results over in the order of the tasks, so that nothing depends on how many
 * threads there are. When the calling thread is interrupted, all tasks are.
 */
public final class Parallel implements AutoCloseable {

    private static final int AHEAD_PER_THREAD = 8;

    private final ExecutorService threads;
    private final int ahead;
    private final Progress progress;

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
        this.progress = progress;
        ahead = AHEAD_PER_THREAD * threads;
        AtomicInteger count = new AtomicInteger();
        this.threads = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "study " + count.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }

    /** All results, in the order of the tasks. */
    public <A, B> List<B> map(List<A> tasks, Function<A, B> work) {
        List<B> results = new ArrayList<>(tasks.size());
        each(tasks.size(), index -> work.apply(tasks.get(index)), results::add);
        return results;
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
                progress.reached(done + 1, count);
            }
        } finally {
            waiting.forEach(future -> future.cancel(true));
        }
    }

    private <B> B result(Future<B> future) {
        try {
            return future.get();
        } catch (InterruptedException stopped) {
            threads.shutdownNow();
            Thread.currentThread().interrupt();
            CancellationException cancelled = new CancellationException("stopped");
            cancelled.initCause(stopped);
            throw cancelled;
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException ours) {
                throw ours;
            }
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }

    /** Stops all threads. */
    @Override
    public void close() {
        threads.shutdownNow();
    }
}
