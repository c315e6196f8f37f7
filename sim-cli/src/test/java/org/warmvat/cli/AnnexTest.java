package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;

/** What a builder orders and an inspector asks for, and whose tank it is. */
class AnnexTest {

    @TempDir
    Path folder;

    private final Program program = new Program();

    @Test
    void billOfMaterialsHighestTemperaturesAndTitleBlockStandInTheReport() throws IOException {
        String text = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8)
                + "\nproject: {for: 'Mill <b>Farm</b>', by: A. Builder, date: 1 May, note: first draft}\n";
        Path design = Files.writeString(folder.resolve("mine.yaml"), text);
        Path weather = Files.writeString(folder.resolve("cold.csv"), YearCommandTest.weatherText(24 * 12));
        Path out = folder.resolve("out");
        int code = program.run("year", design.toString(), weather.toString(), "--out", out.toString());
        assertEquals(0, code, program.err());
        String page = Files.readString(out.resolve("report.html"));
        assertTrue(page.contains("For: Mill &lt;b&gt;Farm&lt;/b&gt;"), "escaped");
        assertTrue(
                page.contains("By: A. Builder") && page.contains("Date: 1 May") && page.contains("Note: first draft"));
        assertTrue(program.out().contains("By: A. Builder"));
        assertTrue(page.contains("PIR foam, 90 mm"));
        assertTrue(page.contains("solar coil, outer area"));
        int annex = page.indexOf("class=\"annex\"");
        assertTrue(annex > 0 && page.indexOf("Highest temperatures computed") > annex);
        assertTrue(page.indexOf(">Materials<") > annex);
        assertTrue(
                page.contains("the tested value of its certificate goes before this"),
                "what is computed stands below what was tested");
        assertFalse(program.out().contains("Highest temperatures computed"), "for the page only");
    }
}
