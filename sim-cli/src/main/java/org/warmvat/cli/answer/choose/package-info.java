/**
 * The sentences, tables and pictures of {@code choose}.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.choose.ChooseAnswer}.
 */
package org.warmvat.cli.answer.choose;
