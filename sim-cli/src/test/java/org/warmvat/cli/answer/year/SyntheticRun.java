package org.warmvat.cli.answer.year;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;

/** Runs of the demonstration's tank, changed in a line or two, in weather worked out by a few lines of arithmetic. */
public final class SyntheticRun {

    /**
     * What the run is like.
     *
     * @param title title of its design
     * @param start start of its first hour
     * @param hours its length
     * @param latitudeDeg latitude
     * @param solar whether the sun heats
     * @param backup what the backup is fed with: electric, own_gas, fuel
     */
    public record Case(
            String title, LocalDateTime start, int hours, double latitudeDeg, boolean solar, Optional<String> backup) {

        /** The usual case: a year in the north with sun and an electric backup. */
        public static Case usual() {
            return new Case("Invented tank", at(2025, 1), 8760, 53, true, Optional.of("electric"));
        }
    }

    private SyntheticRun() {}

    /** The usual run. */
    public static YearResult usual() {
        return of(Case.usual());
    }

    /** A run of some case. */
    public static YearResult of(Case with) {
        return run(with, text(with), 0);
    }

    /** A run that is short in the cold months: a backup too small. */
    public static YearResult shortAtTimes() {
        return run(Case.usual(), text(Case.usual()).replace("rated_w: 500", "rated_w: 60"), 0);
    }

    /** A run that is never warm: with a heater of a few watts, in the cold. */
    public static YearResult neverWarm() {
        String weak = text(Case.usual()).replace("rated_w: 500", "rated_w: 5").replace("area_m2: 2.0", "area_m2: 0.1");
        return run(Case.usual(), weak, 20);
    }

    /** A run that eats more than it returns: little gas. */
    public static YearResult negative() {
        String little = text(Case.usual())
                .replace("methane_nm3_per_kg_vs: 0.42", "methane_nm3_per_kg_vs: 0.05")
                .replace("methane_nm3_per_kg_vs: 0.27", "methane_nm3_per_kg_vs: 0.05");
        return run(Case.usual(), little, 0);
    }

    /** A run of a design without a gas block. */
    public static YearResult withoutGas() {
        return run(Case.usual(), without("gas", text(Case.usual())), 0);
    }

    /** A run without a solar circuit. */
    public static YearResult withoutSun() {
        Case usual = Case.usual();
        return of(new Case(usual.title(), usual.start(), usual.hours(), 53, false, Optional.of("fuel")));
    }

    /** A run without a backup heater. */
    public static YearResult withoutBackup() {
        Case usual = Case.usual();
        return of(new Case(usual.title(), usual.start(), usual.hours(), 53, true, Optional.empty()));
    }

    /** Start of a month. */
    public static LocalDateTime at(int year, int month) {
        return LocalDateTime.of(year, month, 1, 0, 0);
    }

    private static String text(Case with) {
        String text = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8)
                .replaceFirst(
                        "title: .*",
                        "title: '" + with.title().replace("'", "''").replace("$", "\\$") + "'");
        text = with.solar() ? text : without("solar", text);
        return with.backup().isEmpty()
                ? without("backup", text)
                : text.replace("source: electric ", "source: " + with.backup().get() + " ");
    }

    private static String without(String block, String text) {
        return text.replaceFirst("(?m)^" + block + ":\\n(?: .*\\n)+", "");
    }

    private static YearResult run(Case with, String text, double coldK) {
        Design design = DesignDocument.parse("invented.yaml", text).design();
        try {
            return YearStudy.run(design, new Runner(weather(with, coldK), new ExponentialEngine()), HourSink.IGNORE);
        } catch (StudyRefused impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Weather weather(Case with, double coldK) {
        double[] air = new double[with.hours()];
        double[] global = new double[with.hours()];
        for (int hour = 0; hour < air.length; hour++) {
            LocalDateTime time = with.start().plusHours(hour);
            double season = -Math.cos(2 * Math.PI * (time.getDayOfYear() - 15) / 365) * Math.signum(with.latitudeDeg());
            double day = Math.sin(2 * Math.PI * (time.getHour() - 8) / 24.0);
            double cloud = 0.55 + 0.45 * Math.sin(time.getDayOfYear() * 1.7);
            air[hour] = 9 + 8 * season + 3.5 * day + 2 * Math.sin(time.getDayOfYear() * 0.61) - coldK;
            global[hour] = Math.max(0, day * (450 + 350 * season)) * cloud;
        }
        Map<Quantity, double[]> columns = new EnumMap<>(Map.of(Quantity.AIR, air, Quantity.GLOBAL, global));
        Site site = new Site("Nowhere (invented)", with.latitudeDeg(), 0, 100, 0);
        return new Weather(new HourlyTable(site, with.start(), Stamp.HOUR_END, columns));
    }
}
