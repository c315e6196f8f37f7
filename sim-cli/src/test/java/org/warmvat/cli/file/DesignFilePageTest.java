package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.option.Inputs;

/**
 * The page about the design file says what the schema says, and its examples run. To make its tables anew after a change of the records:
 * {@code -Dtest=DesignFilePageTest -Dregenerate=true}, as for {@link DesignSchemaTest}.
 */
class DesignFilePageTest {

    private static final Path PAGE = Path.of("../docs/design-file.md");
    /** The broken design of the page and the answer to it, with the words between. */
    private static final Pattern BROKEN =
            Pattern.compile("```text broken\n(.*?)```\n(.*?)```text\n(.*?)```", Pattern.DOTALL);

    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final String BEGIN = "<!-- tables made from the schema: begin -->\n";
    private static final String END = "<!-- tables made from the schema: end -->\n";

    private static String page() throws IOException {
        return Files.readString(PAGE, StandardCharsets.UTF_8);
    }

    @Test
    void tablesAreTheSchemas() throws IOException {
        String made = DesignKeyTables.generate();
        String old = page();
        int from = old.indexOf(BEGIN) + BEGIN.length();
        int to = old.indexOf(END);
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(PAGE, old.substring(0, from) + made + old.substring(to), StandardCharsets.UTF_8);
        }
        String now = page();
        assertEquals(made, now.substring(now.indexOf(BEGIN) + BEGIN.length(), now.indexOf(END)));
    }

    @Test
    void everyYamlExampleOfThePageIsADesign() throws IOException {
        Matcher blocks = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(page());
        int count = 0;
        while (blocks.find()) {
            DesignDocument.parse("example " + ++count, blocks.group(1));
        }
        assertTrue(count >= 2, "examples: " + count);
    }

    @Test
    void everyExampleFileIsADesignWithoutCautions() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            List<Path> designs = files.filter(f -> f.toString().endsWith(".yaml"))
                    .filter(f -> !f.toString().endsWith("-layout.yaml")
                            && !f.endsWith("uncertain.yaml")
                            && !f.endsWith("choices.yaml"))
                    .sorted()
                    .toList();
            assertTrue(designs.size() >= 3, "designs: " + designs);
            for (Path design : designs) {
                assertEquals(
                        List.of(),
                        DesignDocument.read(design.toString(), Inputs.bytes(design))
                                .cautions(),
                        design.toString());
                assertTrue(Files.readString(design, StandardCharsets.UTF_8).contains("nvented"), design.toString());
            }
        }
    }

    @Test
    void messagesQuotedInThePageAreThePrograms() throws IOException {
        Matcher broken = BROKEN.matcher(page());
        assertTrue(broken.find());
        InputRefused refused =
                assertThrows(InputRefused.class, () -> DesignDocument.parse("tank.yaml", broken.group(1)));
        assertEquals(broken.group(3), refused.getMessage() + "\n");
    }
}
