/**
 * Can the sun carry the load alone in a window of the calendar (model section 10, carry)?
 *
 * <p>Entry type: {@link org.warmvat.question.carry.CarryStudy}.
 */
package org.warmvat.question.carry;
