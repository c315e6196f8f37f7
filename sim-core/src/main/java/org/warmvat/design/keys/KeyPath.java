package org.warmvat.design.keys;

import java.util.ArrayList;
import java.util.List;

/** Paths of keys as messages print them and as variations name them: {@code envelope.wall[1].thickness_mm}. */
public final class KeyPath {

    private KeyPath() {}

    /** The path of a key inside a block. */
    public static String key(String block, String key) {
        return block.isEmpty() ? key : block + "." + key;
    }

    /** The path of an entry, counted from 0. */
    public static String entry(String list, int index) {
        return list + "[" + index + "]";
    }

    /** The path of what a key or an entry stands in; empty for the whole file. */
    public static String parent(String path) {
        return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
    }

    /**
     * Cuts a path into its steps: {@code envelope}, {@code wall}, {@code [1]}, {@code thickness_mm}.
     *
     * @throws IllegalArgumentException when it is not a path
     */
    public static List<String> steps(String path) {
        if (!path.matches("[^.\\[\\]]+(\\[[^\\[\\]]+])*(\\.[^.\\[\\]]+(\\[[^\\[\\]]+])*)*")) {
            throw new IllegalArgumentException(Shown.quoted(path)
                    + " is no path of a key, expected one such as solar.area_m2 or envelope.wall[1].thickness_mm");
        }
        List<String> steps = new ArrayList<>();
        for (String part : path.split("\\.(?![^\\[]*])|(?=\\[)")) {
            steps.add(part);
        }
        return steps;
    }
}
