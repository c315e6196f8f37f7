package org.warmvat.cli.plot;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Supplier;

/** Draws pictures. */
public final class Pictures {

    private Pictures() {}

    /**
     * Draws them all, in the order in which they are read.
     *
     * @param drawings called for only on a machine that can draw: what a drawing is made of needs the same parts of Java
     * @throws CannotDraw on a machine without fonts or without the parts of Java that draw
     */
    public static List<Picture> of(Supplier<List<Drawing>> drawings) throws CannotDraw {
        refuseWithoutFonts();
        // each drawing is its own, so the order in which threads take them leaves no trace
        return drawings.get().parallelStream().map(Picture::of).toList();
    }

    /** Measures one letter: what fails there is the machine, what fails later is the program. */
    private static void refuseWithoutFonts() throws CannotDraw {
        System.setProperty("java.awt.headless", "true");
        Graphics2D g2 = null;
        try {
            g2 = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            g2.getFontMetrics(Form.WIDE.text()).stringWidth("x");
        } catch (LinkageError | InternalError | RuntimeException missing) { // Java has no one exception for it
            throw new CannotDraw(missing);
        } finally {
            if (g2 != null) {
                g2.dispose();
            }
        }
    }

    /** This machine cannot draw; the message says why and what to install. */
    public static final class CannotDraw extends Exception {

        private static final long serialVersionUID = 1L;

        CannotDraw(Throwable cause) {
            super(
                    "The pictures could not be drawn (" + cause
                            + "). Drawing needs fonts and a full Java: on"
                            + " Debian, apt-get install fontconfig fonts-dejavu-core openjdk-17-jre",
                    cause);
        }
    }
}
