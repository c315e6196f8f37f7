package org.warmvat.study;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.BackupSource;
import org.warmvat.design.CardinalTemperatures;
import org.warmvat.design.Control;
import org.warmvat.design.Design;
import org.warmvat.design.Gas;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.result.Period;
import org.warmvat.result.Warning;
import org.warmvat.tank.Housekeeping;

/** What a run warns of, each with how often and how bad (equations 7.4 and 7.6). */
final class Warnings {

    private static final double S_PER_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;
    private static final int HOURS_PER_DAY = 24;

    private final Design design;
    private final HourLog log;
    private final List<Warning> found = new ArrayList<>();

    private Warnings(Design design, HourLog log) {
        this.design = design;
        this.log = log;
    }

    /** The warnings of a run. */
    static List<Warning> of(Design design, HourLog log, LocalDateTime start, List<Period> days) {
        Warnings warnings = new Warnings(design, log);
        warnings.belowFloor();
        warnings.outsideDigestion();
        warnings.dailyChange(start);
        warnings.circuits();
        warnings.pipes();
        warnings.air();
        warnings.ownGas(days);
        return List.copyOf(warnings.found);
    }

    private void belowFloor() {
        Control control = design.control();
        watched(
                "below_floor",
                Housekeeping.BELOW_FLOOR,
                control.minimumC(),
                -1,
                "The slurry stood below the floor temperature of " + degrees(control.minimumC())
                        + " for %s; the lowest was %.1f °C.");
        watched(
                "slurry_freezing",
                Housekeeping.FREEZING,
                0,
                -1,
                "The slurry stood below 0 °C for %s, the lowest %.1f °C: freezing is not modelled, so the results are no"
                        + " longer valid from there.");
    }

    private void outsideDigestion() {
        if (design.gas().isEmpty()) {
            return;
        }
        CardinalTemperatures limits = design.gas().map(Gas::temperatures).orElseThrow();
        watched(
                "too_cold_to_digest",
                Housekeeping.TOO_COLD,
                limits.leastC(),
                -1,
                "The slurry stood below the feedstocks' least temperature of " + degrees(limits.leastC())
                        + " for %s; the lowest was %.1f °C.");
        watched(
                "too_hot_to_digest",
                Housekeeping.TOO_HOT,
                limits.mostC(),
                1,
                "The slurry stood above the feedstocks' highest temperature of " + degrees(limits.mostC())
                        + " for %s; the highest was %.1f °C.");
    }

    /** Days on which the slurry stands further from 24 h before than the two marks, at midnights. */
    private void dailyChange(LocalDateTime start) {
        double noticeK = design.control().dailyChange().noticeK();
        double warningK = design.control().dailyChange().warningK();
        int noticed = 0;
        int warned = 0;
        double worstK = 0;
        for (int edge = HOURS_PER_DAY; edge <= log.hours(); edge++) {
            if (start.plusHours(edge).getHour() == 0) {
                double changeK = Math.abs(log.slurryC()[edge] - log.slurryC()[edge - HOURS_PER_DAY]);
                noticed += changeK > noticeK ? 1 : 0;
                warned += changeK > warningK ? 1 : 0;
                worstK = Math.max(worstK, changeK);
            }
        }
        if (noticed > 0) {
            found.add(new Warning(
                    "daily_change",
                    text(
                            "On %d days the slurry stood more than %s K, and on %d of them more than %s K, from 24 h before;"
                                    + " the largest change was %.1f K (guidance from 0.5 K to 3 K a day is in use: common"
                                    + " practice, no single source).",
                            noticed, number(noticeK), warned, number(warningK), worstK),
                    noticed,
                    worstK));
        }
    }

