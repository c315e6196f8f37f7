package org.warmvat.cli.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/**
 * A file's keys and values, and the line of each.
 *
 * @param root keys and values as written
 * @param lines line of each key and entry by its path, counted from 1; the whole file has the empty path
 */
record LocatedTree(ObjectNode root, Map<String, Integer> lines) {

    /** Blocks inside blocks a file may have; more than any design needs. */
    static final int DEEPEST = 20;
}
