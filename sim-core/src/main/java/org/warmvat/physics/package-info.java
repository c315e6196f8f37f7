/**
 * What nature gives: constants and the properties of air, water and slurry.
 *
 * <p>Entry types: {@link org.warmvat.physics.PhysicalConstants} and the property classes beside it. Left out: anything about
 * a particular tank.
 */
package org.warmvat.physics;
