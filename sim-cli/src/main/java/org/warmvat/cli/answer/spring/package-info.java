/**
 * The sentences, tables and pictures of {@code spring}.
 *
 * <p>Entry type: {@link org.warmvat.cli.answer.spring.SpringAnswer}.
 */
package org.warmvat.cli.answer.spring;
