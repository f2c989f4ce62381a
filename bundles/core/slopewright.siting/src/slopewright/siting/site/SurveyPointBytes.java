package slopewright.siting.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** The bytes of a file of survey points; see {@link SurveyPoints}. */
final class SurveyPointBytes {

    static final long MOST_BYTES = 1L << 30;

    private static final byte[] MAGIC = "SWPOINT1".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER_BYTES = 16;
    /** So many numbers are read in one go. */
    private static final int RUN = 1 << 13;
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

    /**
     * Reads the bytes as they come, so that they are never in memory beside the points.
     *
     * @param in   the bytes
     * @param size how many there are
     */
    static SurveyPoints read(InputStream in, long size) throws IOException {
        byte[] first = in.readNBytes(HEADER_BYTES);
        ByteBuffer header = ByteBuffer.wrap(first);
        if (first.length < HEADER_BYTES || !header.slice(0, MAGIC.length).equals(ByteBuffer.wrap(MAGIC))) {
            throw new IllegalArgumentException("is no file of survey points");
        }
        header.position(MAGIC.length);
        int form = header.get();
        int named = header.get();
        int zero = header.getShort();
        int count = header.getInt();
        if (form < 0 || form > 1 || named < 0 || named > 1 || zero != 0) {
            throw new IllegalArgumentException("is of a form that is not known; it was written by a later version, or is damaged");
        }
        long left = size - HEADER_BYTES - (long) count * POINT_BYTES;
        if (count < 0 || count > SurveyPoints.MOST_POINTS || left < 0) {
            throw new IllegalArgumentException("is cut short: it announces " + count + " points");
        }
        double[] north = column(in, count);
        double[] east = column(in, count);
        double[] elevation = column(in, count);
        List<String> ids = named == 1 ? ids(in.readNBytes(Math.toIntExact(left)), count) : List.of();
        if (named == 0 && left > 0 || in.read() >= 0) {
            throw new IllegalArgumentException("goes on after its last point");
        }
        check(form == 1, north, east, elevation);
        return new SurveyPoints(form == 1, north, east, elevation, ids);
    }

    private static double[] column(InputStream in, int count) throws IOException {
        double[] column = new double[count];
        byte[] run = new byte[RUN * Double.BYTES];
        for (int from = 0; from < count; from += RUN) {
            int here = Math.min(RUN, count - from);
            if (in.readNBytes(run, 0, here * Double.BYTES) < here * Double.BYTES) {
                throw new IllegalArgumentException("is cut short: it announces " + count + " points");
            }
            ByteBuffer.wrap(run).asDoubleBuffer().get(column, from, here);
        }
        return column;
    }

    /** The names stay bytes until somebody asks for one; each is looked at, for it must be UTF-8. */
    private static PackedIds ids(byte[] bytes, int count) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        int[] starts = new int[count];
        for (int i = 0; i < count; i++) {
            starts[i] = in.position();
            int length = in.remaining() < Short.BYTES ? PackedIds.MOST_BYTES : in.getShort() & PackedIds.MOST_BYTES;
            if (length > in.remaining()) {
                throw new IllegalArgumentException("is cut short in the id of point " + (i + 1));
            }
            refuseOtherLetters(in, length, i);
            in.position(in.position() + length);
        }
        if (in.hasRemaining()) {
            throw new IllegalArgumentException("goes on after its last point");
        }
        return PackedIds.of(bytes, starts);
    }

    private static void refuseOtherLetters(ByteBuffer in, int length, int point) {
        byte[] bytes = in.array();
        int from = in.position();
        int at = from;
        while (at < from + length && bytes[at] >= 0) {
            at++;
        }
        try {
            if (at < from + length) {
                StandardCharsets.UTF_8.newDecoder().decode(in.slice(from, length));
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
        return hex(digest().digest(bytes));
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static String hex(byte[] digest) {
        return HexFormat.of().formatHex(digest);
    }
}
