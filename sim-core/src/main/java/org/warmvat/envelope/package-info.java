/**
 * Heat lost through walls, lid, floor, edges and fittings (model sections 2.1 to 2.8).
 *
 * <p>Layers become chains of nodes ({@link org.warmvat.envelope.LayerChain}); outer faces meet air, wind, sky and sun
 * ({@link org.warmvat.envelope.OuterFilm}), a room, or the ground. Entry types: {@link org.warmvat.envelope.EnvelopePart} and
 * {@link org.warmvat.envelope.FittingsPart}. Left out: moisture in the foam, wind washing through gaps, shading.
 */
package org.warmvat.envelope;
