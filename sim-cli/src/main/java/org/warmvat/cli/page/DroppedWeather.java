package org.warmvat.cli.page;

import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a weather file that was dropped on the page. */
record DroppedWeather(Weathers weathers) {

    private static final Pattern READING = Pattern.compile("fill=([0-9]{1,3})&layout=([0-9]{1,7})");

    /** A weather file, and before it in the same body its layout file, of so many bytes as the query says. */
    Reply taken(HttpExchange exchange, byte[] body) throws Exception {
        String query =
                Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("fill=0&layout=0");
        Matcher reading = READING.matcher(query);
        if (!reading.matches() || Integer.parseInt(reading.group(2)) > body.length) {
            return Reply.empty(400);
        }
        int layoutBytes = Integer.parseInt(reading.group(2));
        byte[] file = Arrays.copyOfRange(body, layoutBytes, body.length);
        String lead = new String(file, 0, Math.min(file.length, 40), StandardCharsets.UTF_8);
        if (lead.contains("# warmvat normals")) {
            return Reply.json(Weathers.told(weathers.takeNormals(new String(file, StandardCharsets.UTF_8))));
        }
        Optional<byte[]> layout = Optional.of(Arrays.copyOf(body, layoutBytes)).filter(some -> some.length > 0);
        return Reply.json(
                Weathers.told(weathers.take(new Weathers.Source(file, layout, Integer.parseInt(reading.group(1))))));
    }
}
