package org.warmvat.cli.option;

/** A command whose runs may be done in parts. */
public interface Partable extends Answering {

    /** Its options about parts. */
    ManyRuns many();
}
