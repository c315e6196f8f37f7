package org.warmvat.checks;

/**
 * Published: Scottish Executive, building standards consultation 2005, annex 6.B: the two heat paths of a timber frame wall.
 * Seen. Conditions: resistances as listed there, each taken as a layer of that resistance. Tolerance: half the last digit.
 */
class TimberFrameScottishExecutiveTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "Scottish Executive",
                "Scottish Executive, building standards consultation 2005, annex 6.B,"
                        + " http://www.scotland.gov.uk/library5/development/ddsub/dbsr05nd-86.asp",
                "m2K/W: surfaces 0.040 and 0.130, brick 0.132, cavity 0.090, plywood 0.146, wool 3.333 or stud 1.077,"
                        + " plasterboard 0.100; each a layer of 0.1 m.",
                Source.HALF_DIGIT);
    }

    private static double path(double filling) {
        double d = 0.1;
        return 1
                / new Chains.Wall(
                                Chains.plane(
                                        Chains.layer(d, d / 0.100),
                                        Chains.layer(d, d / filling),
                                        Chains.layer(d, d / 0.146),
                                        Chains.layer(d, d / 0.090),
                                        Chains.layer(d, d / 0.132)),
                                1 / 0.130,
                                1 / 0.040)
                        .wattsPerK();
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value("path through wool, m2K/W", 3.971, path(3.333), 5e-4)
                .value("path through stud, m2K/W", 1.715, path(1.077), 5e-4);
    }
}
