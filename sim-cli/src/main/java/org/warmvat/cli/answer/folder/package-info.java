/**
 * Answers as a folder of files, whole or not at all.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.folder.ResultsFolder}.
 */
package org.warmvat.cli.answer.folder;
