package org.warmvat.cli.answer.folder;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A hidden folder in which results are gathered before they take their place. Its methods exclude one another, since the
 * program may be stopped from another thread at any moment; after {@link #discard} it refuses to go on.
 */
final class UnfinishedFolder {

    private static final String UNFINISHED = ".unfinished";
    private static final String REPLACED = ".replaced";

    private final Path folder;
    private final Path setAside;
    private boolean closed;

    private UnfinishedFolder(Path folder, Path setAside) {
        this.folder = folder;
        this.setAside = setAside;
    }

    static UnfinishedFolder beside(Path target) throws IOException {
        // in a container every process has the same number: only chance keeps names apart
        String name = prefix(target) + UUID.randomUUID();
        Path folder = target.resolveSibling(name + UNFINISHED);
        Files.createDirectories(target.getParent());
        Files.createDirectory(folder);
        return new UnfinishedFolder(folder, target.resolveSibling(name + REPLACED));
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }

    /**
     * Between setting old results aside and putting new ones in place a run may be cut off; then the old ones are put back. Tells of
     * that and of what else such runs left.
     */
    static void putBack(Path target, Consumer<String> told) {
        if (!Files.isDirectory(target.getParent())) {
            return;
        }
        try (Stream<Path> beside = Files.list(target.getParent())) {
            List<Path> left = beside.filter(
                            path -> path.getFileName().toString().startsWith(prefix(target)))
                    .filter(path -> path.toString().endsWith(UNFINISHED)
                            || path.toString().endsWith(REPLACED))
                    .sorted()
                    .toList();
            for (Path one : left) {
                if (one.toString().endsWith(REPLACED) && !Files.exists(target)) {
                    Files.move(one, target, StandardCopyOption.ATOMIC_MOVE);
                    told.accept("An earlier run was cut off while it replaced " + target
                            + ": the results before it were put back.");
                } else {
                    told.accept(one + ": left by a run that was cut off, or of one that still goes on.");
                }
            }
        } catch (IOException unreadable) {
            told.accept(target.getParent() + ": cannot be searched for what earlier runs left ("
                    + unreadable.getMessage() + ")");
        }
    }

    synchronized void write(String name, ResultsFolder.Content content) throws IOException {
        refuseWhenClosed();
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(folder.resolve(name)))) {
            content.to(out);
        }
    }

    /** Takes the target's place; what stood there is set aside first and put back if the move fails. */
    synchronized void moveTo(Path target, boolean replacing) throws IOException {
        refuseWhenClosed();
        if (replacing) {
            replace(target);
        } else {
            refuseIfThere(target);
            Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
        }
        closed = true;
    }

    private void replace(Path target) throws IOException {
        Files.move(target, setAside, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            Files.move(setAside, target, StandardCopyOption.ATOMIC_MOVE);
            throw failed;
        }
        delete(setAside);
    }

    /** A rename would silently take the place of an empty folder that came in between. */
    private static void refuseIfThere(Path target) throws IOException {
        if (Files.exists(target)) {
            throw new IOException(target + " has appeared during the run");
        }
    }

    private void refuseWhenClosed() throws IOException {
        if (closed) {
            throw new IOException("stopped before the results were complete");
        }
    }

    /** Removes what was gathered, unless it has taken its place. */
    synchronized void discard() {
        if (closed) {
            return;
        }
        closed = true;
        try {
            delete(folder);
        } catch (IOException stuck) {
            throw new UncheckedIOException("cannot remove the unfinished results " + folder, stuck);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path entry : entries.toList()) {
                Files.delete(entry);
            }
        }
        Files.delete(folder);
    }
}
