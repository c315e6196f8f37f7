/** The sentences of {@code check}; entry type {@link org.warmvat.cli.answer.check.CheckAnswer}. */
package org.warmvat.cli.answer.check;
