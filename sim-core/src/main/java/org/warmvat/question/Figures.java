package org.warmvat.question;

import java.util.List;
import org.warmvat.network.Warning;

/**
 * What a run among many gave: few numbers, the same ones of every run of a study, and what it warns of.
 *
 * @param numbers its numbers in the study's order; read only
 * @param warnings what the user must know of it
 */
@SuppressWarnings("ArrayRecordComponent") // read only; there may be very many
public record Figures(double[] numbers, List<Warning> warnings) {}
