/**
 * What is possible but improbable in a weather file: wrong stamps, units, places and sensors. Nothing found here stops a run.
 *
 * <p>Entry type: {@link org.warmvat.weather.doubt.Doubts}.
 */
package org.warmvat.weather.doubt;