    private void circuits() {
        design.solar().ifPresent(solar -> {
            watched(
                    "solar_caking",
                    SolarPart.SOLAR_CAKING,
                    solar.cakingC(),
                    1,
                    "Water entered the solar coil above " + degrees(solar.cakingC())
                            + ", where slurry may cake on it, for %s; the hottest was %.1f °C.");
            watched(
                    "stagnation",
                    SolarPart.STAGNATION,
                    solar.stagnationC(),
                    1,
                    "The collector stood above " + degrees(solar.stagnationC())
                            + " for %s; the hottest was %.1f °C. Such a loop needs a relief valve and fluid that bears"
                            + " the heat.");
            watched(
                    "loop_frozen",
                    SolarPart.LOOP_FROZEN,
                    solar.loop().freezesC(),
                    -1,
                    "The solar loop stood below its fluid's freezing point of "
                            + degrees(solar.loop().freezesC()) + " for %s; the coldest was %.1f °C.");
        });
        design.backup()
                .map(backup -> backup.through())
                .filter(through -> through instanceof BackupCircuit.Circuit)
                .map(BackupCircuit.Circuit.class::cast)
                .ifPresent(circuit -> watched(
                        "backup_caking",
                        BackupPart.BACKUP_CAKING,
                        circuit.cakingC(),
                        1,
                        "Water entered the backup coil above " + degrees(circuit.cakingC())
                                + ", where slurry may cake on it, for %s; the hottest was %.1f °C."));
    }

    private void pipes() {
        watched(
                "cold_pipe_end",
                FittingsPart.COLD_PIPE_END,
                0,
                -1,
                "The coldest end of a slurry pipe stood below 0 °C for %s; the coldest was %.1f °C. A frozen outlet"
                        + " blocks.");
    }

    private void air() {
        double[] share = AirShare.byHour(design, log);
        int hours = AirShare.hoursAboveLimit(design, share, 0, log.hours());
        if (hours == 0) {
            return;
        }
        double highest = DoubleStream.of(share).max().orElse(0);
        String worst = Double.isInfinite(highest)
                ? "in some hours no gas was made at all"
                : text("the highest share was %.1f %%", 100 * highest);
        found.add(new Warning(
                "air_share",
                text(
                        "The dosed air was above %s %% of the dry biogas for %d h; %s. Air and biogas can form an explosive"
                                + " mixture: stop dosing when the gas stops.",
                        number(100 * AirShare.warningShare(design)), hours, worst),
                hours,
                highest));
    }

    /** Days on which a backup that burns the tank's own gas burns more than the tank makes (equation 6.3). */
    private void ownGas(List<Period> days) {
        if (design.backup()
                .filter(backup -> backup.source() == BackupSource.OWN_GAS)
                .isEmpty()) {
            return;
        }
        long count = days.stream().filter(day -> missingKWh(day) > 0).count();
        double worst = days.stream().mapToDouble(Warnings::missingKWh).max().orElse(0);
        if (count > 0) {
            found.add(new Warning(
                    "own_gas_short",
                    text(
                            "On %d days the backup burnt more of the tank's own gas than the tank made; the worst day was"
                                    + " short of %.1f kWh. Stored gas or another fuel must fill the gap.",
                            count, worst),
                    count,
                    worst));
        }
    }

    private static double missingKWh(Period day) {
        return day.circuits().backupBoughtKWh() - day.gas().gasEnergyKWh();
    }

    /** Adds a warning of a watch that held; its worst value is the mark plus or minus the worst margin. */
    private void watched(String kind, String watch, double markC, int sign, String sentence) {
        double hours = DoubleStream.of(log.watchS(watch)).sum() / S_PER_HOUR;
        if (hours > 0) {
            double worst = markC + sign * log.worst(watch);
            found.add(new Warning(kind, text(sentence, duration(hours), worst), hours, worst));
        }
    }

    /** Hours, or minutes where hours would round to little or nothing. */
    private static String duration(double hours) {
        return hours >= 1 ? text("%.1f h", hours) : text("%.0f min", Math.ceil(hours * MINUTES_PER_HOUR));
    }

    private static String degrees(double celsius) {
        return number(celsius) + " °C";
    }

    private static String number(double value) {
        return value == Math.rint(value) ? text("%.0f", value) : Double.toString(value);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
