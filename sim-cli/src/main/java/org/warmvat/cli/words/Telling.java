package org.warmvat.cli.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Sentences, or the parts of one, in the order in which they are told; some stand only where something holds. */
public final class Telling {

    private final List<String> told = new ArrayList<>();

    /** Tells one. */
    public Telling say(String sentence) {
        told.add(sentence);
        return this;
    }

    /** Tells several. */
    public Telling say(Collection<String> sentences) {
        told.addAll(sentences);
        return this;
    }

    /** Tells one where there is one. */
    public Telling say(Optional<String> sentence) {
        return say(sentence.stream().toList());
    }

    /** Tells one where something holds; elsewhere it is not even made. */
    public Telling when(boolean holds, Supplier<String> sentence) {
        return holds ? say(sentence.get()) : this;
    }

    /** Tells one where something holds. */
    public Telling when(boolean holds, String sentence) {
        return when(holds, () -> sentence);
    }

    /** Tells one of each thing. */
    public <T> Telling each(Collection<T> things, Function<T, String> sentence) {
        return say(things.stream().map(sentence).toList());
    }

    /** What was told. */
    public List<String> done() {
        return List.copyOf(told);
    }
}
