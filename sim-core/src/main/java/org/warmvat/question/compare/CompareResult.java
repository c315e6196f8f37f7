package org.warmvat.question.compare;

import java.util.List;
import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.weather.Weather;

/**
 * Designs in weather files, side by side.
 *
 * @param columns every design in every weather file, the files of a design one after the other
 * @param differences what is not the same in all designs, by key
 * @param judgements what is best at what
 */
public record CompareResult(List<Column> columns, List<Difference> differences, List<Judgement> judgements) {

    /**
     * One design in one weather file.
     *
     * @param design index of the design
     * @param file index of the weather file
     * @param drawn the design
     * @param weather the file
     * @param year the whole file
     * @param months its calendar months
     * @param days its days
     * @param warnings what is warned of
     */
    public record Column(
            int design,
            int file,
            Design drawn,
            Weather weather,
            Period year,
            List<Period> months,
            List<Period> days,
            List<Warning> warnings) {}

    /**
     * A key whose value is not the same in all designs.
     *
     * @param key path of the key
     * @param values as the file would write it, for each design; empty where the design has no such key
     */
    public record Difference(String key, List<Optional<String>> values) {}

    /**
     * What is best at one thing: among the designs in one weather file or, of a single design, among the weather files.
     *
     * @param merit at what
     * @param among indices of the columns that were held against each other
     * @param best those of them that are best; all where they are alike
     */
    public record Judgement(Merit merit, List<Integer> among, List<Integer> best) {

        /** Whether none is better than another. */
        public boolean alike() {
            return best.size() == among.size();
        }
    }
}
