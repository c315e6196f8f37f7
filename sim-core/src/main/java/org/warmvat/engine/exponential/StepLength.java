package org.warmvat.engine.exponential;

/** What belongs to one length of step: how every chain answers over it, and how quickly the chains answer the slurry within it. */
final class StepLength {

    final double stepS;
    final StepResponse[] ofChain;
    /** Conductance from the slurry to what has not yet moved in the later part of half a step, W/K. */
    final double quickWPerK;

    StepLength(double stepS, StepResponse[] ofChain, double quickWPerK) {
        this.stepS = stepS;
        this.ofChain = ofChain;
        this.quickWPerK = quickWPerK;
    }
}
