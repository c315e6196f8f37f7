package org.warmvat.cli.plot;

/** This machine cannot draw; the message says why and what to install. */
public final class CannotDraw extends Exception {

    private static final long serialVersionUID = 1L;

    CannotDraw(Throwable cause) {
        super(
                "The pictures could not be drawn (" + cause
                        + "). Drawing needs fonts and a full Java: on"
                        + " Debian, apt-get install fontconfig fonts-dejavu-core openjdk-17-jre",
                cause);
    }
}
