package slopewright.ui.plan.internal.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;

import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;

/**
 * A picture as it was read. Of a large one only every so manieth row and column is kept, so that it never takes more than some tens of
 * megabytes, however large the file is.
 *
 * @param data     the pixels that were kept
 * @param widthPx  width of the file, pixels
 * @param heightPx height of the file, pixels
 */
record Picture(ImageData data, int widthPx, int heightPx) {

    private static final int MOST_EDGE_PX = 3000;
    private static final int MASK = 0xff;

    /**
     * Reads a PNG, JPEG or TIFF file.
     *
     * @throws IOException where it is none, too large, or damaged; the message says so
     */
    static Picture read(Path file) throws IOException {
        return PictureFile.read(file, false, Picture::read);
    }

    private static Picture read(ImageReader reader) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        int step = Math.max(1, (Math.max(width, height) + MOST_EDGE_PX - 1) / MOST_EDGE_PX);
        ImageReadParam some = reader.getDefaultReadParam();
        some.setSourceSubsampling(step, step, 0, 0);
        return new Picture(data(reader.read(0, some)), width, height);
    }

    private static ImageData data(BufferedImage image) {
        PaletteData palette = new PaletteData(MASK << 16, MASK << 8, MASK);
        ImageData data = new ImageData(image.getWidth(), image.getHeight(), 24, palette);
        boolean alpha = image.getColorModel().hasAlpha();
        int[] row = new int[image.getWidth()];
        byte[] alphas = new byte[image.getWidth()];
        for (int y = 0; y < image.getHeight(); y++) {
            image.getRGB(0, y, row.length, 1, row, 0, row.length);
            for (int x = 0; x < row.length; x++) {
                alphas[x] = (byte) (row[x] >>> 24);
                row[x] &= 0xffffff;
            }
            data.setPixels(0, y, row.length, row, 0);
            if (alpha) {
                data.setAlphas(0, y, row.length, alphas, 0);
            }
        }
        return data;
    }
}
