/** The sentences, tables and pictures of {@code year}; entry type {@link org.warmvat.cli.answer.year.YearAnswer}. */
package org.warmvat.cli.answer.year;
