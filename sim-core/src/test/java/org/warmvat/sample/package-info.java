/** Tanks and weather, all invented, that the tests of every package put together and alter. */
package org.warmvat.sample;
