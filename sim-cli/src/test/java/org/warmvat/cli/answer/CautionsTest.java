package org.warmvat.cli.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.design.Design;

/** Each answer takes the cautions that apply to its design, from one text. */
class CautionsTest {

    private static List<String> of(String more) {
        Design design = DesignDocument.parse("design", """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation: pir_foam, insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                """ + more).design();
        return Cautions.of(Optional.of(design));
    }

    private static boolean say(List<String> cautions, String words) {
        return cautions.stream().anyMatch(caution -> caution.contains(words));
    }

    @Test
    void everyTankHasLocalCodesFirstAndIsNeverEntered() {
        List<String> cautions = of("");
        assertTrue(cautions.get(0).startsWith("Local codes"), cautions.get(0));
        assertTrue(say(cautions, "Never enter a tank"));
        assertTrue(say(cautions, "The first fill, a restart from cold"));
        assertTrue(say(cautions, "pulls a vacuum"));
        assertTrue(say(cautions, "carry germs"));
        assertTrue(say(cautions, "lock the power off"));
        assertTrue(say(cautions, "weigh about 912 kg"));
        assertTrue(cautions.get(cautions.size() - 1).endsWith("no proof of safety."));
    }

    @Test
    void whatADesignDoesNotHaveIsNotWarnedOf() {
        List<String> cautions = of("");
        for (String words :
                List.of("Hot water", "solar loop", "heating element", "flame supervision", "Air dosed", "room or")) {
            assertFalse(say(cautions, words), words);
        }
    }

    @Test
    void elementOwnGasDosingAndRoomsBringTheirs() {
        List<String> cautions = of("""
                gas: {air_dosing: {litres_per_hour: 1}}
                backup: {source: own_gas, through: immersed, rated_w: 500, efficiency: 0.8}
                """);
        assertTrue(say(cautions, "heating element in the slurry"));
        assertTrue(say(cautions, "flame supervision"));
        assertTrue(say(cautions, "Air dosed against hydrogen sulphide"));
        assertTrue(say(cautions, "Hot water and steam scald"));
        List<String> indoors =
                Cautions.of(Optional.of(DesignDocument.parse("design", """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15, place: indoors, room_c: 15}
                envelope: {insulation: pir_foam, insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                mixer: {minutes_per_hour: 10}
                """).design()));
        assertTrue(say(indoors, "In a room or under a cover"));
        assertTrue(say(indoors, "a crust may form"));
    }

    @Test
    void weatherAloneHasOnlyThatItIsACalculation() {
        assertEquals(1, Cautions.of(Optional.empty()).size());
    }
}
