package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CellChartTest {

    private static final Pattern TEXT = Pattern.compile(">([^<>]+)</text");

    /** A hundred columns: every fifth is named, from the first on, so that the eye can count; three rows: each. */
    @Test
    void manyValuesAreNamedAtEvenDistances() throws Pictures.CannotDraw {
        double[] columns = IntStream.range(60, 160).asDoubleStream().toArray();
        double[] rows = {1, 2, 3};
        double[][] values = new double[rows.length][columns.length];
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                values[row][column] = 1000 + row * column;
            }
        }
        Drawing drawing = new CellChart(
                "cells", "cells", new CellChart.Side("across", columns), new CellChart.Side("up", rows), values);
        Picture picture = Pictures.of(() -> List.of(drawing)).get(0);
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
        assertEquals(
                "cells over across and up; lowest 1000 at 60 and 1; highest 1198 at 159 and 3.", drawing.alternative());
    }
}
