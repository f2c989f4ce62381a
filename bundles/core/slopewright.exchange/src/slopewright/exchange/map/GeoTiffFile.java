package slopewright.exchange.map;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;

/**
 * Writes margins as a GeoTIFF (TIFF 6.0, OGC GeoTIFF 1.1): one band of floating-point numbers of 32 bits in packed strips, in latitude and
 * longitude on WGS 84 (EPSG:4326). Cells without a number are no data, which the tag of GDAL for it says too.
 */
public final class GeoTiffFile {

    private static final int STRIP_ROWS = 64;
    private static final int HEAD_BYTES = 8;
    private static final int ENTRY_BYTES = 12;
    private static final int INLINE_BYTES = 4;

    /** The kinds of values of TIFF 6.0, section 2, with their number and bytes. */
    private enum Kind {
        ASCII(2, 1), SHORT(3, 2), LONG(4, 4), DOUBLE(12, 8);

        private final int number;
        private final int bytes;

        Kind(int number, int bytes) {
            this.number = number;
            this.bytes = bytes;
        }
    }

    /** One field of the directory. */
    private record Field(int number, Kind kind, byte[] values) {

        int count() {
            return values.length / kind.bytes;
        }

        boolean isInline() {
            return values.length <= INLINE_BYTES;
        }
    }

    private final MarginRaster raster;
    private final ByteArrayOutputStream strips = new ByteArrayOutputStream();
    private final List<Integer> from = new ArrayList<>();
    private final List<Integer> bytes = new ArrayList<>();

    private GeoTiffFile(MarginRaster raster) {
        this.raster = raster;
    }

    /** Returns the bytes of the file; the same cells give the same bytes. */
    public static byte[] bytes(MarginRaster raster) {
        return new GeoTiffFile(raster).write();
    }

    private byte[] write() {
        for (int row = 0; row < raster.rows(); row += STRIP_ROWS) {
            byte[] packed = pack(row, Math.min(raster.rows(), row + STRIP_ROWS));
            from.add(HEAD_BYTES + strips.size());
            bytes.add(packed.length);
            strips.writeBytes(packed);
        }
        strips.writeBytes(new byte[strips.size() % 2]);
        List<Field> fields = fields();
        int directory = HEAD_BYTES + strips.size();
        int behind = directory + Short.BYTES + ENTRY_BYTES * fields.size() + Integer.BYTES;
        int end = behind + fields.stream().filter(field -> !field.isInline()).mapToInt(field -> even(field.values().length)).sum();
        ByteBuffer out = ByteBuffer.allocate(end).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(directory).put(strips.toByteArray());
        out.putShort((short) fields.size());
        int next = behind;
        for (Field field : fields) {
            int entry = out.position();
            out.putShort((short) field.number()).putShort((short) field.kind().number).putInt(field.count());
            if (field.isInline()) {
                out.put(field.values());
            } else {
                out.putInt(next).put(next, field.values());
                next += even(field.values().length);
            }
            out.position(entry + ENTRY_BYTES);
        }
        return out.array();
    }

    private static int even(int length) {
        return length + length % 2;
    }

    private byte[] pack(int fromRow, int toRow) {
        ByteBuffer plain = ByteBuffer.allocate((toRow - fromRow) * raster.columns() * Float.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        for (int row = fromRow; row < toRow; row++) {
            for (int column = 0; column < raster.columns(); column++) {
                plain.putFloat(raster.marginM(row, column));
            }
        }
        Deflater deflater = new Deflater();
        deflater.setInput(plain.array());
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] piece = new byte[1 << 13];
        while (!deflater.finished()) {
            packed.write(piece, 0, deflater.deflate(piece));
        }
        deflater.end();
        return packed.toByteArray();
    }

    /** The fields in the order of their numbers, as TIFF 6.0 asks for. */
    private List<Field> fields() {
        return List.of(longs(256, List.of(raster.columns())), longs(257, List.of(raster.rows())), shorts(258, 32), shorts(259, 8),
                shorts(262, 1), ascii(270, raster.about()), longs(273, from), shorts(277, 1), longs(278, List.of(STRIP_ROWS)),
                longs(279, bytes), shorts(339, 3), doubles(33550, raster.longitudeStepDeg(), raster.latitudeStepDeg(), 0),
                doubles(33922, 0, 0, 0, raster.westDeg(), raster.northDeg(), 0),
                // version 1.1 with three keys: a geographic reference, numbers of areas, WGS 84
                shorts(34735, 1, 1, 0, 3, 1024, 0, 1, 2, 1025, 0, 1, 1, 2048, 0, 1, 4326), ascii(42113, "nan"));
    }

    private static ByteBuffer room(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static Field shorts(int number, int... values) {
        ByteBuffer out = room(values.length * Short.BYTES);
        for (int value : values) {
            out.putShort((short) value);
        }
        return new Field(number, Kind.SHORT, out.array());
    }

    private static Field longs(int number, List<Integer> values) {
        ByteBuffer out = room(values.size() * Integer.BYTES);
        values.forEach(out::putInt);
        return new Field(number, Kind.LONG, out.array());
    }

    private static Field doubles(int number, double... values) {
        ByteBuffer out = room(values.length * Double.BYTES);
        for (double value : values) {
            out.putDouble(value);
        }
        return new Field(number, Kind.DOUBLE, out.array());
    }

    private static Field ascii(int number, String text) {
        return new Field(number, Kind.ASCII, (text + "\0").getBytes(StandardCharsets.UTF_8));
    }
}
