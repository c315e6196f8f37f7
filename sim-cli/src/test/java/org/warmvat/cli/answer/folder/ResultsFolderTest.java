package org.warmvat.cli.answer.folder;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultsFolderTest {

    private static final String LIST = "{\"result_files\": [\"report.html\", \"summary.json\"]}";
    private static final Map<String, byte[]> OLD =
            Map.of("report.html", new byte[] {1}, "summary.json", LIST.getBytes(StandardCharsets.UTF_8));
    private static final Map<String, byte[]> NEW = Map.of("report.html", new byte[] {3});

    private final List<String> told = new ArrayList<>();

    @TempDir
    private Path parent;

    private static void write(ResultsFolder folder, Map<String, byte[]> files) throws IOException {
        Map<String, ResultsFolder.Content> contents = new LinkedHashMap<>();
        files.forEach((name, bytes) -> contents.put(name, out -> out.write(bytes)));
        folder.writeAll(contents);
    }

    @Test
    void aNewFolderAppearsWithItsFilesAndNothingBesideIt() throws Exception {
        Path target = parent.resolve("out");
        write(ResultsFolder.at(target, false, told::add), OLD);
        assertEquals(List.of("report.html", "summary.json"), names(target));
        assertEquals(LIST, Files.readString(target.resolve("summary.json")));
        assertEquals(List.of("out"), names(parent));
    }

    @Test
    void lookingChangesNothing() throws Exception {
        ResultsFolder.at(parent.resolve("out"), true, told::add);
        assertEquals(List.of(), names(parent));
    }

    @Test
    void resultsAreReplacedOnlyWhenToldSo() throws Exception {
        Path target = parent.resolve("out");
        write(ResultsFolder.at(target, false, told::add), OLD);
        assertRefused("%s: holds results already, expected --replace or another folder", target, false);
        write(ResultsFolder.at(target, true, told::add), NEW);
        assertEquals(List.of("report.html"), names(target));
        assertArrayEquals(new byte[] {3}, Files.readAllBytes(target.resolve("report.html")));
        assertEquals(List.of("out"), names(parent));
    }

    @Test
    void anEmptyFolderIsFilled() throws Exception {
        Path target = Files.createDirectory(parent.resolve("out"));
        write(ResultsFolder.at(target, false, told::add), NEW);
        assertEquals(List.of("report.html"), names(target));
    }

    @Test
    void aFolderWithAStrangersFileIsNeverReplaced() throws IOException {
        Path target = Files.createDirectory(parent.resolve("out"));
        Files.writeString(target.resolve("report.html"), "old");
        Files.writeString(target.resolve("summary.json"), LIST);
        Files.writeString(target.resolve("thesis.odt"), "mine");
        assertRefused("%s: holds thesis.odt, which is no part of the results, expected another folder", target, true);
    }

    @Test
    void aFolderNamedLikeAResultIsAStranger() throws IOException {
        Path target = Files.createDirectories(parent.resolve("out"));
        Files.createDirectory(target.resolve("report.html"));
        assertRefused("%s: holds report.html, which is no part of the results, expected another folder", target, true);
    }

    @Test
    void aFileIsRefused() throws IOException {
        Path target = Files.writeString(parent.resolve("out"), "x");
        assertRefused("%s: is a file, expected a folder or a new name", target, true);
    }

    @Test
    void aLinkIsRefused() throws IOException {
        Path target = Files.createSymbolicLink(parent.resolve("out"), Files.createDirectory(parent.resolve("there")));
        assertRefused("%s: is a link, expected a folder or a new name", target, true);
    }

    @Test
    void missingFoldersAboveAreMade() throws Exception {
        Path target = parent.resolve("runs").resolve("first");
        ResultsFolder folder = ResultsFolder.at(target, false, told::add);
        assertEquals(List.of(), names(parent));
        write(folder, NEW);
        assertEquals(List.of("report.html"), names(target));
        assertEquals(List.of("first"), names(parent.resolve("runs")));
    }

    @Test
    void aLinkToNowhereAboveIsRefused() throws IOException {
        Path link = Files.createSymbolicLink(parent.resolve("link"), parent.resolve("nowhere"));
        assertRefused("%s: " + link + " is no folder that may be written to", link.resolve("out"), false);
    }

    /** As a run leaves them that is killed between setting the old results aside and putting the new ones in place. */
    @Test
    void resultsSetAsideByARunThatWasCutOffArePutBack() throws Exception {
        Path target = parent.resolve("out");
        Path aside = Files.createDirectory(parent.resolve(".out.1234.replaced"));
        Path half = Files.createDirectory(parent.resolve(".out.1234.unfinished"));
        Files.writeString(aside.resolve("report.html"), "old");
        Files.writeString(aside.resolve("summary.json"), LIST);
        ResultsFolder.at(target, true, told::add);
        assertEquals("old", Files.readString(target.resolve("report.html")));
        assertEquals(List.of(".out.1234.unfinished", "out"), names(parent));
        assertEquals(
                List.of(
                        "An earlier run was cut off while it replaced " + target
                                + ": the results before it were put back.",
                        half + ": left by a run that was cut off, or of one that still goes on."),
                told);
    }

    @Test
    void aFolderOfAnotherProcessWithTheSameNumberIsNoHindrance() throws Exception {
        Path target = parent.resolve("out");
        Files.createDirectory(parent.resolve(".out." + ProcessHandle.current().pid() + ".unfinished"));
        write(ResultsFolder.at(target, false, told::add), NEW);
        assertEquals(List.of("report.html"), names(target));
    }

    @Test
    void aFileAboveIsRefused() throws IOException {
        Path file = Files.writeString(parent.resolve("notes"), "x");
        assertRefused(
                "%s: " + file + " is no folder that may be written to",
                file.resolve("a").resolve("b"),
                false);
    }

    @Test
    void rootAndTheFolderOneStandsInAreRefused() {
        String expected = "%s: is a root or the folder you stand in, expected a folder of its own";
        assertRefused(expected, Path.of("/"), true);
        assertRefused(expected, Path.of("."), true);
        assertRefused(expected, Path.of(""), true);
    }

    @Test
    void aFailureLeavesWhatWasThereAndNothingElse() throws Exception {
        Path target = parent.resolve("out");
        write(ResultsFolder.at(target, false, told::add), OLD);
        Map<String, byte[]> unwritable = Map.of("no-such-folder/report.html", new byte[] {9});
        ResultsFolder again = ResultsFolder.at(target, true, told::add);
        assertThrows(IOException.class, () -> write(again, unwritable));
        assertEquals(List.of("report.html", "summary.json"), names(target));
        assertArrayEquals(new byte[] {1}, Files.readAllBytes(target.resolve("report.html")));
        assertEquals(List.of("out"), names(parent));
    }

    @Test
    void aFolderThatAppearsDuringTheRunIsNotOverwritten() throws Exception {
        Path target = parent.resolve("out");
        ResultsFolder folder = ResultsFolder.at(target, true, told::add);
        Files.createDirectory(target);
        IOException refused = assertThrows(IOException.class, () -> write(folder, NEW));
        assertEquals(target + " has appeared during the run", refused.getMessage());
        assertEquals(List.of("out"), names(parent));
    }

    @Test
    void afterAStopNothingMoreIsWritten() throws Exception {
        Path target = parent.resolve("out");
        UnfinishedFolder unfinished = UnfinishedFolder.beside(target);
        unfinished.write("report.html", out -> out.write(1));
        unfinished.discard();
        assertEquals(List.of(), names(parent));
        IOException refused =
                assertThrows(IOException.class, () -> unfinished.write("summary.json", out -> out.write(2)));
        assertEquals("stopped before the results were complete", refused.getMessage());
        assertThrows(IOException.class, () -> unfinished.moveTo(target, false));
        unfinished.discard();
        assertEquals(List.of(), names(parent));
    }

    private void assertRefused(String message, Path target, boolean replace) {
        ResultsRefused refused = assertThrows(ResultsRefused.class, () -> ResultsFolder.at(target, replace, told::add));
        assertEquals(message.replace("%s", target.toString()), refused.getMessage());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }
}
