package org.warmvat.cli.page;

import com.fasterxml.jackson.databind.util.RawValue;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.account.Books;
import org.warmvat.account.ChosenHour;
import org.warmvat.account.Hourly;
import org.warmvat.account.Ledger;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.year.YearAnswer;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.tank.Shape;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.WeatherYear;

/**
 * The year of a design as the page draws it, in one piece: the length of a JSON text in four bytes, the text, padded to a multiple of
 * four bytes, and then single-precision numbers, little end first: the columns of the hours, the days, the months and, where one was
 * chosen, of an hour. It is made anew with every move of a slider and holds only what the page shows; the whole answer is the question
 * {@code year}.
 */
final class LiveYear {

    private static final List<String> HOURLY =
            List.of("slurry_c", "setpoint_c", "solar_heat_w", "backup_heat_w", "loss_w", "feed_w");
    private static final Set<Line> DAILY =
            Set.of(GasPart.GAS_ENERGY, BackupPart.BOUGHT, Meter.ELECTRICITY, KeyFigures.NET);

    private LiveYear() {}

    /**
     * Runs a design.
     *
     * @param text the design
     * @param hour index of an hour whose flows are told too; negative for none
     * @throws org.warmvat.cli.file.InputRefused with every fault of the design
     * @throws StudyRefused when design and weather do not go together
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    static byte[] of(DesignText text, Weathers.Kept weather, int hour) throws StudyRefused {
        DesignDocument design = text.document();
        ChosenHour chosen = new ChosenHour(hour);
        YearResult run = YearStudy.run(design.design(), weather.runner(), chosen);
        Books books = run.whole().books();
        List<double[]> columns = new ArrayList<>();
        Map<String, Object> head = new LinkedHashMap<>();
        head.put("card", card(YearAnswer.inShort(run, asked(design, text, weather, run))));
        head.put("weather", weather.id());
        head.put("start", run.hourly().start().toString());
        head.put("hours", hours(run.hourly(), columns));
        List<Line> lines = books.lines();
        head.put(
                "days",
                periods(run.days(), lines.stream().filter(DAILY::contains).toList(), columns));
        head.put("months", periods(run.months(), lines, columns));
        List<Ledger.Item> flows = books.ledger(Balance.SLURRY).orElseThrow().flows();
        head.put("flows", flows.stream().map(LiveYear::flow).toList());
        List<Line> flowing = flows.stream().map(Ledger.Item::line).toList();
        head.put("hour", periods(chosen.flows(books).stream().toList(), flowing, columns));
        head.put("chosen_hour", hour);
        head.putAll(design(text, design.design()));
        return packed(Reply.jsonBytes(head), columns);
    }

    static Subject asked(DesignDocument design, DesignText text, Weathers.Kept weather, YearResult run) {
        InputFile file = InputFile.of("design", text.name(), text.text().getBytes(StandardCharsets.UTF_8));
        return new Subject(
                "year",
                Optional.of(design.design()),
                List.of(new WeatherYear(weather.id(), weather.weather())),
                run.engine(),
                new Subject.InputReading(
                        List.of(file, weather.file()), List.of(), design.assumed(), design.cautions()));
    }

    /** What the page needs of a design that can be run. */
    private static Map<String, Object> design(DesignText text, Design design) {
        Map<String, Double> numbers = design.numbers();
        return Draft.row(
                "text", text.text(),
                "tree", new RawValue(text.tree()),
                "numbers", numbers,
                "sliders", Sliders.of(design, numbers),
                "tank", tank(design));
    }

    private static Map<String, Object> card(Document document) {
        return Draft.row(
                "title", document.heading().title(),
                "subtitle", document.heading().subtitle(),
                "sentence", document.verdict().sentence(),
                "but", document.verdict().but(),
                "figures",
                        document.body().keyFigures().stream()
                                .map(figure -> List.of(figure.name(), figure.value()))
                                .toList(),
                "warnings", document.grounds().warnings().size(),
                "cautions", document.grounds().cautions());
    }

    private static Map<String, Object> flow(Ledger.Item item) {
        return Draft.row("column", item.line().column(), "name", item.line().name(), "sign", item.factor());
    }

    private static Map<String, Object> hours(Hourly hourly, List<double[]> columns) {
        List<String> names = new ArrayList<>();
        for (String name : HOURLY) {
            hourly.column(name).ifPresent(values -> {
                names.add(name);
                columns.add(values);
            });
        }
        return Draft.row("count", hourly.hours(), "columns", names);
    }

    private static Map<String, Object> periods(List<Period> periods, List<Line> lines, List<double[]> columns) {
        lines.forEach(line -> columns.add(
                periods.stream().mapToDouble(period -> period.of(line)).toArray()));
        return Draft.row(
                "count", periods.size(),
                "labels", periods.stream().map(Period::label).toList(),
                "lengths_h", periods.stream().map(Period::hours).toList(),
                "columns", lines.stream().map(Line::column).toList());
    }

    /** Sizes of the tank for a drawing to scale, m. */
    private static Map<String, Object> tank(Design design) {
        Shape shape = design.tank().shape();
        double width = shape instanceof Shape.Box box
                ? Math.max(box.innerLengthM(), box.innerWidthM())
                : ((Shape.UprightCylinder) shape).innerDiameterM();
        return Draft.row(
                "width_m", width,
                "depth_m", design.tank().liquidDepthM(),
                "headspace_m", design.tank().headspaceHeightM(),
                "wall_m", thickness(design.envelope().wall()),
                "lid_m", thickness(design.envelope().lid()),
                "base_m", thickness(design.envelope().floor()),
                "collector_m2",
                        design.solar().map(solar -> solar.collector().areaM2()).orElse(0.0),
                "tilt_deg",
                        design.solar()
                                .map(solar -> solar.collector().plane().tiltDeg())
                                .orElse(0.0),
                "backup", design.backup().isPresent(),
                "setpoint_c", design.control().setpointC(),
                "minimum_c", design.control().minimumC());
    }

    private static double thickness(List<Layer> layers) {
        return layers.stream().mapToDouble(Layer::thicknessM).sum();
    }

    private static byte[] packed(byte[] head, List<double[]> columns) {
        int length = (head.length + 3) / 4 * 4;
        int numbers = columns.stream().mapToInt(column -> column.length).sum();
        ByteBuffer all = ByteBuffer.allocate(4 + length + 4 * numbers).order(ByteOrder.LITTLE_ENDIAN);
        byte[] padding = new byte[length - head.length];
        Arrays.fill(padding, (byte) ' ');
        all.putInt(length).put(head).put(padding);
        for (double[] column : columns) {
            for (double value : column) {
                all.putFloat((float) value);
            }
        }
        return all.array();
    }
}
