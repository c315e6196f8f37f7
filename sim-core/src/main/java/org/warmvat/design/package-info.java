/**
 * The design of a tank as plain records: what the builder decides, checked at birth. One room per thing; this one holds the whole and what belongs to all.
 *
 * <p>Entry type: {@link org.warmvat.design.Design}. Every record refuses a value out of its range with an
 * {@link java.lang.IllegalArgumentException} that names the value and the range; what may be absent is an {@code Optional} or a
 * sealed alternative. Defaults are not decided here but where design files are read. Left out: reading files, and all physics
 * beyond quantities that follow from the design alone (areas, volumes, retention time, solids of the contents).
 */
package org.warmvat.design;
