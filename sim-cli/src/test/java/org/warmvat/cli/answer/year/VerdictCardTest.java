package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.VerdictCard;
import org.warmvat.network.Warning;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;
import org.warmvat.weather.WeatherYear;

/** Five lines that say whether a tank is warm, pays back, lives on sun and money, and what to mend first. */
class VerdictCardTest {

    private static VerdictCard card(YearResult run, List<Warning> warnings, String... assumed) {
        Subject asked = new Subject(
                "year",
                Optional.of(run.design()),
                List.of(new WeatherYear("", Summary.WEATHER)),
                "fast",
                new Subject.InputReading(List.of(), List.of(), List.of(assumed), List.of()));
        return VerdictCard.of(run.whole(), run.gas(), warnings, asked);
    }

    @Test
    void aWarmTankWithGasAndPricesHasFivePlainLines() {
        YearResult run = SyntheticRun.usual();
        VerdictCard card = card(run, List.of());
        assertEquals("never below 34.0 °C", card.warm());
        assertTrue(card.netEnergy().startsWith("positive with low, middle and high gas: about "), card.netEnergy());
        assertTrue(card.solarFraction().matches("[0-9]+ %"), card.solarFraction());
        assertTrue(card.money().matches("a (gain|loss) of about .* EUR"), card.money());
        assertTrue(card.mendFirst().startsWith("the largest loss: "), card.mendFirst());
    }

    @Test
    void withoutItsOwnPricesNoMoneyIsTold() {
        assertEquals(
                "not judged: the design states no prices",
                card(SyntheticRun.usual(), List.of(), "prices.gas_worth_per_kwh not given: 0.09")
                        .money());
    }

    @Test
    void withoutGasNothingIsSaidOfNetEnergy() {
        assertEquals(
                "not judged: no gas is computed",
                card(SyntheticRun.withoutGas(), List.of()).netEnergy());
    }

    /** What hurts comes before what leaves the tank cold. */
    @Test
    void theGravestIsMendedFirst() {
        Warning cold = new Warning("below_floor", "Cold.", 1, 0);
        Warning air = new Warning("air_share", "Air.", 1, 0);
        assertEquals(
                "the air dosing: it goes on where gas is short",
                card(SyntheticRun.usual(), List.of(cold, air)).mendFirst());
        assertTrue(card(SyntheticRun.usual(), List.of(cold)).mendFirst().startsWith("the heating"));
        Warning boiling = new Warning(KeyFigures.BOILING, "Boiling.", 1, 143);
        assertEquals(
                "the heat: the slurry boils",
                card(SyntheticRun.usual(), List.of(cold, air, boiling)).mendFirst());
    }
}
