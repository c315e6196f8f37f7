package org.warmvat.cli.plot;

import java.awt.Graphics2D;
import java.util.function.Consumer;

/** A picture that is described but not drawn yet; the kinds of charts of this package are such. */
public abstract class Drawing {

    private final String name;
    private final String title;
    private String how = "";

    /** A picture laid out in one form, ready to be painted at the form's width. */
    record Sheet(int heightPx, Consumer<Graphics2D> paint) {}

    /**
     * A picture.
     *
     * @param name file name without ending
     * @param title title
     */
    Drawing(String name, String title) {
        this.name = name;
        this.title = title;
    }

    /** Says how to read it. */
    final void explain(String text) {
        how = text;
    }

    /** File name without ending. */
    public final String name() {
        return name;
    }

    /** Title, as it also stands in the picture. */
    public final String title() {
        return title;
    }

    /** How to read it. */
    public final String caption() {
        return how;
    }

    /** What is seen in it, in words and numbers, for those who cannot see it. */
    public abstract String alternative();

    /** Lays it out; called once for each form. */
    abstract Sheet on(Form form);
}
