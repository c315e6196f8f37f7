package org.warmvat.checks;

import org.warmvat.weather.KusudaAchenbach1965;

/**
 * From a published equation: T. Kusuda and P. R. Achenbach, ASHRAE Transactions 71(1) (1965): undisturbed ground. Equation
 * from memory, its structure seen; numbers derived and checked against the heat equation. Tolerance: half the last digit.
 */
class GroundKusudaAchenbachCaseTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.SKY,
                "Kusuda and Achenbach",
                "T. Kusuda, P. R. Achenbach, ASHRAE Transactions 71(1) (1965) 61-75.",
                "Mean 10 °C, amplitude 10 K, coldest on day 35, 0.05 m2/day.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        KusudaAchenbach1965 ground = new KusudaAchenbach1965(10, 10, 35, 0.05);
        sheet.table(Provenance.DERIVED)
                .value("0.5 m down on day 35, °C", 2.04770, ground.temperatureC(0.5, 35), 5e-6)
                .value("0.5 m down on day 200, °C", 17.09755, ground.temperatureC(0.5, 200), 5e-6)
                .value("2 m down on day 35, °C", 7.05598, ground.temperatureC(2, 35), 5e-6)
                .value("5 m down on day 200, °C", 9.09454, ground.temperatureC(5, 200), 5e-6);
    }
}
