/**
 * Runs that are kept on disk while a study of many goes on: {@link org.warmvat.cli.journal.Journal}. Left out: what the runs are.
 */
package org.warmvat.cli.journal;
