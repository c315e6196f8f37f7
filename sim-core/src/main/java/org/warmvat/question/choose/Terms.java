package org.warmvat.question.choose;

/**
 * What money costs.
 *
 * @param years life of what is bought, years, above 0
 * @param interest rate of interest a year, 0 or more
 * @param fixedOutlay what is bought whatever is chosen
 * @param upkeepPerYear upkeep a year
 */
public record Terms(double years, double interest, double fixedOutlay, double upkeepPerYear) {

    /**
     * The annuity factor: the equal yearly payment that pays one unit back with interest over the life, {@code i/(1 - (1 + i)^-n)};
     * {@code 1/n} without interest (any textbook of engineering economics: the capital recovery factor).
     */
    public double annuityPerYear() {
        return interest == 0 ? 1 / years : interest / -Math.expm1(-years * Math.log1p(interest));
    }
}
