/**
 * The sentences, tables and pictures of {@code holder}.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.holder.HolderAnswer}.
 */
package org.warmvat.cli.answer.holder;
