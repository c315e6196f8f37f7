package org.warmvat.cli.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Lets requests in: those that name this machine and this port as host, carry the secret of the address, come from the page itself or
 * from the address bar, and are not too many. A page of another origin that a browser shows at the same time has neither the secret
 * nor the origin, and a name that was turned to this machine is not the host.
 */
final class Door {

    private static final int SECRET_BYTES = 16;
    private static final int MOST_PER_SECOND = 200;
    private static final long SECOND_NS = 1_000_000_000L;

    private final String host;
    private final String secret;
    private final LongSupplier nanoTime;
    private long second;
    private int inSecond;

    Door(int port, LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        byte[] random = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(random);
        host = "127.0.0.1:" + port;
        secret = HexFormat.of().formatHex(random);
    }

    /** The address to open. */
    String address() {
        return "http://" + host + "/" + secret + "/";
    }

    /** Why a request stays outside, as the number of a response; empty when it may come in. */
    Optional<Integer> refusal(HttpExchange exchange) {
        if (!inRate()) {
            return Optional.of(429);
        }
        Headers headers = exchange.getRequestHeaders();
        List<String> hosts = headers.getOrDefault("Host", List.of());
        if (!hosts.equals(List.of(host))) {
            return Optional.of(421);
        }
        return isForeign(exchange, headers) ? Optional.of(403) : Optional.empty();
    }

    private boolean isForeign(HttpExchange exchange, Headers headers) {
        String origin = headers.getFirst("Origin");
        boolean changes = !exchange.getRequestMethod().equals("GET");
        if (origin == null ? changes : !origin.equals("http://" + host)) {
            return true;
        }
        String site = headers.getFirst("Sec-Fetch-Site");
        return site != null && !site.equals("same-origin") && !(site.equals("none") && !changes);
    }

    /** What stands behind the secret in the path; empty without it. */
    Optional<String> inside(HttpExchange exchange) {
        String path = exchange.getRequestURI().getRawPath();
        int end = 1 + secret.length();
        if (path == null || path.length() <= end || path.charAt(end) != '/') {
            return Optional.empty();
        }
        byte[] given = path.substring(1, end).getBytes(StandardCharsets.UTF_8);
        // compared in constant time, so that it cannot be guessed letter by letter
        boolean right = MessageDigest.isEqual(given, secret.getBytes(StandardCharsets.UTF_8));
        return right ? Optional.of(path.substring(end + 1)) : Optional.empty();
    }

    /** Whether there were not too many within this second; counts one more. */
    synchronized boolean inRate() {
        long now = nanoTime.getAsLong() / SECOND_NS;
        inSecond = now == second ? inSecond + 1 : 1;
        second = now;
        return inSecond <= MOST_PER_SECOND;
    }
}
