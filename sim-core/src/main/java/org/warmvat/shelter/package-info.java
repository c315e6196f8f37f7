/**
 * The unheated shed, lean-to or tunnel round a tank: one temperature of its own (model section 13.5).
 *
 * <p>Entry type: {@link org.warmvat.shelter.ShelterPart}. Left out: layers of air, damp, sun that falls on the tank itself.
 */
package org.warmvat.shelter;
