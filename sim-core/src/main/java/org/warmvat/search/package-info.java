/**
 * Search for the best point of a grid of choices: {@link org.warmvat.search.GridSearch}. Left out: what the choices are and what a
 * point costs, which the asker judges.
 */
package org.warmvat.search;
