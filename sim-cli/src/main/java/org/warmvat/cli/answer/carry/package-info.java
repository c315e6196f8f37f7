/** The sentences of {@code carry}; entry type {@link org.warmvat.cli.answer.carry.CarryAnswer}. */
package org.warmvat.cli.answer.carry;
