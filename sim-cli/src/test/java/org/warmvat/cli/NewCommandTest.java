package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Inputs;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;

/** {@code new} by questions and by options of the same names. */
class NewCommandTest {

    @TempDir
    Path folder;

    private final Program program = new Program();
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** Answers typed one a line; the last asks for the file. */
    private int asked(String answers, String... options) {
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        NewCommand command = (NewCommand) line.getSubcommands().get("new").getCommand();
        command.ask(new BufferedReader(new StringReader(answers)));
        String[] words = new String[options.length + 1];
        words[0] = "new";
        System.arraycopy(options, 0, words, 1, options.length);
        return line.execute(words);
    }

    private Path mine() {
        return folder.resolve("mine.yaml");
    }

    private Design written() {
        return DesignDocument.read(mine().toString(), Inputs.bytes(mine())).design();
    }

    @Test
    void emptyLinesTakeTheDefaults() throws IOException {
        assertEquals(0, asked("\n\n\n\n\n\n\n\n\n" + mine() + "\n"), err.toString());
        assertEquals(
                DesignDocument.parse(
                                "starter",
                                StarterText.of(900, 36, WeatherFiles.demonstration(), Starter.AtHand.NOTHING))
                        .design(),
                written());
        assertTrue(out.toString().contains("Litres of slurry [900]: "), out.toString());
        assertTrue(out.toString().contains("Insulation at hand, mm [by rule]: "), out.toString());
        assertTrue(out.toString().endsWith("Look at it with: warmvat check " + mine() + "\n"), out.toString());
    }

    @Test
    void whatIsTypedIsTakenAndWhatIsWrongIsAskedAgain() {
        String answers =
                "many\n300\n34\n\nin the shed\nunder_roof\n80\n1,5\ntubes\nfuel\nwinter_rest\n" + mine() + "\n";
        assertEquals(0, asked(answers), err.toString());
        Design design = written();
        assertEquals(0.3, design.tank().liquidVolumeM3(), 0.003);
        assertEquals(34, design.control().setpointC());
        assertEquals(80, design.number("envelope.insulation_mm"));
        assertEquals(1.5, design.number("solar.area_m2"));
        assertEquals(0.62, design.number("solar.eta0"));
        assertEquals(BackupSource.FUEL, design.backup().orElseThrow().source());
        assertEquals("winter rest", design.spells().get(0).name());
        assertTrue(out.toString().contains("\"many\", expected a number, 20 to 100000"), out.toString());
        assertTrue(out.toString().contains("\"in the shed\", expected one of open, sheltered, under_roof, polytunnel"));
    }

    @Test
    void anEndOfTheAnswersIsWrongUseAndWritesNothing() {
        assertEquals(2, asked("300\n"));
        assertTrue(err.toString().startsWith("no answer to: Temperature to hold"), err.toString());
        assertFalse(Files.exists(mine()));
    }

    @Test
    void withAFileNothingIsAsked() {
        assertEquals(0, asked("", mine().toString(), "--litres", "300", "--collector", "0", "--place", "polytunnel"));
        assertTrue(written().solar().isEmpty());
        assertTrue(written().shelter().isPresent());
        assertFalse(out.toString().contains("["), out.toString());
    }

    @Test
    void aWrongWordIsToldWithThoseThatMayStand() {
        assertEquals(2, asked("", mine().toString(), "--source", "coal"));
        assertTrue(
                err.toString()
                        .startsWith(
                                "Invalid value for option '--source': \"coal\", expected one of electric, own_gas, fuel"),
                err.toString());
    }

    /** The commented file and the library's design are the same tank, whatever is at hand. */
    @Test
    void fileAndLibraryAgreeInAllThatCanBeAskedFor() throws IOException {
        Weather weather = WeatherFiles.demonstration();
        for (Starter.Standing standing : Starter.Standing.values()) {
            for (Starter.CollectorKind kind : Starter.CollectorKind.values()) {
                for (double collectorM2 : new double[] {0, 2}) {
                    Starter.AtHand atHand = new Starter.AtHand(
                            standing,
                            OptionalDouble.of(70),
                            OptionalDouble.of(collectorM2),
                            kind,
                            Starter.Source.OWN_GAS,
                            standing == Starter.Standing.OPEN);
                    DesignDocument file = DesignDocument.parse("starter", StarterText.of(500, 36, weather, atHand));
                    assertEquals(Starter.of(500, 36, weather, atHand).design(), file.design(), atHand.toString());
                }
            }
        }
    }

    /** Files that the README's commands read are made by an earlier command there, or come with the program. */
    @Test
    void theReadmeLeadsWithNewAndNamesNoFileThatDoesNotExist() throws IOException {
        String readme = Files.readString(Path.of("../README.md"));
        int first = readme.indexOf("warmvat new mine.yaml");
        assertTrue(first > 0 && first < readme.indexOf("## Your own tank") + 600, "new comes first");
        Matcher names = Pattern.compile("[\\w/.-]+\\.(yaml|csv)").matcher(readme);
        while (names.find()) {
            String name = names.group();
            assertTrue(name.equals("mine.yaml") || Files.exists(Path.of("..").resolve(name)), name);
        }
    }

    @Test
    void newWritesAFileOnceAndCheckLikesIt() throws IOException {
        Path file = folder.resolve("starter.yaml");
        assertEquals(0, program.run("new", file.toString(), "--litres", "300", "--setpoint", "30"), program.err());
        assertEquals(2, program.run("new", file.toString()));
        assertTrue(program.err().contains("stands there already, expected --replace or another name"), program::err);
        assertEquals(2, program.run("new", "--litres", "1"));
        assertTrue(program.err().contains("--litres 1, expected 20 to 100000"), program::err);
        assertEquals(0, program.run("check", file.toString()), program.err());
        assertTrue(
                program.out().contains("Starter design, 300 litres at 30 °C: what follows from the design"),
                program::out);
    }

    @Test
    void newAlsoSpeaksJsonAndAllThreeAreTheSameDesign() throws IOException {
        Path yaml = folder.resolve("again.yaml");
        Path json = folder.resolve("again.json");
        assertEquals(0, program.run("new", yaml.toString(), "--litres", "300", "--quiet"), program.err());
        assertEquals("", program.out());
        assertEquals(0, program.run("new", json.toString(), "--litres", "300", "--json"), program.err());
        assertEquals(Files.readString(json), program.out());
        assertEquals(
                DesignDocument.read(yaml.toString(), Inputs.bytes(yaml)).design(),
                DesignDocument.read(json.toString(), Inputs.bytes(json)).design());
    }
}
