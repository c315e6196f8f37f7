/**
 * A first design for a size and a climate by rules of thumb, each of them common practice without a source.
 *
 * <p>Entry type: {@link org.warmvat.question.starter.Starter}. The file with the rules as comments is the program's.
 */
package org.warmvat.question.starter;
