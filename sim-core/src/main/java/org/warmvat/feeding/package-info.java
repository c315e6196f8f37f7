/**
 * What enters by the auger and the water pipe: its heat, frozen or not, and the electricity to move and cut it (equations
 * 3.1 to 3.3).
 *
 * <p>Entry type: {@link org.warmvat.feeding.FeedPart}; {@link org.warmvat.feeding.FeedFlow} tells others how much enters. Left
 * out: the few per cent of the feed's mass that leave as gas; the level-setting outlet lets out as much as comes in.
 */
package org.warmvat.feeding;
