package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.RankedBars;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.tank.PartLoss;
import org.warmvat.weather.Weather;

/** Where the heat of a tank goes at set-point, part by part, in W and, over the hours of the weather, in kWh. */
final class HeatLossPicture {

    /** File name without ending. */
    static final String NAME = "heat_loss";

    private HeatLossPicture() {}

    /** The picture for the mean air and wind of a weather file. */
    static Drawing of(Design design, Weather weather) {
        List<PartLoss> parts = PartLoss.of(design, weather.meanWindMPerS(), weather.meanAirC());
        double all = parts.stream().mapToDouble(PartLoss::watts).sum();
        RankedBars chart = RankedBars.of(NAME, "Where the heat goes: about " + loss(all, weather))
                .caption("Loss by part, worked out by hand for the set-point of "
                        + Words.celsius(design.control().setpointC()) + " in steady air of "
                        + Words.celsius(weather.meanAirC())
                        + ", the mean of the weather file, without sun and clear sky; in kWh over all its hours. Vapour in the"
                        + " gas is left out.");
        parts.forEach(part -> {
            Look look = part.part().startsWith("warming") ? Look.FEED : Look.BACKUP;
            chart.bar(part.part(), look, part.watts(), loss(part.watts(), weather));
        });
        return chart;
    }

    private static String loss(double watts, Weather weather) {
        return Words.number(watts) + " W, " + Words.kWh(watts * weather.hours() / 1000);
    }
}
