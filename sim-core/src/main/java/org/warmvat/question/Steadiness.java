package org.warmvat.question;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.heating.BackupPart;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;

/**
 * What it costs to be steady: the sun may warm the contents above the set-point, as a store of heat, or no more than 1 K above it.
 *
 * @param limitK how far above the set-point the sun may warm now, K
 * @param asIs as the design has it
 * @param steady with a limit of 1 K
 */
public record Steadiness(double limitK, Course asIs, Course steady) {

    /** How far above the set-point the sun may warm a steady tank, K. */
    public static final double STEADY_K = 1;

    /**
     * A run.
     *
     * @param daysOver days on which the slurry changed by more than the guidance
     * @param heatKWh heat from the backup
     * @param shortHours hours below the minimum
     */
    public record Course(int daysOver, double heatKWh, double shortHours) {}

    /**
     * Compares both over a weather file.
     *
     * @param design a design that goes with the weather
     * @param runner weather and engine
     * @param parallel the threads
     * @return empty where the sun may not warm by more than 1 K above the set-point
     */
    public static Optional<Steadiness> of(Design design, Runner runner, Parallel parallel) {
        double limitK = design.highLimitC() - design.control().setpointC();
        if (design.solar().isEmpty() || limitK <= STEADY_K) {
            return Optional.empty();
        }
        List<Course> courses = parallel.map(
                List.of(design, design.with("solar.limit_above_setpoint_k", STEADY_K)), some -> course(some, runner));
        return Optional.of(new Steadiness(limitK, courses.get(0), courses.get(1)));
    }

    private static Course course(Design design, Runner runner) {
        Account account = runner.year(design, Account.Keep.SUMS);
        Period whole = account.whole();
        return new Course(
                account.warnings().stream()
                        .filter(warning -> warning.key().equals("daily_change"))
                        .mapToInt(warning -> (int) warning.count())
                        .findFirst()
                        .orElse(0),
                whole.of(BackupPart.HEAT),
                whole.of(KeyFigures.BELOW_FLOOR_HOURS));
    }
}
