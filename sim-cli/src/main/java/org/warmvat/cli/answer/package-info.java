/**
 * What a command answers: one document of verdict, paragraphs, tables, pictures, warnings, cautions and assumptions, and one writer
 * for each form it takes: terminal, page, {@code summary.json}, CSV, the folder of results.
 *
 * <p>Entry types: {@link org.warmvat.cli.answer.Draft}, by which a question puts its document together, {@link
 * org.warmvat.cli.answer.Grounds}, which gathers what stands beside every answer, and {@link
 * org.warmvat.cli.answer.folder.ResultsFolder}, which appears whole or not at all. Left out: the sentences of each question, in rooms of
 * their own below, and the drawing of pictures.
 */
package org.warmvat.cli.answer;
