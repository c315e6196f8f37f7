package org.warmvat.cli.plot;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * An image without transparency as a PNG file (ISO/IEC 15948): eight bits each of red, green and blue, rows as they are.
 *
 * <p>Java's own writer gives the same pixels, but its first use costs a fifth of a second, as much as drawing three pictures: it
 * looks for every reader and writer of images there is.
 */
final class Png {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte BITS = 8;
    private static final byte RED_GREEN_BLUE = 2;
    private static final int HEADER_BYTES = 13;
    private static final int CHUNK_FRAME_BYTES = 12;

    private Png() {}

    /** The bytes of the file of an image of {@link BufferedImage#TYPE_INT_RGB}. */
    static byte[] of(BufferedImage image) {
        byte[] header = ByteBuffer.allocate(HEADER_BYTES)
                .putInt(image.getWidth())
                .putInt(image.getHeight())
                .put(BITS)
                .put(RED_GREEN_BLUE)
                .array();
        byte[] pixels = deflated(image);
        return ByteBuffer.allocate(SIGNATURE.length + 3 * CHUNK_FRAME_BYTES + header.length + pixels.length)
                .put(SIGNATURE)
                .put(chunk("IHDR", header))
                .put(chunk("IDAT", pixels))
                .put(chunk("IEND", new byte[0]))
                .array();
    }

    /**
     * Rows, each led by a byte 0: no filter. The quickest way makes the pictures a fifth larger than the tightest, in less than half
     * the time.
     */
    private static byte[] deflated(BufferedImage image) {
        int[] colours = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        byte[] row = new byte[1 + 3 * image.getWidth()];
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 18);
        byte[] buffer = new byte[1 << 14];
        for (int from = 0; from < colours.length; from += image.getWidth()) {
            fill(row, colours, from);
            deflater.setInput(row);
            drain(deflater, buffer, out);
        }
        deflater.finish();
        drain(deflater, buffer, out);
        deflater.end();
        return out.toByteArray();
    }

    private static void fill(byte[] row, int[] colours, int from) {
        int to = 1;
        for (int i = from; to < row.length; i++) {
            row[to++] = (byte) (colours[i] >> 16);
            row[to++] = (byte) (colours[i] >> 8);
            row[to++] = (byte) colours[i];
        }
    }

    private static void drain(Deflater deflater, byte[] buffer, ByteArrayOutputStream out) {
        for (int length = deflater.deflate(buffer); length > 0; length = deflater.deflate(buffer)) {
            out.write(buffer, 0, length);
        }
    }

    /** Length, name, content and check sum of name and content. */
    private static byte[] chunk(String name, byte[] content) {
        byte[] named = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(named);
        check.update(content);
        return ByteBuffer.allocate(CHUNK_FRAME_BYTES + content.length)
                .putInt(content.length)
                .put(named)
                .put(content)
                .putInt((int) check.getValue())
                .array();
    }
}
