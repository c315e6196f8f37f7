package org.warmvat.cli.answer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folder that a run's results go into. It appears whole or not at all: files are written to a hidden folder beside it,
 * which takes its place when complete. A results folder that stands there already is replaced only when told so, and a folder
 * that holds anything else never is.
 */
public final class ResultsFolder {

    private final Path target;
    private final boolean replacing;

    private ResultsFolder(Path target, boolean replacing) {
        this.target = target;
        this.replacing = replacing;
    }

    /**
     * Looks whether results may go there; changes nothing.
     *
     * @param place folder asked for
     * @param replace whether results that stand there may be replaced
     * @param own names of the files that results may consist of
     * @throws ResultsRefused if they may not, with the reason
     */
    public static ResultsFolder at(Path place, boolean replace, Set<String> own) throws ResultsRefused {
        Path target = place.toAbsolutePath().normalize();
        refuseOddPlaces(place, target);
        if (!Files.isDirectory(target)) {
            return new ResultsFolder(target, false);
        }
        try (Stream<Path> entries = Files.list(target)) {
            refuseStrangers(place, entries.sorted().toList(), replace, own);
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

    /** The folder itself or the nearest above it that is there; the missing ones are made when results are written. */
    private static Path nearestExisting(Path folder) {
        Path at = folder;
        while (!Files.exists(at)) {
            at = at.getParent();
        }
        return at;
    }

    private static void refuseStrangers(Path place, Iterable<Path> entries, boolean replace, Set<String> own)
            throws ResultsRefused {
        boolean empty = true;
        for (Path entry : entries) {
            empty = false;
            String name = entry.getFileName().toString();
            if (!own.contains(name) || !Files.isRegularFile(entry)) {
                throw new ResultsRefused(
                        place + ": holds " + name + ", which is no part of the results, expected another folder");
            }
        }
        if (!empty && !replace) {
            throw new ResultsRefused(place + ": holds results already, expected --replace or another folder");
        }
    }

    /** The folder. */
    public Path path() {
        return target;
    }

    /**
     * Writes the files and puts the folder in place. After a failure, or when the program is stopped, what stood there before
     * still stands and nothing else is left.
     *
     * @param files contents by file name
     * @throws IOException if the disk will not have them
     */
    public void write(Map<String, byte[]> files) throws IOException {
        UnfinishedFolder unfinished = UnfinishedFolder.beside(target);
        Thread stopped = new Thread(unfinished::discard, "discard unfinished results");
        Runtime.getRuntime().addShutdownHook(stopped);
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
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
