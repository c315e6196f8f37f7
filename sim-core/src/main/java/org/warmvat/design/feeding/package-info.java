/**
 * What is fed, when, how warm and how it digests, as a design states it.
 *
 * <p>Entry type: {@link org.warmvat.design.feeding.Feed}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.feeding;
