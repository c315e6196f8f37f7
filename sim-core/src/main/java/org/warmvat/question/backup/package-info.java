/**
 * Which heater to buy (model section 10, backup)?
 *
 * <p>Entry type: {@link org.warmvat.question.backup.BackupStudy}.
 */
package org.warmvat.question.backup;
