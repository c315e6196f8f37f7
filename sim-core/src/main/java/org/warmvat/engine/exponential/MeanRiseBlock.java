package org.warmvat.engine.exponential;

import java.util.Arrays;

/** What mean (m) and rise (r) of one thing do to mean and rise of another. */
final class MeanRiseBlock {
    double mm;
    double mr;
    double rm;
    double rr;

    static MeanRiseBlock[][] square(int count) {
        MeanRiseBlock[][] blocks = new MeanRiseBlock[count][count];
        for (MeanRiseBlock[] row : blocks) {
            Arrays.setAll(row, i -> new MeanRiseBlock());
        }
        return blocks;
    }

    void set(double newMm, double newMr, double newRm, double newRr) {
        mm = newMm;
        mr = newMr;
        rm = newRm;
        rr = newRr;
    }

    void add(double moreMm, double moreMr, double moreRm, double moreRr) {
        set(mm + moreMm, mr + moreMr, rm + moreRm, rr + moreRr);
    }

    void addProduct(MeanRiseBlock a, MeanRiseBlock b) {
        add(a.mm * b.mm + a.mr * b.rm, a.mm * b.mr + a.mr * b.rr, a.rm * b.mm + a.rr * b.rm, a.rm * b.mr + a.rr * b.rr);
    }
}
