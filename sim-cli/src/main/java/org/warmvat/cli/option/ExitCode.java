package org.warmvat.cli.option;

/** How a command ended, as the shell sees it. */
public enum ExitCode {
    /** The command did what it was asked. */
    DONE(0),
    /** The program broke down: a fault of ours, not of the user. */
    OUR_FAULT(1),
    /** The command line was wrong. */
    WRONG_USE(2),
    /** A design or weather file was refused; the messages say where and why. */
    INPUT_REFUSED(3),
    /** The inputs were good but the run could not be completed, its results not written, or it was stopped (Ctrl-C). */
    RUN_NOT_COMPLETED(4);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** The number the process ends with. */
    public int number() {
        return number;
    }
}
