package org.warmvat.cli.answer.folder;

/** The place named for the results cannot be used; nothing has been touched. The message is ready to print. */
public final class ResultsRefused extends Exception {

    private static final long serialVersionUID = 1L;

    ResultsRefused(String message) {
        super(message);
    }
}
