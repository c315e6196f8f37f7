package org.warmvat.question.fit;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.GasRange;

/**
 * What a log says of a tank.
 *
 * @param factors the factors sought
 * @param derived what follows from them
 * @param residuals what is left between log and model
 * @param doubts what stands against the finding
 * @param fitted the design with the factors that were found; empty where none was, or where log and design do not go together
 * @param course log and model
 * @param pieces what the log's pieces say by themselves
 * @param suspects parts that alone could explain the difference, the least strained first
 * @param years what it means for each year; none without a year of weather or without a finding
 * @param notes what was assumed on the way, one sentence each
 */
public record FitResult(
        Map<Factor, Found> factors,
        Derived derived,
        Residuals residuals,
        Doubts doubts,
        Optional<Design> fitted,
        FitCourse course,
        Pieces pieces,
        List<Suspect> suspects,
        List<Year> years,
        List<String> notes) {

    /** Copies. */
    public FitResult {
        factors = Collections.unmodifiableSortedMap(new TreeMap<>(factors));
        suspects = List.copyOf(suspects);
        notes = List.copyOf(notes);
        years = List.copyOf(years);
    }

    /**
     * A factor.
     *
     * @param estimate its value
     * @param held whether it was held as the design has it, since the log cannot tell it
     */
    public record Found(FittedFigure estimate, boolean held) {}

    /**
     * What follows from the factors.
     *
     * @param uaWPerK loss of envelope, edges and fittings at the log's mean wind
     * @param timeConstantH heat capacity of the contents over that
     * @param capacityJPerK heat capacity of the contents
     * @param ratio loss over heat capacity, as a multiple of the drawn, where both were asked for and cannot be told apart
     */
    public record Derived(
            FittedFigure uaWPerK, FittedFigure timeConstantH, double capacityJPerK, Optional<FittedFigure> ratio) {

        /** The same where log and design do not go together: no interval says how wrong that is. */
        Derived withoutRanges() {
            return new Derived(uaWPerK.withoutRange(), timeConstantH.withoutRange(), capacityJPerK, Optional.empty());
        }
    }

    /**
     * What stands against the finding.
     *
     * @param alike factors that the log cannot tell apart; none where it can
     * @param atTheEnd factors that stand at the end of what is tried, 0.1 to 10: log and design then do not go together
     * @param clock a clock that does not go with the weather file's
     * @param units temperatures that look like degrees Fahrenheit
     */
    public record Doubts(List<Factor> alike, List<Factor> atTheEnd, Optional<ClockDoubt> clock, UnitDoubt units) {

        /** Copies. */
        public Doubts {
            alike = List.copyOf(alike);
            atTheEnd = List.copyOf(atTheEnd);
        }

        /** Whether the log tells the factors apart. */
        public boolean toldApart() {
            return alike.isEmpty();
        }

        /** Whether log and design go together: no factor stands at the end of what is tried. */
        public boolean goesTogether() {
            return atTheEnd.isEmpty();
        }
    }

    /**
     * What is left between log and model.
     *
     * @param sdK standard deviation
     * @param lag1 correlation of neighbours
     * @param readings how many
     * @param hours over how long a time, gaps left out
     */
    public record Residuals(double sdK, double lag1, int readings, double hours) {}

    /** The worst year: the one with the least net energy as fitted, without gas that with most bought; empty where there is none. */
    public Optional<Year> year() {
        return years.stream().min(Comparator.comparingDouble(Year::goodKWh));
    }

    /**
     * What it means for a year.
     *
     * @param year its place among the years
     * @param backupBoughtKWh energy bought for the backup heater
     * @param netEnergyKWh net energy; means nothing where no gas is computed
     * @param gas the tank as fitted with low and high gas, where gas is computed
     * @param shortHours hours below the minimum as fitted
     * @param warnings what the year of the tank as fitted warns of
     */
    public record Year(
            int year,
            FittedFigure backupBoughtKWh,
            FittedFigure netEnergyKWh,
            Optional<GasRange.Ends> gas,
            double shortHours,
            List<Warning> warnings) {

        /** Copies. */
        public Year {
            warnings = List.copyOf(warnings);
        }

        private double goodKWh() {
            return gas.isPresent() ? netEnergyKWh.value() : -backupBoughtKWh.value();
        }
    }
}
