package org.warmvat.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Films;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.keys.Refused;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.tank.Shape;

/** Every record refuses what is out of its keys' ranges and says what, how much and what is allowed. */
class RefusalsTest {

    private static final Material FOAM = new Material("foam", 0.03, 30, 1400);

    static Stream<Arguments> refusals() {
        return Stream.of(
                Arguments.of("inner_diameter_m 0.1, expected a number, 0.2 to 20 m", (Executable)
                        () -> new Shape.UprightCylinder(0.1)),
                Arguments.of("inner_width_m NaN, expected a number, 0.2 to 20 m", (Executable)
                        () -> new Shape.Box(1, Double.NaN, 0)),
                Arguments.of("the name is blank", (Executable) () -> new Material(" ", 1, 30, 1400)),
                Arguments.of(
                        "thickness_mm 0, expected a number, 0.05 to 2000 mm", (Executable) () -> new Layer(FOAM, 0, 1)),
                Arguments.of(
                        "sub_nodes 0, expected a whole number, 1 to 50", (Executable) () -> new Layer(FOAM, 0.1, 0)),
                Arguments.of("sub_nodes 50, expected sub-nodes at least 0.05 mm thick", (Executable)
                        () -> new Layer(FOAM, 0.002, 50)),
                Arguments.of("lid has no entry, expected at least one", (Executable)
                        () -> new Envelope.Listed(List.of(new Layer(FOAM, 0.1, 1)), List.of(), layers())),
                Arguments.of("section_mm2 0, expected a number, 0.01 to 1000000 mm2", (Executable)
                        () -> new Fitting.Bars(FOAM, 0, 1, 1)),
                Arguments.of("fixed_c -50, expected a number, -40 to 100 C", (Executable)
                        () -> new FeedTemperature.Fixed(-50)),
                Arguments.of("hours 0, expected a number, 0.001 to 24 h", (Executable) () -> new DailyWindow(0, 0)),
                Arguments.of("start of a window in s 86400, expected 0 to 86399.99999999999", (Executable)
                        () -> new DailyWindow(86_400, 3600)),
                Arguments.of("feedstocks has no entry, expected at least one", (Executable)
                        () -> SampleDesign.feed(new FeedTemperature.Air(), java.util.Optional.empty())),
                Arguments.of("start_difference_k 2, expected above stop_difference_k, 2 K", (Executable)
                        () -> new PumpControl(2, 2, new HighLimit.At(40), 1, 95)),
                Arguments.of("floor_c 40, expected up to setpoint_c, 36 C", (Executable)
                        () -> new Control(36, 1, new Minimum.At(40), 3, new Control.DailyChange(1, 2), 10)),
                Arguments.of("daily_change_warning_k 0.5, expected daily_change_notice_k, 1 K, or above", (Executable)
                        () -> new Control.DailyChange(1, 0.5)),
                Arguments.of("most_days 5, expected least_days, 10 days, or above", (Executable)
                        () -> new RunIn.ByTimeConstants(10, 3, 5)),
                Arguments.of(
                        "wet_w_m2k 0, expected a number, 1 to 5000 W/m2K; dry_w_m2k 0, expected a number, 0.1 to 1000 W/m2K",
                        (Executable) () -> new Films(0, 10, 0, 4, 4, 7.7, 10)));
    }

    private static List<Layer> layers() {
        return List.of(new Layer(FOAM, 0.1, 1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void saysWhatItRefuses(String message, Executable birth) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, birth).getMessage());
    }

    @Test
    void everyNumberOfADesignHasItsRange() {
        Design usual = Design.usual();
        List<String> unbounded = new ArrayList<>();
        for (String path : usual.numbers().keySet()) {
            for (double far : new double[] {-1e12, 1e12}) {
                try {
                    usual.with(Map.of(path, far));
                    unbounded.add(path + " " + far);
                } catch (Refused refused) {
                    assertTrue(refused.getMessage().startsWith(path + " "), refused.getMessage());
                    assertTrue(refused.getMessage().contains(", expected a "), refused.getMessage());
                }
            }
        }
        assertEquals(List.of(), unbounded);
        assertTrue(usual.numbers().size() > 80, usual.numbers().toString());
    }
}
