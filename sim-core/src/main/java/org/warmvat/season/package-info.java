/**
 * What the calendar puts in force at an instant (model section 12).
 *
 * <p>Entry type: {@link org.warmvat.season.InForce}. Left out: what the tank's parts make of it.
 */
package org.warmvat.season;
