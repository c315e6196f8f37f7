/**
 * Holds the classes of both modules against the drawn package map, {@code docs/packages.md}.
 *
 * <p>Entry type: {@link org.warmvat.architecture.PackageMapTest}.
 */
package org.warmvat.architecture;
