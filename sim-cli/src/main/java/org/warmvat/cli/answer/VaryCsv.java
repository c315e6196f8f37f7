package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;

/** The table of all runs of a sweep. Shards of a sweep laid end to end give the table of the whole, byte for byte. */
public final class VaryCsv {

    private VaryCsv() {}

    /** The rows, with the headings or, for any shard but the first, without. */
    public static byte[] of(Sweep sweep, boolean headed) {
        ExactCsv csv = new ExactCsv();
        if (headed) {
            List<String> header = new ArrayList<>(sweep.keys());
            header.addAll(Outputs.NAMES);
            csv.header(header);
        }
        for (int run = 0; run < sweep.runs(); run++) {
            csv.row(joined(sweep.values().get(run), sweep.outputs().get(run)));
        }
        return csv.bytes();
    }

    /** Some of the runs. */
    static byte[] of(Sweep sweep, int[] runs) {
        ExactCsv csv = new ExactCsv();
        List<String> header = new ArrayList<>(sweep.keys());
        header.addAll(Outputs.NAMES);
        csv.header(header);
        for (int run : runs) {
            csv.row(joined(sweep.values().get(run), sweep.outputs().get(run)));
        }
        return csv.bytes();
    }

    private static double[] joined(double[] first, double[] second) {
        double[] all = new double[first.length + second.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }
}
