package org.warmvat.cli.answer.sizes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.question.sizes.SizesResult.Size;

/** Pictures of the sizes: what a litre returns, and what is taken of the gas. */
final class SizesPictures {

    private SizesPictures() {}

    static List<Drawing> of(List<Size> sizes, boolean gas) {
        List<Drawing> pictures = new ArrayList<>();
        String net = SizesAnswer.net(sizes.get(0).isUsed());
        pictures.add(chart(
                        sizes,
                        "net_by_size",
                        (sizes.get(0).isUsed() ? "Useful net energy" : "Net energy") + " by size",
                        "kWh a litre over the run")
                .dotted(net + " for each litre", Look.FIRST, points(sizes, SizesAnswer::perLitre))
                .dotted(
                        "gas for each litre",
                        Look.SECOND,
                        points(sizes, size -> SizesAnswer.gasKWh(size) / size.litres())));
        if (gas) {
            pictures.add(chart(sizes, "eaten_by_size", "Share of the gas taken, by size", "% of the gas's energy")
                    .dotted(
                            "by heating",
                            Look.FIRST,
                            points(sizes, size -> 100 * SizesAnswer.boughtKWh(size) / SizesAnswer.gasKWh(size)))
                    .dotted(
                            "by electricity",
                            Look.SECOND,
                            points(
                                    sizes,
                                    size -> 100 * size.output("electricity_total_kwh") / SizesAnswer.gasKWh(size))));
        }
        return pictures;
    }

    private static LineChart chart(List<Size> sizes, String name, String title, String up) {
        double[] litres = each(sizes, Size::litres);
        return LineChart.over(name, title, "litres of slurry", litres[0], litres[litres.length - 1])
                .caption("Each dot is one run over the whole weather file.")
                .stripWithZero(up, 1e-3)
                .level("zero", Look.MARK, 0);
    }

    private static Points points(List<Size> sizes, ToDoubleFunction<Size> value) {
        return new Points(each(sizes, Size::litres), each(sizes, value));
    }

    private static double[] each(List<Size> sizes, ToDoubleFunction<Size> value) {
        return sizes.stream().mapToDouble(value).toArray();
    }
}
