/**
 * What a design says of where the tank stands: outdoors, room or shelter, ground, sky, horizon and trees.
 *
 * <p>Entry type: {@link org.warmvat.design.surroundings.Place}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.surroundings;
