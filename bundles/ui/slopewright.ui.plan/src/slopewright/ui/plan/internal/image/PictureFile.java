package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;

import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import slopewright.ui.plan.internal.Messages;

/** Opens PNG, JPEG and TIFF files with the readers of the platform. Whatever a reader makes of a damaged file ends as a reason. */
final class PictureFile {

    private static final Set<String> FORMATS = Set.of("png", "jpeg", "tif", "tiff");
    private static final int MOST_EDGE_PX = 100_000;
    private static final long MOST_PIXELS = 400_000_000;
    /** A reader decodes a whole strip or tile at once. */
    private static final long MOST_TILE_PIXELS = 100_000_000;

    /** What is read of an open file. */
    @FunctionalInterface
    interface Use<T> {

        /**
         * Reads something.
         *
         * @throws IOException where it is damaged
         */
        T of(ImageReader reader) throws IOException;
    }

    private PictureFile() {
    }

    /**
     * Opens a file, reads something and closes it.
     *
     * @param file         the file
     * @param withMetadata whether what is read needs the metadata
     * @param use          reads something
     * @return what was read
     * @throws IOException where the file is no picture, too large, or damaged; the message says so
     */
    static <T> T read(Path file, boolean withMetadata, Use<T> use) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(Messages.get("image.missing"));
        }
        try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = stream == null ? null : ImageIO.getImageReaders(stream);
            if (readers == null || !readers.hasNext()) {
                throw new IOException(Messages.get("image.unknown-kind"));
            }
            ImageReader reader = readers.next();
            try {
                if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                    throw new IOException(Messages.get("image.unknown-kind"));
                }
                reader.setInput(stream, true, !withMetadata);
                checkSize(reader);
                return use.of(reader);
            } finally {
                reader.dispose();
            }
        } catch (IIOException | RuntimeException | OutOfMemoryError | StackOverflowError e) {
            throw new IOException(Messages.get("image.damaged"), e);
        }
    }

    /** Tells whether a reader reads TIFF files. */
    static boolean isTiff(ImageReader reader) throws IOException {
        return reader.getFormatName().toLowerCase(Locale.ROOT).startsWith("tif");
    }

    private static void checkSize(ImageReader reader) throws IOException {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width < 1 || height < 1) {
            throw new IOException(Messages.get("image.damaged"));
        }
        long tile = (long) reader.getTileWidth(0) * reader.getTileHeight(0);
        if (Math.max(width, height) > MOST_EDGE_PX || width * height > MOST_PIXELS || isTiff(reader) && tile > MOST_TILE_PIXELS) {
            throw new IOException(Messages.get("image.too-large", width, height));
        }
    }
}
