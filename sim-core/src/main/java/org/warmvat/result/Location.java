package org.warmvat.result;

/**
 * Where the weather of a run belongs.
 *
 * @param site name of the weather file's site
 * @param latitudeDeg latitude, north positive; decides which months are winter
 */
public record Location(String site, double latitudeDeg) {}
