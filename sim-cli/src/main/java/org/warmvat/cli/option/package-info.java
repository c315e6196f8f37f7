/**
 * What commands share on the command line: options, input files, progress, exit codes, runs in parts.
 *
 * <p>Entry type: {@link org.warmvat.cli.option.RunningCommand}.
 */
package org.warmvat.cli.option;
