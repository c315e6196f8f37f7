/**
 * The sentences, tables and pictures of {@code advise}.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.advise.AdviseAnswer}.
 */
package org.warmvat.cli.answer.advise;
