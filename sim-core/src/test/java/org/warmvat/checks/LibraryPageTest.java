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
import java.util.regex.Matcher;
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
        Matcher block = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(PAGE, StandardCharsets.UTF_8));
        assertTrue(block.find());
        String code = block.group(1);
        assertTrue(code.lines().filter(line -> !line.isBlank()).count() <= 10, code);
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
        assertTrue(printed(folder).matches("-?[0-9.]+\\s+"), printed(folder));
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
