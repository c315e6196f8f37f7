package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;

class CheckCommandTest {

    @TempDir
    private Path folder;

    private final Program program = new Program();

    @Test
    void theDemonstrationIsSaidToBeInvented() {
        assertEquals(0, program.run("check"));
        assertTrue(
                program.out()
                        .contains("\nNo design was given: this is the built-in demonstration, an invented tank.\n"),
                program.out());
        assertTrue(program.out().contains("The inputs have no faults.\n"));
        assertEquals("", program.err());
    }

    @Test
    void sentencesAndJsonTellTheSame() throws IOException {
        program.run("check", "--cold", "-5");
        String said = program.out();
        program.run("check", "--cold", "-5", "--json");
        JsonNode figures = new ObjectMapper().readTree(program.out());
        assertSays(said, "the tank loses (\\S+) W for each kelvin", figures.at("/ua_w_k/total"));
        assertSays(said, "fittings (\\S+) W/K", figures.at("/ua_w_k/fittings"));
        assertSays(said, "time constant is (\\S+) hours", figures.at("/time_constant_h"));
        assertSays(said, "in air of -5.0 °C it loses (\\S+) W", figures.at("/cold_loss_w"));
        assertSays(said, "feed takes another (\\S+) W", figures.at("/cold_feed_w"));
        assertSays(said, "solar coil passes (\\S+) W for each kelvin", figures.at("/solar_coil_w_k"));
        assertSays(said, "backup coil passes (\\S+) W at most", figures.at("/backup_coil_most_w"));
        assertSays(said, "retention time is (\\S+) days", figures.at("/retention_days"));
        assertSays(said, "makes about (\\S+) Nm³ of methane a day", figures.at("/methane_nm3_day"));
        assertEquals(-5, figures.at("/cold_air_c").doubleValue(), 0);
        double parts = 0;
        for (String part : new String[] {"wall", "dry_wall", "lid", "floor", "edges", "fittings"}) {
            parts += figures.at("/ua_w_k/" + part).doubleValue();
        }
        assertEquals(figures.at("/ua_w_k/total").doubleValue(), parts, 1e-4);
    }

    /** A printed figure has about three digits. */
    private static void assertSays(String said, String pattern, JsonNode figure) {
        Matcher matcher = Pattern.compile(pattern).matcher(said);
        assertTrue(matcher.find(), pattern + " in\n" + said);
        assertEquals(figure.doubleValue(), Double.parseDouble(matcher.group(1)), 0.005 * figure.doubleValue(), pattern);
    }

    @Test
    void weatherGivesTheColdDay() throws IOException {
        Path design = Files.write(folder.resolve("d.yaml"), DesignDocument.demonstrationBytes());
        Path weather = Files.writeString(folder.resolve("w.csv"), YearCommandTest.weatherText(48));
        assertEquals(0, program.run("check", design.toString(), weather.toString()), program.err());
        assertTrue(program.out().contains("in air of 4.0 °C it loses"), program.out());
        assertTrue(program.out().contains("wind"), "what was assumed of the weather");
    }

    @Test
    void everyFaultIsNamed() throws IOException {
        Path design = Files.writeString(folder.resolve("d.yaml"), "tank: {shape: pyramid}\nfeeed: 1\n");
        assertEquals(3, program.run("check", design.toString()));
        assertEquals("", program.out());
        assertTrue(program.err().contains("d.yaml line 1: "), program.err());
        assertTrue(program.err().contains("d.yaml line 2: "), program.err());
        assertTrue(program.err().contains("feed"), program.err());
    }

    @Test
    void wrongUse() {
        assertEquals(2, program.run("check", "--cold", "icy"));
        assertEquals(
                "Invalid value for option '--cold': 'icy' is no number\nSee warmvat check --help\n", program.err());
        assertEquals(3, program.run("check", "none.yaml"));
        assertEquals("none.yaml: no such file\n", program.err());
    }

    @Test
    void schemaPrintsTheSchemaOfTheDesignFile() throws IOException {
        assertEquals(0, program.run("schema"));
        JsonNode schema = new ObjectMapper().readTree(program.out());
        assertTrue(schema.at("/properties/tank").isObject(), "keys of the design file");
        assertEquals(0, program.run("schema", "--layout"));
        JsonNode layout = new ObjectMapper().readTree(program.out());
        assertTrue(layout.at("/properties/columns").isObject(), "keys of the layout file");
        assertEquals(2, program.run("schema", "more"));
        assertEquals("Unmatched argument at index 1: 'more'\nSee warmvat schema --help\n", program.err());
    }

    /** A tank in a room knows no outdoor air and no wind. */
    @Test
    void anIndoorTankLosesToItsRoom() {
        assertEquals(0, program.run("check", "../docs/examples/indoors-immersed.yaml"), program.err());
        assertTrue(program.out().contains("in a room of 12.0 °C it loses"), program.out());
        assertFalse(program.out().contains("in air of") || program.out().contains("wind"), program.out());
    }
}
