/**
 * How long does the tank stay warm when its heat fails, and how long does it take to warm up (model section 10, hold)?
 *
 * <p>Entry type: {@link org.warmvat.question.hold.HoldStudy}.
 */
package org.warmvat.question.hold;
