package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever happens to a file, the answer is a design or faults in words, never another failure. */
class MangledDesignsTest {

    private static final String YAML = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
    private static final String LETTERS = "0159.:,-+_[]{}\"'#&*!|>%@`?~ \n\tabyNe\u0000\u00b0\uD83D";

    /** Reads, and says whether it was accepted; any failure but a refusal fails the test. */
    private static boolean accepts(String name, byte[] bytes) {
        try {
            return DesignDocument.read(name, bytes).design().tank().liquidVolumeM3() > 0;
        } catch (InputRefused refused) {
            assertFalse(refused.faults().isEmpty());
            assertTrue(refused.faults().size() <= Faults.MOST_TOLD + 1);
            refused.faults()
                    .forEach(fault ->
                            assertTrue(fault.startsWith(name) && fault.lines().count() == 1, fault));
            return false;
        }
    }

    private static boolean accepts(String name, String text) {
        return accepts(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String json() throws com.fasterxml.jackson.core.JsonProcessingException {
        Map<String, Integer> lines = new HashMap<>();
        return new ObjectMapper()
                .writerWithDefaultPrettyPrinter()
                .writeValueAsString(YamlText.read(YAML, lines, new Faults("d.yaml", lines)));
    }

    @Test
    void truncated() throws com.fasterxml.jackson.core.JsonProcessingException {
        for (int length = 0; length < YAML.length(); length += 11) {
            accepts("d.yaml", YAML.substring(0, length));
        }
        String json = json();
        assertTrue(accepts("d.json", json));
        for (int length = 0; length < json.stripTrailing().length(); length += 23) {
            assertFalse(accepts("d.json", json.substring(0, length)), "length " + length);
        }
    }

    @Test
    void shuffledAndRepeatedLines() {
        Random random = new Random(11);
        for (int i = 0; i < 60; i++) {
            List<String> lines = new ArrayList<>(YAML.lines().toList());
            for (int j = 0; j < 3; j++) {
                Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
            }
            lines.add(random.nextInt(lines.size()), lines.get(random.nextInt(lines.size())));
            accepts("d.yaml", String.join("\n", lines) + "\n");
        }
    }

    @Test
    void exchangedLetters() throws com.fasterxml.jackson.core.JsonProcessingException {
        Random random = new Random(5);
        String json = json();
        for (int i = 0; i < 300; i++) {
            accepts("d.yaml", exchanged(YAML, random));
            accepts("d.json", exchanged(json, random));
        }
    }

    private static String exchanged(String text, Random random) {
        StringBuilder changed = new StringBuilder(text);
        for (int i = 0; i <= random.nextInt(4); i++) {
            changed.setCharAt(random.nextInt(changed.length()), LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return changed.toString();
    }

    @Test
    void exchangedBytes() {
        Random random = new Random(3);
        for (int i = 0; i < 100; i++) {
            byte[] bytes = YAML.getBytes(StandardCharsets.UTF_8);
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            accepts("d.yaml", bytes);
        }
    }

    @Test
    void exchangedNumbers() {
        String[] numbers = {
            "0", "-1", "1e9", "1e-9", "999999999999999999999", "true", "null", "[]", "{}", "text", "\"\""
        };
        List<String> paths =
                List.copyOf(DesignDocument.demonstration().design().numbers().keySet());
        for (int i = 0; i < paths.size(); i++) {
            String key = paths.get(i).substring(paths.get(i).lastIndexOf('.') + 1);
            String number = numbers[i % numbers.length];
            accepts("d.yaml", YAML.replaceAll("\\b" + key + ": [-0-9.]+", key + ": " + number));
        }
    }
}
