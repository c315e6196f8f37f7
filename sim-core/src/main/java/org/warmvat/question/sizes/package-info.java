/**
 * The same tank at other sizes: how each number of a design follows the volume, and from which size on net energy is positive.
 *
 * <p>Entry types: {@link org.warmvat.question.sizes.SizesStudy}, {@link org.warmvat.question.sizes.Scaling}. What a size costs is left
 * to prices in the design.
 */
package org.warmvat.question.sizes;
