/**
 * Least squares on a series of times whose errors remember one another: Levenberg-Marquardt, AR(1) errors with covariance,
 * and the moving-block bootstrap beside them. Entry type: {@link org.warmvat.regression.AutoregressiveFit}. Knows no tank.
 */
package org.warmvat.regression;
