/**
 * The hourly files of public services, recognised by what stands in them and described by a layout each.
 *
 * <p>Entry types: {@link org.warmvat.weather.service.Recognised} for the known ones, {@link
 * org.warmvat.weather.service.LayoutProposal} for any other.
 */
package org.warmvat.weather.service;
