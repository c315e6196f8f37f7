/**
 * What a logger wrote beside a real tank: temperatures, and what went in. Entry type: {@link org.warmvat.log.LogFiles}, which reads
 * files into a {@link org.warmvat.log.Log}. Knows no design and fits nothing.
 */
package org.warmvat.log;
