/** The sentences of {@code vary}; entry type {@link org.warmvat.cli.answer.vary.VaryAnswer}. */
package org.warmvat.cli.answer.vary;
