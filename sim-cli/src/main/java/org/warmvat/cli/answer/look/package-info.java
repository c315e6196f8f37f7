/** The sentences of {@code weather look}; entry type {@link org.warmvat.cli.answer.look.LookAnswer}. */
package org.warmvat.cli.answer.look;
