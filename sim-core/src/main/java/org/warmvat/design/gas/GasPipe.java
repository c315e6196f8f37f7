package org.warmvat.design.gas;

import org.warmvat.design.keys.Key;

/**
 * The pipe in which the gas's water falls out (equation 14.3).
 *
 * @param coolsTo how far the gas cools in it
 */
public record GasPipe(
        @Key(name = "cools_to", says = "How far the gas cools in its pipe: to the air, the ground, or fixed")
        Condensate coolsTo) {}
