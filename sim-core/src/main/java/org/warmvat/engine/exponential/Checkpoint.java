package org.warmvat.engine.exponential;

import org.warmvat.engine.HourRecord;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** All that a step changes, as it stood before; a record that has just begun is only begun again. */
final class Checkpoint {

    private final State state;
    private final HourRecord record;
    private final boolean ofWholeHour;
    private final double[] content;

    Checkpoint(Network network, State like, HourRecord likeRecord, int modes, boolean ofWholeHour) {
        state = like.copy();
        record = new HourRecord(network, state);
        record.set(likeRecord);
        content = new double[modes];
        this.ofWholeHour = ofWholeHour;
    }

    void keep(State of, HourRecord ofRecord, double[] ofModes) {
        state.set(of);
        if (!ofWholeHour) {
            record.set(ofRecord);
        }
        System.arraycopy(ofModes, 0, content, 0, content.length);
    }

    void restore(State into, HourRecord intoRecord, double[] intoModes) {
        into.set(state);
        if (ofWholeHour) {
            intoRecord.begin(intoRecord.hour());
        } else {
            intoRecord.set(record);
        }
        System.arraycopy(content, 0, intoModes, 0, content.length);
    }
}
