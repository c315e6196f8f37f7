package org.warmvat.cli.plot;

import java.awt.Graphics2D;
import java.util.function.Consumer;
import java.util.function.Function;

/** A picture that is described but not drawn yet; the kinds of charts of this package make them. */
public final class Drawing {

    private final String name;
    private final String title;
    private final String caption;
    private final String alternative;
    private final Function<Form, Sheet> canvas;

    /** A picture laid out in one form, ready to be painted at the form's width. */
    record Sheet(int heightPx, Consumer<Graphics2D> paint) {}

    /**
     * A picture.
     *
     * @param name file name without ending
     * @param title title
     * @param caption how to read it
     * @param alternative what is seen in it, with numbers
     * @param canvas lays it out in a form; called once for each form
     */
    Drawing(String name, String title, String caption, String alternative, Function<Form, Sheet> canvas) {
        this.name = name;
        this.title = title;
        this.caption = caption;
        this.alternative = alternative;
        this.canvas = canvas;
    }

    /** File name without ending. */
    public String name() {
        return name;
    }

    /** Title, as it also stands in the picture. */
    public String title() {
        return title;
    }

    /** How to read it. */
    public String caption() {
        return caption;
    }

    /** What is seen in it, in words and numbers, for those who cannot see it. */
    public String alternative() {
        return alternative;
    }

    Sheet on(Form form) {
        return canvas.apply(form);
    }
}
