/**
 * What a design says of the gas: its use and store, air against hydrogen sulphide, pipe and condensate, digestion's temperatures.
 *
 * <p>Entry type: {@link org.warmvat.design.gas.Gas}. Records are valid from birth; the whole is {@link org.warmvat.design.Design}.
 */
package org.warmvat.design.gas;
