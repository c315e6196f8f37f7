package org.warmvat.cli;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A page of another origin on the same machine, and what it might try; each attempt tells "nothing" when it came to nothing. */
final class Foreigner implements AutoCloseable {

    static final List<String> ATTEMPTS = List.of(
            "a => fetch(a + 'start').then(r => r.text()).then(t => t || 'nothing', () => 'nothing')",
            "a => fetch(a + 'start', {mode: 'no-cors'}).then(r => r.text()).then(t => t || 'nothing', () => 'nothing')",
            "a => fetch(a + 'stop', {method: 'POST', mode: 'no-cors'}).then(r => r.status ? 'stopped' : 'nothing', () => 'nothing')",
            "a => fetch(a + 'until-closed', {method: 'POST', body: 'true', mode: 'no-cors'}).then(r => r.status ? 'set' : 'nothing', () => 'nothing')",
            "a => new Promise(done => { const s = document.createElement('script'); s.src = a + 'uplot.js';"
                    + " s.onload = () => done(typeof uPlot === 'undefined' ? 'nothing' : 'script'); s.onerror = () => done('nothing'); document.head.append(s); })",
            "a => new Promise(done => { const f = document.createElement('iframe'); f.src = a; document.body.append(f);"
                    + " setTimeout(() => { try { done(f.contentDocument?.querySelector('#short') ? 'frame' : 'nothing'); }"
                    + " catch (denied) { done('nothing'); } }, 800); })",
            "a => new Promise(done => { const f = document.createElement('form'); f.method = 'POST'; f.action = a + 'stop'; f.target = 'elsewhere';"
                    + " const i = document.createElement('iframe'); i.name = 'elsewhere'; document.body.append(i, f); f.submit();"
                    + " setTimeout(() => done('nothing'), 800); })",
            "a => navigator.sendBeacon(a + 'stop', '') && 'nothing'",
            "a => new Promise(done => { const e = new EventSource(a + 'ask/1/events'); e.onmessage = () => done('events');"
                    + " e.onerror = () => { e.close(); done('nothing'); }; })");

    private final List<String> referers = new CopyOnWriteArrayList<>();
    private final HttpServer server;

    Foreigner() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        byte[] page = "<!DOCTYPE html><html lang=en><title>other</title><body>other</body></html>"
                .getBytes(StandardCharsets.UTF_8);
        server.createContext("/", exchange -> {
            try (exchange) {
                referers.addAll(exchange.getRequestHeaders().getOrDefault("Referer", List.of()));
                exchange.getResponseHeaders().set("Content-Type", "text/html");
                exchange.sendResponseHeaders(200, page.length);
                exchange.getResponseBody().write(page);
            }
        });
        server.start();
    }

    /** From where browsers said that they came. */
    List<String> referers() {
        return referers;
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
