package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in seasons, surroundings, shelter, holder and uses: each a clear message with line and key. */
class LifeBlockFaultsTest {

    private static final String GOOD = """
            tank: {inner_diameter_m: 1, liquid_depth_m: 1.15, place: shelter}
            shelter: {kind: timber, floor_area_m2: 6, cover_area_m2: 30, volume_m3: 15}
            envelope: {insulation_mm: 100}
            feed: {feedstocks: [{name: scraps, kg_per_day: 10}]}
            control: {setpoint_c: 36}
            gas: {holder: {useful_m3: 1}, uses: [{name: stove, kind: burner, kw: 2, efficiency: 0.5}]}
            surroundings: {horizon: [{azimuth_deg: 90, elevation_deg: 5}, {azimuth_deg: 185, elevation_deg: 24}]}
            calendar: [{name: rest, from: "11-16", to: "03-10", feed_factor: 0}, {from: "02-01", to: "02-10", ramp_days: 3, setpoint_c: 20}]
            """;

    private static List<String> faults(String text) {
        return assertThrows(InputRefused.class, () -> DesignDocument.parse("d.yaml", text))
                .faults();
    }

    /** Spells that overlap are allowed. */
    @Test
    void theGoodOneIsRead() {
        assertEquals(2, DesignDocument.parse("d.yaml", GOOD).design().spells().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "azimuth_deg: 185 | azimuth_deg: 90 | d.yaml line 7: surroundings.horizon has an azimuth twice, expected each once (360 is 0)",
                "\"11-16\" | \"02-30\" | d.yaml line 8: calendar[0].from \"02-30\", expected a day of every year such as \"11-16\"",
                "\"11-16\" | \"02-29\" | d.yaml line 8: calendar[0].from \"02-29\", expected a day of every year such as \"11-16\"",
                "kw: 2 | kw: 900 | d.yaml line 6: gas.uses[0].kw 900, expected at most 334 kW: it would empty the full holder in less than a minute",
                "ramp_days: 3 | ramp_days: 11 | d.yaml line 8: calendar[1].ramp_days 11, expected up to the length of the spell, 10 days",
                "holder: {useful_m3: 1}, | ' ' | d.yaml line 6: gas.uses need a gas holder, expected a block holder"
            })
    void aSlipIsNamed(String was, String is, String message) {
        assertEquals(List.of(message), faults(GOOD.replace(was, is)));
    }

    @Test
    void aShelterNeedsItsBlock() {
        String text = GOOD.replace("shelter: {kind: timber, floor_area_m2: 6, cover_area_m2: 30, volume_m3: 15}\n", "");
        assertEquals(
                List.of("d.yaml line 1: shelter is missing, expected a block (needed for place: shelter)"),
                faults(text));
    }

    @Test
    void twelveValuesAreTwelve() {
        String text =
                GOOD.replace("surroundings: {", "surroundings: {shade_by_month: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0], ");
        assertEquals(
                List.of("d.yaml line 7: surroundings.shade_by_month has 11 values, expected twelve or none"),
                faults(text));
    }
}
