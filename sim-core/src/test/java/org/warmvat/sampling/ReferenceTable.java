package org.warmvat.sampling;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Numbers of an independent library, which its file names with version and call.
 *
 * @param head names of the columns
 * @param rows numbers
 */
record ReferenceTable(List<String> head, List<double[]> rows) {

    static ReferenceTable read(String file) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(file)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
            return new ReferenceTable(
                    List.of(lines.get(0).split(",")),
                    lines.stream()
                            .skip(1)
                            .map(line -> Arrays.stream(line.split(","))
                                    .mapToDouble(Double::parseDouble)
                                    .toArray())
                            .toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
