/**
 * What should be changed in a design, what first?
 *
 * <p>Entry type: {@link org.warmvat.question.advise.AdviseStudy}. Every change is itself run, in all weather files, before it is named, and
 * none is named that makes another thing worse that could hurt.
 */
package org.warmvat.question.advise;
