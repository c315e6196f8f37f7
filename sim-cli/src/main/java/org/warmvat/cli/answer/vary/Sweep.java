package org.warmvat.cli.answer.vary;

import java.util.List;
import java.util.Map;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Numerals;

/**
 * Many runs of one design with some of its numbers varied.
 *
 * @param keys the numbers varied
 * @param counts how many values each takes
 * @param values by run: the values of the keys
 * @param names names of the outputs
 * @param outputs by run: the outputs in the order of their names
 */
public record Sweep(
        List<String> keys, int[] counts, List<double[]> values, List<String> names, List<double[]> outputs) {

    /** How many runs. */
    public int runs() {
        return values.size();
    }

    /** An output of all runs. */
    public double[] output(String name) {
        int index = names.indexOf(name);
        return outputs.stream().mapToDouble(row -> row[index]).toArray();
    }

    /** An output of a run. */
    double output(int run, String name) {
        return outputs.get(run)[names.indexOf(name)];
    }

    /** A run in words: its keys with their values. */
    String named(int run) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < keys.size(); i++) {
            words.append(i == 0 ? "" : ", ")
                    .append(keys.get(i))
                    .append(" = ")
                    .append(Numerals.exact(values.get(run)[i]));
        }
        return words.toString();
    }

    /** A run as figures: its keys with their values, and some of its outputs. */
    Map<String, Object> row(int run, List<String> shown) {
        Map<String, Object> row = Draft.row();
        for (int i = 0; i < keys.size(); i++) {
            row.put(keys.get(i), values.get(run)[i]);
        }
        shown.forEach(output -> row.putAll(Draft.row(output, output(run, output))));
        return row;
    }
}
