package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

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
    private static final int MOST_BYTES = 1 << 20;
    private static final int ENTRY_BYTES = 12;
    private static final int SHORT = 3;
    private static final int DOUBLE = 12;

    /** Reads the tags of a file, empty where it is no TIFF or has none of them. */
    static Optional<GeoTags> read(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            ByteBuffer head = bytes(channel, 0, 8);
            boolean little = head.remaining() == 8 && head.get(0) == 'I' && head.get(1) == 'I';
            boolean big = head.remaining() == 8 && head.get(0) == 'M' && head.get(1) == 'M';
            if (!little && !big) {
                return Optional.empty();
            }
            ByteOrder order = little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
            head.order(order);
            return head.getShort(2) == 42 ? of(directory(channel, order, head.getInt(4) & 0xffffffffL)) : Optional.empty();
        }
    }

    private static ByteBuffer bytes(FileChannel channel, long at, int count) throws IOException {
        if (count < 0 || count > MOST_BYTES) {
            throw new IOException("a tag of " + count + " bytes");
        }
        ByteBuffer buffer = ByteBuffer.allocate(count);
        while (buffer.hasRemaining() && channel.read(buffer, at + buffer.position()) > 0) {
            continue;
        }
        return buffer.flip();
    }

    private static Map<Integer, double[]> directory(FileChannel channel, ByteOrder order, long at) throws IOException {
        Map<Integer, double[]> tags = new HashMap<>();
        int count = bytes(channel, at, 2).order(order).getShort(0) & 0xffff;
        ByteBuffer entries = bytes(channel, at + 2, count * ENTRY_BYTES).order(order);
        for (int i = 0; i + ENTRY_BYTES <= entries.limit(); i += ENTRY_BYTES) {
            int tag = entries.getShort(i) & 0xffff;
            int type = entries.getShort(i + 2) & 0xffff;
            int values = entries.getInt(i + 4);
            if ((type == SHORT || type == DOUBLE) && (tag == PIXEL_SCALE || tag == TIE_POINTS || tag == TRANSFORMATION || tag == KEYS)) {
                int size = type == SHORT ? 2 : 8;
                long where = (long) values * size <= 4 ? at + 2 + i + 8 : entries.getInt(i + 8) & 0xffffffffL;
                tags.put(tag, numbers(bytes(channel, where, Math.multiplyExact(values, size)).order(order), type));
            }
        }
        return tags;
    }

    private static double[] numbers(ByteBuffer buffer, int type) {
        double[] numbers = new double[buffer.limit() / (type == SHORT ? 2 : 8)];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = type == SHORT ? buffer.getShort(2 * i) & 0xffff : buffer.getDouble(8 * i);
        }
        return numbers;
    }

    private static Optional<GeoTags> of(Map<Integer, double[]> tags) {
        double[] keys = tags.getOrDefault(KEYS, new double[0]);
        double half = key(keys, RASTER_TYPE_KEY).filter(type -> type == PIXEL_IS_POINT).isPresent() ? 0.5 : 0;
        Optional<Integer> epsg = key(keys, PROJECTED_KEY).or(() -> key(keys, GEOGRAPHIC_KEY))
                .filter(code -> code > 0 && code != USER_DEFINED);
        double[] whole = tags.getOrDefault(TRANSFORMATION, new double[0]);
        if (whole.length >= 8) {
            return Optional.of(new GeoTags(epsg, shifted(new double[] {whole[0], whole[1], whole[3], whole[4], whole[5], whole[7]}, half)));
        }
        double[] scale = tags.getOrDefault(PIXEL_SCALE, new double[0]);
        double[] tie = tags.getOrDefault(TIE_POINTS, new double[0]);
        if (scale.length < 2 || tie.length < 6) {
            return Optional.empty();
        }
        double[] matrix = {scale[0], 0, tie[3] - tie[0] * scale[0], 0, -scale[1], tie[4] + tie[1] * scale[1]};
        return Optional.of(new GeoTags(epsg, shifted(matrix, half)));
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
