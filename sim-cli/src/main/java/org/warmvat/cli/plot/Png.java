package org.warmvat.cli.plot;

import java.awt.image.BufferedImage;
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

    /** The bytes of the file. */
    static byte[] of(BufferedImage image) {
        byte[] header = ByteBuffer.allocate(HEADER_BYTES)
                .putInt(image.getWidth())
                .putInt(image.getHeight())
                .put(BITS)
                .put(RED_GREEN_BLUE)
                .array();
        byte[] pixels = deflated(rows(image));
        return ByteBuffer.allocate(SIGNATURE.length + 3 * CHUNK_FRAME_BYTES + header.length + pixels.length)
                .put(SIGNATURE)
                .put(chunk("IHDR", header))
                .put(chunk("IDAT", pixels))
                .put(chunk("IEND", new byte[0]))
                .array();
    }

    /** Each row is led by a byte 0: no filter. */
    private static byte[] rows(BufferedImage image) {
        int width = image.getWidth();
        byte[] rows = new byte[image.getHeight() * (1 + 3 * width)];
        int[] row = new int[width];
        int to = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, width, 1, row, 0, width);
            to++;
            for (int colour : row) {
                rows[to++] = (byte) (colour >> 16);
                rows[to++] = (byte) (colour >> 8);
                rows[to++] = (byte) colour;
            }
        }
        return rows;
    }

    private static byte[] deflated(byte[] bytes) {
        Deflater deflater = new Deflater();
        deflater.setInput(bytes);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 16];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
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
