/**
 * Where the sun stands and what it gives on a plane: position by the hour, the split of global irradiance, tilted planes
 * and the faces of a tank (model sections 4.2 to 4.5).
 *
 * <p>Entry types: {@link org.warmvat.sun.SunTrack} for positions, {@link org.warmvat.sun.Plane} for a collector,
 * {@link org.warmvat.sun.TankFaces} for a tank. Left out: shading by surroundings, spectral effects, snow.
 */
package org.warmvat.sun;
