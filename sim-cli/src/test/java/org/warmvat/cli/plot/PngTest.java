package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Exact: what Java's own reader makes of the files. */
class PngTest {

    /** Noise does not compress, so the larger one also fills the buffer more than once. */
    @Test
    void everyPixelComesBack() throws IOException {
        for (int[] size : new int[][] {{1, 1}, {3, 2}, {1, 40}, {301, 200}}) {
            BufferedImage image = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
            Random random = new Random(5);
            for (int y = 0; y < size[1]; y++) {
                for (int x = 0; x < size[0]; x++) {
                    image.setRGB(x, y, random.nextInt());
                }
            }
            BufferedImage read = ImageIO.read(new ByteArrayInputStream(Png.of(image)));
            assertEquals(size[0], read.getWidth());
            assertEquals(size[1], read.getHeight());
            assertArrayEquals(pixels(image), pixels(read));
        }
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** The smallest file there is, one black pixel, against its chunks written out by hand; the reader does not look at check sums. */
    @Test
    void chunksAreFramedByLengthNameAndCheckSum() {
        byte[] file = Png.of(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
        byte[] head = {
            (byte) 0x89,
            'P',
            'N',
            'G',
            13,
            10,
            26,
            10,
            0,
            0,
            0,
            13,
            'I',
            'H',
            'D',
            'R',
            0,
            0,
            0,
            1,
            0,
            0,
            0,
            1,
            8,
            2,
            0,
            0,
            0,
            (byte) 0x90,
            0x77,
            0x53,
            (byte) 0xDE
        };
        byte[] end = {0, 0, 0, 0, 'I', 'E', 'N', 'D', (byte) 0xAE, 0x42, 0x60, (byte) 0x82};
        assertArrayEquals(head, Arrays.copyOf(file, head.length));
        assertArrayEquals(end, Arrays.copyOfRange(file, file.length - end.length, file.length));
    }
}
