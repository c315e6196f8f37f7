package org.warmvat.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.util.RawValue;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Program;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.weather.Weather;

/**
 * Serves the page to the browser of this machine: bound to the loopback address alone, behind a {@link Door}, every path known and
 * compared exactly, every size bounded. No path of the machine is ever taken from a request.
 */
public final class PageServer implements AutoCloseable {

    private static final int THREADS = 12;
    private static final int MOST_WAITING = 64;
    private static final int MOST_TEXT_BYTES = 2_000_000;
    private static final int MOST_ASKED_BYTES = 32 << 20;
    private static final Pattern ASKED = Pattern.compile("ask/([0-9]{1,6})/([a-z.]{1,12})");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpServer server;
    private final ExecutorService threads = threads();
    private final Door door;
    private final Shipped shipped = new Shipped();
    private final Weathers weathers = new Weathers();
    private final Work work = new Work(weathers);
    private final Inquiries inquiries;
    private final Questions questions;
    private final Start start;
    private final Closing closing;
    private final EventStreams events = new EventStreams();
    private final CountDownLatch stopped = new CountDownLatch(1);

    /**
     * What the page begins with.
     *
     * @param design text of the design
     * @param weather the weather, empty for that of the demonstration
     * @param untilClosed whether the server stops when the page is closed
     */
    public record Start(String design, Optional<GivenWeather> weather, boolean untilClosed) {}

    /**
     * Weather that was read.
     *
     * @param bytes its file
     * @param layout its layout file, where it was given with one
     * @param fillHolesH longest hole that was filled, h
     * @param weather what stands in it
     */
    public record GivenWeather(byte[] bytes, Optional<byte[]> layout, int fillHolesH, Weather weather) {}

    private PageServer(HttpServer server, Start start, Questions questions) {
        this.server = server;
        this.start = start;
        this.questions = questions;
        door = new Door(server.getAddress().getPort(), System::nanoTime);
        inquiries = new Inquiries(questions);
        closing = new Closing(start.untilClosed(), this::close);
        start.weather()
                .ifPresent(given -> weathers.take(
                        new Weathers.Source(given.bytes(), given.layout(), given.fillHolesH()), given.weather()));
    }

    /**
     * Starts a server.
     *
     * @param port where; 0 for any that is free
     * @throws IOException when the port is taken
     */
    public static PageServer start(int port, Start start, Questions questions) throws IOException {
        // a request that is not sent within so many seconds is dropped, so that none can hold a thread
        System.setProperty("sun.net.httpserver.maxReqTime", "20");
        // without it an answer in two packets waits for the browser's acknowledgement, some 40 ms
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("jdk.httpserver.maxConnections", "64");
        InetAddress loopback = InetAddress.getByAddress("localhost", new byte[] {127, 0, 0, 1});
        PageServer page = new PageServer(HttpServer.create(new InetSocketAddress(loopback, port), 0), start, questions);
        page.server.setExecutor(page.threads);
        page.server.createContext("/", page::handle);
        page.server.start();
        return page;
    }

