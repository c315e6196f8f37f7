package org.warmvat.cli.option;

import org.warmvat.cli.answer.Document;

/** A command that answers; what it answers can be had without printing it. */
public interface Answering {

    /** Checks the options, reads the inputs, works the answer out. */
    Document document() throws Exception;
}
