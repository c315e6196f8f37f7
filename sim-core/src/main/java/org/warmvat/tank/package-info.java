/**
 * A design in its weather as a tank that can run: its parts gathered into a network, its starting state, what is kept account of
 * besides the parts, and what follows from a design alone.
 *
 * <p>Entry types: {@link org.warmvat.tank.Runner} starts tanks, {@link org.warmvat.tank.TankRun} is one under way, {@link
 * org.warmvat.tank.DerivedFigures} says what needs no run. Left out: what is added up over a run, which is {@code account}, and every
 * question.
 */
package org.warmvat.tank;
