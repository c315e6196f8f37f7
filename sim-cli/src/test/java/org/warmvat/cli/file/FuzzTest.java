package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.design.Design;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.WeatherFiles;

/**
 * Files of every kind, changed by chance but from a fixed seed: each is read or refused in words, never anything else. Some hundred of each
 * kind in the gate; {@code -Dfuzz.cases=100000} spreads that many over the kinds.
 */
class FuzzTest {

    private static final int CASES = Integer.getInteger("fuzz.cases", 2100);
    private static final long SEED = 15;
    private static final int MOST_LINES = 90;
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final Path SAMPLES = Path.of("../weather-samples");
    private static final List<String> WORDS = List.of(
            "",
            "0",
            "-1",
            "1e9",
            "1e-9",
            "NaN",
            ".inf",
            "null",
            "~",
            "true",
            "[]",
            "{}",
            "\"",
            "°C",
            "99999999999999999999",
            "1,5",
            "2025-13-45T99:99",
            "\u0000",
            "😀",
            "- ",
            ": ",
            "#",
            "&a",
            "*a",
            "!!str",
            "<<",
            "\t",
            "5e-324",
            "-273.16",
            "off");

    private static final DesignDocument DESIGN =
            DesignDocument.read("demonstration.yaml", DesignDocument.demonstrationBytes());

    /** A kind of file: some text of it, and how it is read; what is refused comes as one line for each fault. */
    private enum Kind {
        DESIGN_FILE("polytunnel-winter-rest.yaml") {
            @Override
            void read(String text) {
                Design design = DesignDocument.parse("fuzz.yaml", text).design();
                assertTrue(Double.isFinite(design.tank().liquidVolumeM3()));
                Plausibility.of(design, Optional.empty())
                        .forEach(remark -> assertFalse(remark.sentence().contains("NaN"), remark.sentence()));
            }
        },
        LAYOUT("satellite-layout.yaml") {
            @Override
            void read(String text) {
                LayoutDocument.parse("fuzz.yaml", text);
            }
        },
        LOG_LAYOUT("log-layout.yaml") {
            @Override
            void read(String text) {
                LogLayoutDocument.parse("fuzz.yaml", text);
            }
        },
        CHOICES("choices.yaml") {
            @Override
            void read(String text) {
                ChoicesDocument.read("fuzz.yaml", text.getBytes(StandardCharsets.UTF_8), FuzzTest.DESIGN);
            }
        },
        UNCERTAIN("uncertain.yaml") {
            @Override
            void read(String text) {
                UncertainDocument.read("fuzz.yaml", text.getBytes(StandardCharsets.UTF_8), FuzzTest.DESIGN.design());
            }
        },
        WEATHER("cool-southern.csv") {
            @Override
            void read(String text) throws WeatherRefused {
                WeatherFiles.parse("fuzz.csv", text);
            }
        },
        NORMALS("cool-southern-normals.csv") {
            @Override
            void read(String text) throws WeatherRefused {
                NormalsFile.parse("fuzz.csv", text);
            }
        };

        private final String file;

        Kind(String file) {
            this.file = file;
        }

        abstract void read(String text) throws WeatherRefused;

        /** Long tables are cut to a few days: whoever reads a line reads all. */
        String text() throws IOException {
            Path path = Files.exists(EXAMPLES.resolve(file)) ? EXAMPLES.resolve(file) : SAMPLES.resolve(file);
            List<String> lines = Files.readAllLines(path);
            List<String> own = lines.stream()
                    .filter(line -> this != UNCERTAIN || has(line.split(":", 2)[0].replace("[]", "[0]")))
                    .limit(MOST_LINES)
                    .toList();
            return String.join("\n", own) + "\n";
        }

        private static boolean has(String key) {
            return FuzzTest.DESIGN.design().numbers().containsKey(key);
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyChangedFileIsReadOrRefusedInWords(Kind kind) throws IOException {
        String text = kind.text();
        Random random = new Random(SEED + kind.name().hashCode());
        int accepted = 0;
        int cases = CASES / Kind.values().length;
        for (int i = 0; i < cases; i++) {
            String changed = changed(text, random);
            accepted += isAccepted(kind, changed, i) ? 1 : 0;
        }
        assertTrue(accepted < cases, "a change that nothing notices is none");
        assertEquals(true, isAccepted(kind, text, -1), "the file itself is right");
    }

    private static boolean isAccepted(Kind kind, String text, int number) {
        try {
            kind.read(text);
            return true;
        } catch (InputRefused refused) {
            told(refused.faults(), kind, number);
        } catch (WeatherRefused refused) {
            told(refused.faults(), kind, number);
        } catch (RuntimeException broken) {
            throw new AssertionError(kind + " " + number + ":\n" + text, broken);
        }
        return false;
    }

    /** Each fault is a line that names the file and no class of ours or of Java. */
    private static void told(List<String> faults, Kind kind, int number) {
        assertFalse(faults.isEmpty(), kind + " " + number);
        for (String fault : faults) {
            boolean more = fault.startsWith("(") || fault.startsWith("and ");
            assertTrue(more || fault.startsWith("fuzz."), kind + " " + number + ": " + fault);
            assertFalse(fault.contains("java.") || fault.contains("org.warmvat"), kind + " " + number + ": " + fault);
            assertTrue(fault.length() < 2000, kind + " " + number + ": " + fault.length());
        }
    }

    /** One to three changes: a piece cut out, doubled, moved, a word put in, a number made another, a letter lost. */
    private static String changed(String text, Random random) {
        String changed = text;
        for (int i = random.nextInt(3); i >= 0; i--) {
            changed = once(changed, random);
        }
        return changed;
    }

    private static String once(String text, Random random) {
        if (text.length() < 2) {
            return text + WORDS.get(random.nextInt(WORDS.size()));
        }
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(40));
        String word = WORDS.get(random.nextInt(WORDS.size()));
        String before = text.substring(0, from);
        String piece = text.substring(from, to);
        String after = text.substring(to);
        return switch (random.nextInt(7)) {
            case 0 -> before + after;
            case 1 -> before + piece + piece + after;
            case 2 -> before + word + piece + after;
            case 3 -> before + word + after;
            case 4 -> before + piece.replaceFirst("[0-9.]+", word.isEmpty() ? "7" : word) + after;
            case 5 -> before + piece.replaceFirst("[a-z_]", "") + after;
            default -> before;
        };
    }
}
