/**
 * The tank itself as a design states it: shape, contents, paddle, outlet.
 *
 * <p>Entry type: {@link org.warmvat.design.tank.Tank}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.tank;
