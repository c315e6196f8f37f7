package org.warmvat.cli;

/** A command whose runs may be done in parts. */
interface Partable extends Answering {

    /** Its options about parts. */
    ManyRuns many();
}
