/**
 * A synthetic year of hours from twelve monthly normals: right means, spread and persistence, the same for the same seed.
 *
 * <p>Entry type: {@link org.warmvat.weather.made.MadeYear}.
 */
package org.warmvat.weather.made;