    private static ExecutorService threads() {
        AtomicInteger count = new AtomicInteger();
        return new ThreadPoolExecutor(
                THREADS, THREADS, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(MOST_WAITING), task -> {
                    Thread thread = new Thread(task, "page " + count.incrementAndGet());
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /** The address to open, with its secret. */
    public String address() {
        return door.address();
    }

    /** Waits until the server has been stopped. */
    public void await() throws InterruptedException {
        stopped.await();
    }

    @Override
    public void close() {
        inquiries.stopAll();
        closing.end();
        server.stop(0);
        threads.shutdownNow();
        stopped.countDown();
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Optional<Integer> refusal = door.refusal(exchange);
            Optional<String> path = refusal.isPresent() ? Optional.empty() : door.inside(exchange);
            if (refusal.isPresent()) {
                Reply.empty(refusal.get()).send(exchange);
            } else if (exchange.getRequestURI().getPath().equals("/favicon.ico")) {
                Reply.empty(204).send(exchange);
            } else if (path.isPresent()) {
                inside(exchange, path.get());
            } else {
                Reply.empty(404).send(exchange);
            }
        }
    }

    private void inside(HttpExchange exchange, String path) throws IOException {
        closing.seen(path);
        Matcher asked = ASKED.matcher(path);
        boolean aboutQuestion = asked.matches();
        if (aboutQuestion && asked.group(2).equals("events") && isGet(exchange)) {
            events.send(exchange, inquiries.of(Integer.parseInt(asked.group(1))));
            return;
        }
        Reply reply;
        try {
            reply = aboutQuestion
                    ? ofQuestion(exchange, Integer.parseInt(asked.group(1)), asked.group(2))
                    : isGet(exchange) ? got(path) : posted(exchange, path);
        } catch (Exception failure) {
            reply = Reply.refused(Sentences.refusal(failure).isPresent() ? 422 : 500, Sentences.of(failure));
        }
        reply.send(exchange);
        if (path.equals("stop") && reply.code() == 200) {
            new Thread(this::close, "stop").start();
        }
    }

    private static boolean isGet(HttpExchange exchange) {
        return exchange.getRequestMethod().equals("GET");
    }

    private Reply got(String path) throws Exception {
        return path.equals("start") ? started() : shipped.of(path).orElse(Reply.empty(404));
    }

    private Reply started() throws Exception {
        String demonstration = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        RawValue tree =
                new RawValue(DesignText.of("demonstration.yaml", demonstration).tree());
        String weather =
                start.weather().isPresent() ? "given" : Weathers.samples().get(0);
        return Reply.json(Draft.row(
                "version", Program.version(),
                "name", Work.name(start.design()),
                "text", start.design(),
                "demonstration", tree,
                "schema", new RawValue(DesignDocument.schema()),
                "weather", Weathers.told(weathers.of(weather).orElseThrow()),
                "samples", Weathers.samples(),
                "questions", questions.all(),
                "until_closed", start.untilClosed()));
    }

    private Reply posted(HttpExchange exchange, String path) throws Exception {
        if (!exchange.getRequestMethod().equals("POST")) {
            return Reply.empty(405);
        }
        int most =
                path.equals("weather") ? Weathers.MOST_BYTES : path.equals("ask") ? MOST_ASKED_BYTES : MOST_TEXT_BYTES;
        byte[] body = exchange.getRequestBody().readNBytes(most + 1);
        if (body.length > most) {
            return Reply.refused(413, List.of("More than " + most + " bytes, expected fewer."));
        }
        return switch (path) {
            case "year" -> work.year(JSON.readTree(body));
            case "weather" -> new DroppedWeather(weathers).taken(exchange, body);
            case "sample" -> Reply.json(Weathers.told(work.weather(JSON.readTree(body))));
            case "ask" -> asked(JSON.readTree(body));
            case "new" -> starter(JSON.readTree(body));
            case "until-closed" -> closing.set(new String(body, StandardCharsets.UTF_8).equals("true"));
            case "closed", "stop" -> Reply.empty(200);
            default -> Reply.empty(404);
        };
    }

    private Reply asked(JsonNode body) throws Exception {
        return Reply.json(
                Map.of("number", inquiries.ask(body, work.weather(body)).number()));
    }

    private Reply starter(JsonNode body) throws Exception {
        String text = inquiries.starter(
                body.path("litres").asText(), body.path("setpoint").asText(), work.weather(body));
        return Reply.json(Map.of("text", text));
    }

    private Reply ofQuestion(HttpExchange exchange, int number, String what) {
        Optional<Inquiry> inquiry = inquiries.of(number);
        if (inquiry.isEmpty()) {
            return Reply.empty(404);
        }
        if (what.equals("stop") && exchange.getRequestMethod().equals("POST")) {
            inquiry.get().stop();
            return Reply.empty(204);
        }
        Optional<Document> document = inquiry.get().document().filter(unused -> isGet(exchange));
        return switch (what) {
            case "report.html" -> document.map(ReportFiles::report).orElse(Reply.empty(404));
            case "report.zip" -> document.map(ReportFiles::zip).orElse(Reply.empty(404));
            default -> Reply.empty(404);
        };
    }
}
