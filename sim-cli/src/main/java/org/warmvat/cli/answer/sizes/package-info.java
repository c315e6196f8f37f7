/** The sentences of {@code sizes}; entry type {@link org.warmvat.cli.answer.sizes.SizesAnswer}. */
package org.warmvat.cli.answer.sizes;
