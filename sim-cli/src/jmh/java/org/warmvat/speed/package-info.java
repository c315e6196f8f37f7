/**
 * Benchmarks of the engines, outside the product: each figure is told against a baseline of the same run. Entry: {@link
 * org.warmvat.speed.Speed}.
 */
package org.warmvat.speed;
