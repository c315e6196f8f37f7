package org.warmvat.cli.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * What a request is answered.
 *
 * @param code number of the response
 * @param type kind of content
 * @param policy what a browser may do with it
 * @param bytes the content
 */
record Reply(int code, String type, String policy, byte[] bytes) {

    static final String JSON = "application/json; charset=utf-8";
    static final String HTML = "text/html; charset=utf-8";
    static final String BINARY = "application/octet-stream";

    private static final String PAGE_POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static Reply of(String type, byte[] bytes) {
        return new Reply(200, type, PAGE_POLICY, bytes);
    }

    static Reply empty(int code) {
        return new Reply(code, "text/plain; charset=utf-8", PAGE_POLICY, new byte[0]);
    }

    static Reply json(Object value) {
        return of(JSON, jsonBytes(value));
    }

    /** What the page is told instead of what it asked for. */
    static Reply refused(int code, List<String> sentences) {
        return new Reply(code, JSON, PAGE_POLICY, jsonBytes(Map.of("sentences", sentences)));
    }

    static byte[] jsonBytes(Object value) {
        try {
            return MAPPER.writeValueAsBytes(value);
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** What every answer says, be it short or a stream. */
    static void head(HttpExchange exchange, String type, String policy) {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", type);
        headers.set("Content-Security-Policy", policy);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
    }

    void send(HttpExchange exchange) throws IOException {
        head(exchange, type, policy);
        exchange.sendResponseHeaders(code, bytes.length == 0 ? -1 : bytes.length);
        if (bytes.length > 0) {
            try (OutputStream body = exchange.getResponseBody()) {
                body.write(bytes);
            }
        }
    }

    static void stream(HttpExchange exchange) throws IOException {
        head(exchange, "text/event-stream; charset=utf-8", PAGE_POLICY);
        exchange.sendResponseHeaders(200, 0);
    }
}
