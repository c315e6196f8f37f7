package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SweepPicturesTest {

    private static final Pattern TEXT = Pattern.compile(">([^<>]+)</text");

    /** A hundred columns: every fifth is named, from the first on, so that the eye can count; three rows: each. */
    @Test
    void manyValuesAreNamedAtEvenDistances() {
        double[] columns = IntStream.range(60, 160).asDoubleStream().toArray();
        double[] rows = {1, 2, 3};
        double[][] values = new double[rows.length][columns.length];
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                values[row][column] = 1000 + row * column;
            }
        }
        Picture picture = SweepPictures.cells("cells", "cells", "across", columns, "up", rows, values);
        List<String> texts = TEXT.matcher(new String(picture.svg(), StandardCharsets.UTF_8))
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
        List<String> named = IntStream.iterate(60, n -> n < 160, n -> n + 5)
                .mapToObj(Integer::toString)
                .toList();
        List<String> between =
                texts.stream().filter(text -> text.matches("\\d{2,3}")).toList();
        assertEquals(named, between);
        assertTrue(texts.containsAll(List.of("1", "2", "3")), texts.toString());
    }
}
