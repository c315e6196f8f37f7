package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decimal numbers: what is one, and that its value is the Java language's to the last bit. */
class DecimalTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "+7",
                "7.",
                ".5",
                "-.5",
                "12.5",
                "-0.0",
                "1e-3",
                "2.5E+02",
                "999999999999999",
                "0.00000000000001",
                "9007199254740993",
                "3.141592653589793238",
                "1e22",
                "4.35",
                "0.1"
            })
    void readsAsJavaDoes(String text) {
        assertTrue(Decimal.isNumber(text), text);
        same(text);
    }

    @Test
    void readsRandomNumbersAsJavaDoes() {
        Random random = new Random(4);
        for (int i = 0; i < 20_000; i++) {
            int decimals = random.nextInt(14);
            String digits =
                    Long.toString(Math.floorMod(random.nextLong(), (long) Math.pow(10, 1 + random.nextInt(15))));
            int whole = Math.max(0, digits.length() - decimals);
            same((random.nextBoolean() ? "-" : "") + digits.substring(0, whole) + "." + digits.substring(whole) + "0");
        }
    }

    private static void same(String text) {
        long wanted = Double.doubleToRawLongBits(Double.parseDouble(text));
        assertEquals(wanted, Double.doubleToRawLongBits(Decimal.value(text)), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "-", ".", "+.", "1,5", "NaN", "Infinity", "0x1p3", "1f", "1d", "1e", "e5", "1 2", "--1", "１"
            })
    void takesNothingElse(String text) {
        assertFalse(Decimal.isNumber(text), text);
    }
}
