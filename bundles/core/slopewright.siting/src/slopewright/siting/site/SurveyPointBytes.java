package slopewright.siting.site;

import java.nio.ByteBuffer;
import java.nio.DoubleBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;

/** The bytes of a file of survey points; see {@link SurveyPoints}. */
final class SurveyPointBytes {

    static final long MOST_BYTES = 1L << 30;

    private static final byte[] MAGIC = "SWPOINT1".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER_BYTES = 16;
    private static final int POINT_BYTES = 3 * Double.BYTES;
    private static final double MOST_LATITUDE_DEG = 90;

    private SurveyPointBytes() {
    }

    static byte[] write(SurveyPoints points) {
        PackedIds ids = packed(points.ids());
        long size = HEADER_BYTES + (long) points.count() * POINT_BYTES + ids.byteCount();
        if (size > MOST_BYTES) {
            throw new IllegalArgumentException("the points take more bytes than a file of survey points may hold");
        }
        ByteBuffer out = ByteBuffer.allocate((int) size);
        out.put(MAGIC).put((byte) (points.plane() ? 1 : 0)).put((byte) (ids.isEmpty() ? 0 : 1)).putShort((short) 0);
        out.putInt(points.count());
        for (double[] column : List.of(points.north(), points.east(), points.elevationM())) {
            out.asDoubleBuffer().put(column);
            out.position(out.position() + column.length * Double.BYTES);
        }
        ids.put(out);
        return out.array();
    }

    private static PackedIds packed(List<String> ids) {
        if (ids instanceof PackedIds already) {
            return already;
        }
        PackedIds.Builder packed = new PackedIds.Builder();
        for (String id : ids) {
            byte[] bytes = id.getBytes(StandardCharsets.UTF_8);
            if (bytes.length > PackedIds.MOST_BYTES) {
                throw new IllegalArgumentException("the id of a point is longer than " + PackedIds.MOST_BYTES + " bytes");
            }
            packed.add(bytes, 0, bytes.length);
        }
        return packed.build();
    }

    static SurveyPoints read(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        if (bytes.length < HEADER_BYTES || !in.slice(0, MAGIC.length).equals(ByteBuffer.wrap(MAGIC))) {
            throw new IllegalArgumentException("is no file of survey points");
        }
        in.position(MAGIC.length);
        int form = in.get();
        int named = in.get();
        int zero = in.getShort();
        int count = in.getInt();
        if (form < 0 || form > 1 || named < 0 || named > 1 || zero != 0) {
            throw new IllegalArgumentException("is of a form that is not known; it was written by a later version, or is damaged");
        }
        if (count < 0 || count > SurveyPoints.MOST_POINTS || (long) count * POINT_BYTES > in.remaining()) {
            throw new IllegalArgumentException("is cut short: it announces " + count + " points");
        }
        double[] north = column(in, count);
        double[] east = column(in, count);
        double[] elevation = column(in, count);
        List<String> ids = named == 1 ? ids(in, count) : List.of();
        if (in.hasRemaining()) {
            throw new IllegalArgumentException("goes on after its last point");
        }
        check(form == 1, north, east, elevation);
        return new SurveyPoints(form == 1, north, east, elevation, ids);
    }

    private static double[] column(ByteBuffer in, int count) {
        double[] column = new double[count];
        DoubleBuffer numbers = in.asDoubleBuffer();
        numbers.get(column);
        in.position(in.position() + count * Double.BYTES);
        return column;
    }

    /** The names stay bytes until somebody asks for one; each is looked at, for it must be UTF-8. */
    private static PackedIds ids(ByteBuffer in, int count) {
        int begin = in.position();
        int[] starts = new int[count];
        for (int i = 0; i < count; i++) {
            starts[i] = in.position() - begin;
            int length = in.remaining() < Short.BYTES ? PackedIds.MOST_BYTES : in.getShort() & PackedIds.MOST_BYTES;
            if (length > in.remaining()) {
                throw new IllegalArgumentException("is cut short in the id of point " + (i + 1));
            }
            refuseOtherLetters(in, length, i);
            in.position(in.position() + length);
        }
        int from = in.arrayOffset() + begin;
        return PackedIds.of(Arrays.copyOfRange(in.array(), from, from + in.position() - begin), starts);
    }

    private static void refuseOtherLetters(ByteBuffer in, int length, int point) {
        int from = in.arrayOffset() + in.position();
        byte[] bytes = in.array();
        int at = from;
        while (at < from + length && bytes[at] >= 0) {
            at++;
        }
        try {
            if (at < from + length) {
                StandardCharsets.UTF_8.newDecoder().decode(in.slice(in.position(), length));
            }
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("the id of point " + (point + 1) + " is no UTF-8", e);
        }
    }

    private static void check(boolean plane, double[] north, double[] east, double[] elevation) {
        for (int i = 0; i < north.length; i++) {
            boolean finite = Double.isFinite(north[i]) && Double.isFinite(east[i]) && Double.isFinite(elevation[i]);
            boolean onEarth = plane || Math.abs(north[i]) <= MOST_LATITUDE_DEG && Math.abs(east[i]) <= 2 * MOST_LATITUDE_DEG;
            if (!finite || !onEarth) {
                throw new IllegalArgumentException("point " + (i + 1) + " has a number out of range");
            }
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
