package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.design.Design;
import org.warmvat.log.LogFiles;
import org.warmvat.log.LogFiles.Source;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.WeatherFiles;

/**
 * Files of every kind, changed by chance but from a fixed seed: each is read or refused in words, never anything else. Some hundred of each
 * kind in the gate; {@code -Dfuzz.cases=100000} spreads that many over the kinds and, in {@code OptionsFuzzTest}, over the options.
 */
class FuzzTest {

    private static final int MOST_LINES = 90;
    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final Path SAMPLES = Path.of("../weather-samples");
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
        LOG("") {
            @Override
            void read(String text) throws WeatherRefused {
                Source source = Source.of("fuzz.csv", text.getBytes(StandardCharsets.UTF_8));
                LogFiles.read(List.of(source), Optional.empty(), Optional.empty());
            }

            @Override
            String text() {
                StringBuilder text = new StringBuilder("""
                        # warmvat log 1
                        # utc_offset_h: 1
                        # origin: invented
                        time,slurry_c,air_c,global_w_m2,wind_m_s,backup_electric_w,feed_kg,mixer_on
                        """);
                for (int hour = 0; hour < 48; hour++) {
                    text.append(String.format(
                            Locale.ROOT,
                            "2025-01-%02dT%02d:00,%.2f,%.1f,%d,%.1f,%d,%s,1%n",
                            1 + hour / 24,
                            hour % 24,
                            36 - 0.05 * hour,
                            4 + Math.sin(hour / 4.0),
                            hour % 24 > 8 && hour % 24 < 16 ? 120 : 0,
                            2 + hour % 3 * 0.5,
                            hour % 2 * 200,
                            hour % 24 == 9 ? "4.5" : ""));
                }
                return text.toString();
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
        Random random = new Random(Mutations.SEED + kind.name().hashCode());
        int accepted = 0;
        int cases = Mutations.CASES / (Kind.values().length + 1);
        for (int i = 0; i < cases; i++) {
            String changed = Mutations.of(text, random);
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
}
