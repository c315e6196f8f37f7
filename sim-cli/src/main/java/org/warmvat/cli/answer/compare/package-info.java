/**
 * The sentences, tables and pictures of {@code compare}.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.compare.CompareAnswer}.
 */
package org.warmvat.cli.answer.compare;
