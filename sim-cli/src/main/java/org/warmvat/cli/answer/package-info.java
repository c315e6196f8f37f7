/**
 * The results folder of a run: the answer in plain sentences, the report page, the tables as CSV, {@code summary.json}.
 *
 * <p>Entry types: {@link org.warmvat.cli.answer.Report}, which turns a run into the bytes of each file, and {@link
 * org.warmvat.cli.answer.ResultsFolder}, which puts them in place whole or not at all. Left out: the drawing of pictures, which
 * come ready made from {@code org.warmvat.cli.plot}.
 */
package org.warmvat.cli.answer;
