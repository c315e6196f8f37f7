/** The sentences of {@code backup}; entry type {@link org.warmvat.cli.answer.backup.BackupAnswer}. */
package org.warmvat.cli.answer.backup;
