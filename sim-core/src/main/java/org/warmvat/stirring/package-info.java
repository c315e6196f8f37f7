/**
 * The slow paddle: heat of its shaft and electricity of its drive (equation 3.3).
 *
 * <p>Entry type: {@link org.warmvat.stirring.MixerPart}. Left out: how well the contents are mixed; the slurry is one fully
 * mixed node whether the paddle turns or not.
 */
package org.warmvat.stirring;
