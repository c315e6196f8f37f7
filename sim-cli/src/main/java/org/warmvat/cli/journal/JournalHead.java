package org.warmvat.cli.journal;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What a journal is of.
 *
 * @param study hash of the program's version, the command, its options and its inputs
 * @param part which part of the runs, counted from 1
 * @param parts how many parts there are; 1 for the whole
 * @param words the command line
 */
public record JournalHead(String study, int part, int parts, List<String> words) {

    private static final String MAGIC = "warmvat runs 1";

    /** Keeps its own list. */
    public JournalHead {
        words = List.copyOf(words);
    }

    void write(DataOutput out) throws IOException {
        out.writeUTF(MAGIC);
        out.writeUTF(study);
        out.writeInt(part);
        out.writeInt(parts);
        out.writeInt(words.size());
        for (String word : words) {
            out.writeUTF(word);
        }
    }

    static JournalHead read(DataInput in) throws IOException {
        if (!in.readUTF().equals(MAGIC)) {
            throw new IOException("is no journal of runs");
        }
        String study = in.readUTF();
        int part = in.readInt();
        int parts = in.readInt();
        List<String> words = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            words.add(in.readUTF());
        }
        return new JournalHead(study, part, parts, words);
    }
}
