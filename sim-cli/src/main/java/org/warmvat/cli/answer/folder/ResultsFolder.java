package org.warmvat.cli.answer.folder;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Page;
import org.warmvat.cli.plot.Picture;

/**
 * The folder that an answer goes into. It appears whole or not at all: files are written to a hidden folder beside it, which takes
 * its place when complete. Results that stand there already are replaced only when told so, and a folder that holds anything else
 * than the files that its own {@code summary.json} lists never is.
 */
public final class ResultsFolder {

    private static final String PAGE = "report.html";
    private static final String SUMMARY = "summary.json";

    private final Path target;
    private final boolean replacing;

    private ResultsFolder(Path target, boolean replacing) {
        this.target = target;
        this.replacing = replacing;
    }

    /**
     * Looks whether results may go there. Puts back results that a run set aside before it was cut off; else changes nothing.
     *
     * @param place folder asked for
     * @param replace whether results that stand there may be replaced
     * @param told is told of what was put back or lies about
     * @throws ResultsRefused if they may not, with the reason
     */
    public static ResultsFolder at(Path place, boolean replace, Consumer<String> told) throws ResultsRefused {
        Path target = place.toAbsolutePath().normalize();
        refuseOddPlaces(place, target);
        UnfinishedFolder.putBack(target, told);
        if (!Files.isDirectory(target)) {
            return new ResultsFolder(target, false);
        }
        try (Stream<Path> entries = Files.list(target)) {
            refuseStrangers(place, entries.sorted().toList(), replace);
        } catch (IOException unreadable) {
            throw new ResultsRefused(place + ": cannot be read, expected a folder of results");
        }
        return new ResultsFolder(target, true);
    }

    private static void refuseOddPlaces(Path place, Path target) throws ResultsRefused {
        Path parent = target.getParent();
        if (parent == null || target.equals(Path.of("").toAbsolutePath())) {
            throw new ResultsRefused(place + ": is a root or the folder you stand in, expected a folder of its own");
        }
        if (Files.isSymbolicLink(target)) {
            throw new ResultsRefused(place + ": is a link, expected a folder or a new name");
        }
        if (Files.exists(target) && !Files.isDirectory(target)) {
            throw new ResultsRefused(place + ": is a file, expected a folder or a new name");
        }
        Path existing = nearestExisting(parent);
        if (!Files.isDirectory(existing) || !Files.isWritable(existing)) {
            throw new ResultsRefused(place + ": " + existing + " is no folder that may be written to");
        }
    }

    /** The folder itself or the nearest above it that is there, be it a link to nowhere; the missing ones are made in writing. */
    private static Path nearestExisting(Path folder) {
        Path at = folder;
        while (!Files.exists(at) && !Files.isSymbolicLink(at)) {
            at = at.getParent();
        }
        return at;
    }

    private static void refuseStrangers(Path place, List<Path> entries, boolean replace) throws ResultsRefused {
        Set<String> own = entries.isEmpty() ? Set.of() : listed(place.resolve(SUMMARY));
        for (Path entry : entries) {
            String name = entry.getFileName().toString();
            if (!own.contains(name) || !Files.isRegularFile(entry)) {
                throw new ResultsRefused(
                        place + ": holds " + name + ", which is no part of the results, expected another folder");
            }
        }
        if (!entries.isEmpty() && !replace) {
            throw new ResultsRefused(place + ": holds results already, expected --replace or another folder");
        }
    }

    /** The files that a folder of results says it consists of; none where it does not. */
    private static Set<String> listed(Path summary) {
        Set<String> names = new TreeSet<>();
        try {
            for (JsonNode name : new ObjectMapper().readTree(summary.toFile()).path("result_files")) {
                names.add(name.asText());
            }
        } catch (IOException noSummary) {
            return Set.of();
        }
        return names;
    }

    /** The folder. */
    public Path path() {
        return target;
    }

    /** The page within it. */
    public Path page() {
        return target.resolve(PAGE);
    }

    /**
     * Writes an answer and puts the folder in place. After a failure, or when the program is stopped, what stood there before
     * still stands and nothing else is left.
     *
     * @throws IOException if the disk will not have it
     */
    public void write(Document document) throws IOException {
        writeAll(contents(document));
    }

    /** Fills a file. */
    @FunctionalInterface
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    /** What fills the files of an answer, by name: made when it is written, since tables may be very long. */
    private static Map<String, Content> contents(Document document) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put(PAGE, out -> out.write(Page.bytes(document)));
        files.put(SUMMARY, out -> SummaryWriter.write(document, out));
        document.data().csv().forEach((name, table) -> files.put(name, table::to));
        document.data()
                .texts()
                .forEach((name, text) -> files.put(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8))));
        document.data().copied().forEach((name, from) -> files.put(name, out -> Files.copy(from, out)));
        for (Picture picture : document.body().pictures()) {
            files.put(picture.name() + ".png", out -> out.write(picture.png()));
            files.put(picture.name() + ".svg", out -> out.write(picture.svg()));
        }
        return files;
    }

    /** The files of an answer by name; the same answer gives the same bytes. */
    public static Map<String, byte[]> files(Document document) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        contents(document).forEach((name, content) -> {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try {
                content.to(bytes);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
            files.put(name, bytes.toByteArray());
        });
        return files;
    }

    static List<String> names(Document document) {
        List<String> names = new ArrayList<>(List.of(PAGE, SUMMARY));
        names.addAll(document.data().csv().keySet());
        names.addAll(document.data().texts().keySet());
        names.addAll(document.data().copied().keySet());
        document.body()
                .pictures()
                .forEach(picture -> names.addAll(List.of(picture.name() + ".png", picture.name() + ".svg")));
        return names;
    }

    void writeAll(Map<String, Content> files) throws IOException {
        UnfinishedFolder unfinished = UnfinishedFolder.beside(target);
        Thread stopped = new Thread(unfinished::discard, "discard unfinished results");
        Runtime.getRuntime().addShutdownHook(stopped);
        try {
            for (Map.Entry<String, Content> file : files.entrySet()) {
                unfinished.write(file.getKey(), file.getValue());
            }
            unfinished.moveTo(target, replacing);
        } finally {
            unfinished.discard();
            forget(stopped);
        }
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException shuttingDown) {
            // The hook runs, or has run, and finds nothing left to do.
            return;
        }
    }
}
