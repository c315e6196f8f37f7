package org.warmvat.cli.answer.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** A file that appears whole or not at all, and takes the place of another only when told so. */
public final class WholeFile {

    private final Path target;
    private final boolean replace;

    private WholeFile(Path target, boolean replace) {
        this.target = target;
        this.replace = replace;
    }

    /**
     * Looks whether a file may stand there; changes nothing.
     *
     * @throws ResultsRefused if it may not, with the reason
     */
    public static WholeFile at(Path place, boolean replace) throws ResultsRefused {
        Path target = place.toAbsolutePath().normalize();
        Path folder = target.getParent();
        refuse(folder == null || Files.isDirectory(target), place + ": is a folder, expected a file");
        refuse(!Files.isDirectory(folder), place + ": there is no folder " + folder + " to write it to");
        refuse(!Files.isWritable(folder), place + ": " + folder + " is no folder that may be written to");
        refuse(
                !replace && Files.exists(target, LinkOption.NOFOLLOW_LINKS),
                place + ": stands there already, expected --replace or another name");
        return new WholeFile(target, replace);
    }

    private static void refuse(boolean wrong, String words) throws ResultsRefused {
        if (wrong) {
            throw new ResultsRefused(words);
        }
    }

    /** Writes text as UTF-8. */
    public void write(String text) throws IOException {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes it.
     *
     * @throws IOException if the disk will not have it; what stood there before then still stands
     */
    public void write(byte[] contents) throws IOException {
        Path unfinished = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".unfinished");
        try {
            Files.write(unfinished, contents);
            Files.move(
                    unfinished,
                    target,
                    replace ? new CopyOption[] {StandardCopyOption.REPLACE_EXISTING} : new CopyOption[0]);
        } catch (FileAlreadyExistsException appeared) {
            throw new IOException(target + " has appeared meanwhile", appeared);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
