/**
 * When to start a cold tank: the question {@code spring} (model section 12.6).
 *
 * <p>Entry type: {@link org.warmvat.question.spring.SpringStudy}. Left out: how long the digestion itself takes to start.
 */
package org.warmvat.question.spring;
