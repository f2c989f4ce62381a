package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;

/**
 * The tags of a GeoTIFF that say where the picture lies, as the OGC GeoTIFF standard (19-008r4) names them: pixel scale (33550), tie
 * point (33922), transformation (34264) and the directory of keys (34735).
 *
 * @param epsg      number of the projected coordinate system, empty where none is named
 * @param matrix    east = m0 column + m1 row + m2, north = m3 column + m4 row + m5, metres
 */
record GeoTags(Optional<Integer> epsg, double[] matrix) {

    private static final int PIXEL_SCALE = 33550;
    private static final int TIE_POINTS = 33922;
    private static final int TRANSFORMATION = 34264;
    private static final int KEYS = 34735;
    private static final int RASTER_TYPE_KEY = 1025;
    private static final int GEOGRAPHIC_KEY = 2048;
    private static final int PROJECTED_KEY = 3072;
    private static final int PIXEL_IS_POINT = 2;
    private static final int USER_DEFINED = 32767;
    private static final int MOST_VALUES = 4096;

    /**
     * Reads the tags of a file, empty where it is no TIFF or has none of them.
     *
     * @throws IOException where it is no picture, or damaged; the message says so
     */
    static Optional<GeoTags> read(Path file) throws IOException {
        return PictureFile.read(file, true, GeoTags::read);
    }

    private static Optional<GeoTags> read(ImageReader reader) throws IOException {
        return PictureFile.isTiff(reader) ? of(TIFFDirectory.createFromMetadata(reader.getImageMetadata(0))) : Optional.empty();
    }

    private static double[] numbers(TIFFDirectory directory, int tag) {
        TIFFField field = directory.getTIFFField(tag);
        if (field == null) {
            return new double[0];
        }
        double[] numbers = new double[Math.min(MOST_VALUES, field.getCount())];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = field.getAsDouble(i);
        }
        return numbers;
    }

    private static Optional<GeoTags> of(TIFFDirectory tags) {
        double[] keys = numbers(tags, KEYS);
        double half = key(keys, RASTER_TYPE_KEY).filter(type -> type == PIXEL_IS_POINT).isPresent() ? 0.5 : 0;
        Optional<Integer> epsg = key(keys, PROJECTED_KEY).or(() -> key(keys, GEOGRAPHIC_KEY))
                .filter(code -> code > 0 && code != USER_DEFINED);
        double[] whole = numbers(tags, TRANSFORMATION);
        if (whole.length >= 8) {
            return finite(epsg, shifted(new double[] {whole[0], whole[1], whole[3], whole[4], whole[5], whole[7]}, half));
        }
        double[] scale = numbers(tags, PIXEL_SCALE);
        double[] tie = numbers(tags, TIE_POINTS);
        if (scale.length < 2 || tie.length < 6) {
            return Optional.empty();
        }
        double[] matrix = {scale[0], 0, tie[3] - tie[0] * scale[0], 0, -scale[1], tie[4] + tie[1] * scale[1]};
        return finite(epsg, shifted(matrix, half));
    }

    private static Optional<GeoTags> finite(Optional<Integer> epsg, double[] matrix) {
        return Arrays.stream(matrix).allMatch(Double::isFinite) ? Optional.of(new GeoTags(epsg, matrix)) : Optional.empty();
    }

    /** Counts pixels from the corner of the first one, as everywhere here, where the file counts from its middle. */
    private static double[] shifted(double[] m, double half) {
        return new double[] {m[0], m[1], m[2] - half * (m[0] + m[1]), m[3], m[4], m[5] - half * (m[3] + m[4])};
    }

    private static Optional<Integer> key(double[] keys, int wanted) {
        for (int i = 4; i + 3 < keys.length; i += 4) {
            if (keys[i] == wanted && keys[i + 1] == 0) {
                return Optional.of((int) keys[i + 3]);
            }
        }
        return Optional.empty();
    }

    /** Returns whether the picture is scaled the same in both directions and not mirrored, turned or not. */
    boolean isEven() {
        double size = Math.hypot(matrix[0], matrix[3]);
        return size > 0 && Math.abs(matrix[0] + matrix[4]) < size * 1e-3 && Math.abs(matrix[1] - matrix[3]) < size * 1e-3;
    }

    /** Returns how far east a point of the picture lies, metres. */
    double eastM(double column, double row) {
        return matrix[0] * column + matrix[1] * row + matrix[2];
    }

    /** Returns how far north a point of the picture lies, metres. */
    double northM(double column, double row) {
        return matrix[3] * column + matrix[4] * row + matrix[5];
    }
}
