package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.design.Design;

/** The first lines against the library, as its page shows them, compile and run, and are few. */
class LibraryPageTest {

    private static final Path PAGE = Path.of("../docs/library.md");

    @Test
    void theFirstLinesCompileAndRun(@TempDir Path folder) throws Exception {
        String code = blocks().get(0);
        assertTrue(code.lines().filter(line -> !line.isBlank()).count() <= 10, code);
        assertTrue(said(code, folder).matches("-?[0-9.]+\\s+"), said(code, folder));
    }

    /** More insulation returns more, and a large tank more than it eats: the library's questions give what the program's do. */
    @Test
    void theQuestionsCompileAndRun(@TempDir Path folder) throws Exception {
        double[] said = said(blocks().get(1), folder)
                .lines()
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertEquals(2, said.length);
        assertTrue(said[0] > 0, () -> "more insulation gains " + said[0]);
        assertTrue(said[1] > 0, () -> "900 litres return " + said[1]);
    }

    private static List<String> blocks() throws Exception {
        return Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(PAGE, StandardCharsets.UTF_8))
                .results()
                .map(block -> block.group(1))
                .toList();
    }

    private static String said(String code, Path folder) throws Exception {
        String imports = code.lines().filter(line -> line.startsWith("import ")).collect(Collectors.joining("\n"));
        String body = code.lines().filter(line -> !line.startsWith("import ")).collect(Collectors.joining("\n"));
        Path source = folder.resolve("FirstLines.java");
        Files.writeString(
                source,
                imports + "\npublic class FirstLines { public static void run() throws Exception {\n" + body
                        + "\n} }\n");
        Path core = Path.of(
                Design.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        int compiled = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-cp", core.toString(), source.toString());
        assertEquals(0, compiled);
        return printed(folder);
    }

    private static String printed(Path folder) throws Exception {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream before = System.out;
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, LibraryPageTest.class.getClassLoader())) {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            loader.loadClass("FirstLines").getMethod("run").invoke(null);
        } finally {
            System.setOut(before);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }
}
