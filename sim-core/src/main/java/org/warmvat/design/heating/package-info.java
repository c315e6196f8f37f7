/**
 * The two circuits, their coils and controls, and the collector, as a design states them.
 *
 * <p>Entry type: {@link org.warmvat.design.heating.SolarCircuit}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.heating;
