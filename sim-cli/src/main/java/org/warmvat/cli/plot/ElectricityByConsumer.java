package org.warmvat.cli.plot;

import java.awt.Color;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;
import org.warmvat.result.Electricity;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** Electricity by consumer, month by month; consumers that took none are left out. */
final class ElectricityByConsumer {

    private static final String TITLE = "Electricity by consumer, by month";

    private record Consumer(String name, Swatch swatch, ToDoubleFunction<Electricity> kWh) {}

    private static final List<Consumer> CONSUMERS = List.of(
            new Consumer("mixer", new Swatch(new Color(0x1F3A52), Hatch.NONE), Electricity::mixerKWh),
            new Consumer("auger", new Swatch(new Color(0xF2D08A), Hatch.FALLING), Electricity::augerKWh),
            new Consumer("shredder", new Swatch(new Color(0xB5651D), Hatch.NONE), Electricity::shredderKWh),
            new Consumer("solar pump", new Swatch(new Color(0xFBEFD2), Hatch.NONE), Electricity::solarPumpKWh),
            new Consumer("backup pump", new Swatch(Palette.BACKUP, Hatch.RISING), Electricity::backupPumpKWh),
            new Consumer("air pump", new Swatch(new Color(0xD6E4EC), Hatch.CROSSED), Electricity::airPumpKWh),
            new Consumer("controls", new Swatch(new Color(0x8FA3AD), Hatch.LEVEL), Electricity::electronicsKWh));

    private ElectricityByConsumer() {}

    static Drawing of(RunResult run) {
        List<Consumer> consumers = CONSUMERS.stream()
                .filter(consumer -> consumer.kWh().applyAsDouble(run.year().electricity()) > 0)
                .toList();
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(
                new HatchedBars(consumers.stream().map(Consumer::swatch).toList()));
        bars.setShadowVisible(false);
        CategoryPlot plot = new CategoryPlot(
                dataset(run.months(), consumers), Months.axis(run.months()), Charts.amounts("kWh a month"), bars);
        Charts.dress(plot);
        Legend legend = new Legend();
        consumers.forEach(consumer -> legend.area(consumer.name(), consumer.swatch()));
        plot.setFixedLegendItems(legend.items());
        String caption = "What the tank's machinery drew; the electricity of an electric backup heater is not in here.";
        return new Drawing("electricity_by_consumer", TITLE, caption, Charts.dressed(TITLE, plot), 420);
    }

    private static DefaultCategoryDataset dataset(List<Period> months, List<Consumer> consumers) {
        DefaultCategoryDataset dataset = new DefaultCategoryDataset();
        for (Period month : months) {
            String label = Months.label(month, months);
            for (Consumer consumer : consumers) {
                dataset.addValue(consumer.kWh().applyAsDouble(month.electricity()), consumer.name(), label);
            }
        }
        return dataset;
    }
}
