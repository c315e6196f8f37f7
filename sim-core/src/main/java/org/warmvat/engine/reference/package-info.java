/**
 * The engine to be trusted: a library's explicit integrator with tight tolerances, events on its dense output, watches timed on the same.
 *
 * <p>Entry type: {@link org.warmvat.engine.reference.ReferenceEngine}. Left out: what the nodes mean; the engine reads the same description
 * of a tank as the everyday engine. The only package that uses an integration library.
 */
package org.warmvat.engine.reference;
