package org.warmvat.cli.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;

class SetpointLinesTest {

    private static final int WEEK_H = 168;
    private static final Design RESTS = Design.of(
            Reader.tree(
                    "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}, envelope: {insulation_mm: 100}, "
                            + "control: {setpoint_c: 36}, feed: {feedstocks: [{kg_per_day: 10}]}, "
                            + "calendar: [{name: rest, from: 11-16, to: 03-10, feed_factor: 0, setpoint_c: 8, minimum: none}]}"),
            Findings.strict());

    /** In the rest the set-point is 8 °C and there is no minimum; in July both are the design's own. */
    @Test
    void aWeekOfTheRestHasItsOwnSetpointAndNoMinimum() throws Exception {
        assertEquals(List.of(true, false, false), drawn(1));
        assertEquals(List.of(false, true, true), drawn(7));
    }

    /** Whether 8 °C and 36 °C are on the scale, and whether a minimum is named. */
    private static List<Boolean> drawn(int month) throws Exception {
        LocalDateTime start = LocalDateTime.of(2025, month, 10, 0, 0);
        LineChart chart = LineChart.overTime("week", "Week", start, start.plusHours(WEEK_H))
                .strip("°C", 1);
        SetpointLines.setpoint(chart, RESTS, start, WEEK_H);
        SetpointLines.minimum(chart, RESTS, start, WEEK_H);
        String text = new String(Pictures.of(() -> List.of(chart)).get(0).narrowSvg(), StandardCharsets.UTF_8);
        return List.of(
                text.contains(">8<") || text.contains(">8.0<"),
                text.contains(">36<") || text.contains(">36.0<"),
                text.contains(">minimum<"));
    }
}
