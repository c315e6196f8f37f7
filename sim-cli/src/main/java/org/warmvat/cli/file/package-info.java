/**
 * Design files in: YAML or JSON text to the records of {@code org.warmvat.design}, or every fault in it at once.
 *
 * <p>Entry type: {@link org.warmvat.cli.file.DesignDocument}. The keys, with unit, range, default and reason, stand at the
 * components of those records; from them the tests generate the shipped {@code design.schema.json}. Reading runs: text, located tree,
 * schema, records, checks across keys, design. Left out: weather files, and anything but reading.
 */
package org.warmvat.cli.file;
