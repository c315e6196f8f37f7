package org.warmvat.cli.page;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;

/** Speaks to the server byte by byte, as no browser would. */
record PageWire(URI address) {

    /** What came back: all before the empty line, and all behind it. */
    record Answer(String head, byte[] body) {
        int code() {
            return Integer.parseInt(head.split(" ")[1]);
        }

        String text() {
            return new String(body, StandardCharsets.UTF_8);
        }
    }

    /** Sends bytes as they are and reads until the server closes. */
    Answer raw(byte[] request) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.getOutputStream().write(request);
            byte[] all = socket.getInputStream().readAllBytes();
            String text = new String(all, StandardCharsets.ISO_8859_1);
            int end = text.indexOf("\r\n\r\n");
            return new Answer(
                    text.substring(0, Math.max(0, end)),
                    Arrays.copyOfRange(all, Math.min(all.length, end + 4), all.length));
        }
    }

    /** The head of a request, up to the empty line before its body. */
    byte[] head(String method, String path, long bodyBytes, String... headers) {
        StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\nConnection: close\r\n");
        boolean ownHost = Stream.of(headers).noneMatch(header -> header.startsWith("Host:"));
        head.append(ownHost ? "Host: " + address.getAuthority() + "\r\n" : "");
        for (String header : headers) {
            head.append(header).append("\r\n");
        }
        head.append(method.equals("GET") ? "" : "Content-Length: " + bodyBytes + "\r\n");
        return head.append("\r\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    Answer sent(String method, String path, byte[] body, String... headers) throws IOException {
        byte[] head = head(method, path, body.length, headers);
        byte[] all = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, all, head.length, body.length);
        return raw(all);
    }

    Answer got(String path, String... headers) throws IOException {
        return sent("GET", address.getPath() + path, new byte[0], headers);
    }

    Answer posted(String path, String body) throws IOException {
        return sent("POST", address.getPath() + path, body.getBytes(StandardCharsets.UTF_8), own());
    }

    /** The header by which a request comes from the page itself. */
    String own() {
        return "Origin: http://" + address.getAuthority();
    }
}
