package org.warmvat.cli.journal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UTFDataFormatException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import org.warmvat.network.Warning;
import org.warmvat.question.Figures;
import org.warmvat.question.Kept;

/**
 * A file in which a study keeps its runs one by one, each with its check sum. A program that is killed in the midst of a run leaves at
 * most the last entry torn, which is cut off when the journal is opened again. Only the places of the runs are held in memory.
 */
public final class Journal implements Kept, Closeable {

    private static final int LARGEST_ENTRY = 10_000_000;
    private static final int FRAME = 2 * Integer.BYTES;

    // no channel: one closes itself when the thread that reads is interrupted
    private RandomAccessFile file;
    private final Path path;
    private final JournalHead head;
    private final Map<Long, Long> places = new ConcurrentHashMap<>();
    private long end;

    private Journal(Path path, JournalHead head) {
        this.path = path;
        this.head = head;
    }

    /** Begins a journal. Its file, in place of what stands there, is made with the first run that is kept. */
    public static Journal begun(Path path, JournalHead head) {
        return new Journal(path, head);
    }

    private void begin() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        head.write(new DataOutputStream(bytes));
        Files.createDirectories(path.toAbsolutePath().getParent());
        file = new RandomAccessFile(path.toFile(), "rw");
        file.setLength(0);
        file.write(bytes.toByteArray());
        end = bytes.size();
    }

    /**
     * Opens a journal, to go on with it or to read in it.
     *
     * @throws IOException when the file is none, or cannot be read
     */
    public static Journal opened(Path path, boolean toGoOn) throws IOException {
        RandomAccessFile file = new RandomAccessFile(path.toFile(), toGoOn ? "rw" : "r");
        try {
            Journal journal = new Journal(path, JournalHead.read(file));
            journal.file = file;
            journal.end = file.getFilePointer();
            journal.find();
            return journal;
        } catch (EOFException | UTFDataFormatException none) {
            file.close();
            throw new IOException("is no journal of runs", none);
        } catch (IOException unreadable) {
            file.close();
            throw unreadable;
        }
    }

    /** Finds all entries; what follows the last whole one will be written over. */
    private void find() throws IOException {
        for (Optional<byte[]> entry = entry(end); entry.isPresent(); entry = entry(end)) {
            places.put(ByteBuffer.wrap(entry.get()).getLong(), end);
            end += FRAME + entry.get().length;
        }
    }

    /** What it is of. */
    public JournalHead head() {
        return head;
    }

    /** How many runs it holds. */
    public int runs() {
        return places.size();
    }

    @Override
    public Optional<Figures> of(long run) {
        Long place = places.get(run);
        try {
            return place == null ? Optional.empty() : entry(place).map(Journal::figures);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public synchronized void keep(long run, Figures figures) {
        if (!places.containsKey(run)) {
            try {
                append(run, bytes(run, figures));
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
        }
    }

    private void append(long run, byte... bytes) throws IOException {
        if (file == null) {
            begin();
        }
        ByteBuffer entry = ByteBuffer.allocate(FRAME + bytes.length);
        entry.putInt(bytes.length).put(bytes).putInt(sum(bytes));
        file.seek(end);
        file.write(entry.array());
        places.put(run, end);
        end += entry.capacity();
    }

    /** The bytes of the entry at a place; empty where no whole one stands. */
    private synchronized Optional<byte[]> entry(long place) throws IOException {
        long left = file.length() - place - FRAME;
        file.seek(place);
        int length = left < 0 ? 0 : file.readInt();
        if (length < Long.BYTES || length > Math.min(left, LARGEST_ENTRY)) {
            return Optional.empty();
        }
        byte[] bytes = new byte[length];
        file.readFully(bytes);
        return file.readInt() == sum(bytes) ? Optional.of(bytes) : Optional.empty();
    }

    private static int sum(byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return (int) crc.getValue();
    }

    private static byte[] bytes(long run, Figures figures) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(run);
        out.writeInt(figures.numbers().length);
        for (double number : figures.numbers()) {
            out.writeLong(Double.doubleToRawLongBits(number));
        }
        out.writeInt(figures.warnings().size());
        for (Warning warning : figures.warnings()) {
            write(warning, out);
        }
        return bytes.toByteArray();
    }

    private static void write(Warning warning, DataOutputStream out) throws IOException {
        out.writeUTF(warning.key());
        out.writeUTF(warning.sentence());
        out.writeDouble(warning.count());
        out.writeDouble(warning.worst());
    }

    private static double[] numbers(DataInputStream in) throws IOException {
        double[] numbers = new double[in.readInt()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.longBitsToDouble(in.readLong());
        }
        return numbers;
    }

    private static Figures figures(byte[] bytes) {
        try {
            DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
            in.readLong();
            double[] numbers = numbers(in);
            List<Warning> warnings = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                warnings.add(new Warning(in.readUTF(), in.readUTF(), in.readDouble(), in.readDouble()));
            }
            return new Figures(numbers, List.copyOf(warnings));
        } catch (IOException impossible) {
            throw new UncheckedIOException("reading from memory failed", impossible);
        }
    }

    @Override
    public void close() throws IOException {
        if (file != null) {
            file.close();
        }
    }
}
