package org.warmvat.cli.option;

import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;

/** Engines by the name they have on the command line. */
public enum EngineChoice {
    /** The engine for everyday use. */
    FAST {
        @Override
        Engine engine() {
            return new ExponentialEngine();
        }
    },
    /** The engine to be trusted. */
    REFERENCE {
        @Override
        Engine engine() {
            return new ReferenceEngine();
        }
    };

    abstract Engine engine();
}
