package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.option.Inputs;

/** Files that are no UTF-8 text, or no files at all. */
class SourceTextTest {

    @TempDir
    Path folder;

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("d.yaml"), bytes);
    }

    private static void assertRefused(Path file, String fact) {
        InputRefused refused =
                assertThrows(InputRefused.class, () -> DesignDocument.read(file.toString(), Inputs.bytes(file)));
        assertEquals(file + fact, refused.getMessage());
    }

    @Test
    void noSuchFile() {
        assertRefused(folder.resolve("none.yaml"), ": no such file");
    }

    @Test
    void folderForAFile() {
        assertRefused(folder, ": is a folder, expected a file");
    }

    @Test
    void emptyFile() throws IOException {
        assertRefused(file(new byte[0]), ": is empty, expected a design");
        assertRefused(file("\n  \n".getBytes(StandardCharsets.UTF_8)), ": is empty, expected a design");
    }

    @Test
    void hugeFile() throws IOException {
        assertRefused(file(new byte[1_000_001]), ": 1000001 bytes, expected up to 1000000");
    }

    @Test
    void latinOne() throws IOException {
        byte[] text = "tank: {}\ntitle: Ga\u00e4rten\n".getBytes(StandardCharsets.ISO_8859_1);
        assertRefused(file(text), " line 2: byte 0xE4, expected UTF-8 text");
    }

    @Test
    void utfSixteen() throws IOException {
        for (String charset : new String[] {"UTF-16LE", "UTF-16BE"}) {
            byte[] text = ("\uFEFF" + DesignTexts.SMALL).getBytes(Charset.forName(charset));
            assertRefused(file(text), ": is UTF-16 text, expected UTF-8");
        }
    }

    @Test
    void cutInsideALetter() throws IOException {
        byte[] text = "title: 90 °".getBytes(StandardCharsets.UTF_8);
        assertRefused(file(java.util.Arrays.copyOf(text, text.length - 1)), " line 1: byte 0xC2, expected UTF-8 text");
    }

    @Test
    void byteOrderMarkIsLeftOut() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(0xEF);
        bytes.write(0xBB);
        bytes.write(0xBF);
        bytes.writeBytes(DesignTexts.SMALL.getBytes(StandardCharsets.UTF_8));
        assertEquals(
                DesignTexts.yaml(DesignTexts.SMALL).design(),
                DesignDocument.read("d.yaml", bytes.toByteArray()).design());
    }

    @Test
    void windowsLineEndsAreRead() throws IOException {
        byte[] text = DesignTexts.SMALL.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
        assertEquals(
                DesignTexts.yaml(DesignTexts.SMALL).design(),
                DesignDocument.read("d.yaml", text).design());
    }
}
