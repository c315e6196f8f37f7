/**
 * What the records of a design say about their keys, and what follows from it: reading a design from its keys, its defaults, the range
 * check at birth, and single numbers by their paths.
 *
 * <p>Entry type: {@link org.warmvat.design.keys.Key}, the one place where a key has its name, unit, range, default and reason. Left out:
 * the text of files (YAML, JSON, lines), and every meaning of a key.
 */
package org.warmvat.design.keys;
