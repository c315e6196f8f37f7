package org.warmvat.cli.option;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

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

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads the name. */
    static final class Converter implements ITypeConverter<EngineChoice> {
        @Override
        public EngineChoice convert(String name) {
            return Arrays.stream(values())
                    .filter(choice -> choice.toString().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("\"" + name + "\", expected " + names()));
        }

        private static String names() {
            return Arrays.stream(values()).map(EngineChoice::toString).collect(Collectors.joining(" or "));
        }
    }
}
