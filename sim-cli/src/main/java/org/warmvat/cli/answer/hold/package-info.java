/** The sentences of {@code hold}; entry type {@link org.warmvat.cli.answer.hold.HoldAnswer}. */
package org.warmvat.cli.answer.hold;
