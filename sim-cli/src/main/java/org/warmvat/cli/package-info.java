/**
 * The program as its user meets it: one class per command, exit codes, messages.
 *
 * <p>Entry type: {@link org.warmvat.cli.Warmvat}. A command reads, computes and writes, each by one call into another package.
 * The only package that knows the argument parser. Left out: reading of designs, reports and pictures.
 */
package org.warmvat.cli;
