package org.warmvat.cli.page;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** Streams that tell the page how far its questions are. */
final class EventStreams {

    private static final int MOST_STREAMS = 4;
    private static final long BEAT_MS = 2000;

    private final AtomicInteger streams = new AtomicInteger();

    /** Tells how far a question is, until it is answered. Whoever asked and leaves stops it. */
    void send(HttpExchange exchange, Optional<Inquiry> found) throws IOException {
        if (found.isEmpty() || streams.get() >= MOST_STREAMS) {
            Reply.empty(found.isEmpty() ? 404 : 429).send(exchange);
            return;
        }
        Inquiry inquiry = found.get();
        streams.incrementAndGet();
        try (OutputStream out = exchange.getResponseBody()) {
            Reply.stream(exchange);
            Inquiry.State state = new Inquiry.State(-1, -1, false, List.of());
            while (!state.ended()) {
                state = inquiry.after(state, BEAT_MS);
                out.write(("data: " + new String(Reply.jsonBytes(state), StandardCharsets.UTF_8) + "\n\n")
                        .getBytes(StandardCharsets.UTF_8));
                out.flush();
            }
        } catch (IOException left) {
            inquiry.stop();
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
        } finally {
            streams.decrementAndGet();
        }
    }
}
