package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * The public header block of a LAS file (ASPRS, LAS 1.4 R15, clause 2.4, and what 1.0 to 1.3 say instead). Every count, length and offset
 * in it is held against the size of the file before anything rests on it.
 *
 * @param minor   second number of the version
 * @param bytes   its length
 * @param begin   where the first point begins
 * @param records number of records between header and points
 * @param format  format of the points, 0 to 10
 * @param packed  whether the points are compressed (LAZ)
 * @param length  bytes of a point
 * @param count   number of points
 * @param scale   size of a step of the three coordinates
 * @param offset  where their steps are counted from
 * @param least   the least of each, as the header says
 * @param most    the greatest of each
 */
record LasHeader(int minor, int bytes, long begin, long records, int format, boolean packed, int length, long count, double[] scale,
        double[] offset, double[] least, double[] most) {

    /** Bytes of a header of 1.0 to 1.2, of 1.3, of 1.4. */
    private static final int[] LEAST_BYTES = {227, 227, 227, 235, 375};
    /** Bytes of a point of each format. */
    private static final int[] POINT_BYTES = {20, 28, 26, 34, 57, 63, 30, 36, 38, 59, 67};
    private static final int FORMAT_BITS = 0x3F;
    private static final int RECORD_HEAD = 54;
    private static final long INT = 0xFFFFFFFFL;

    /** Returns the format in which flags and classes have bytes of their own. */
    boolean isWide() {
        return format >= 6;
    }

    /** Returns a coordinate of a point: 0 across, 1 up the map, 2 the elevation. */
    double coordinate(int axis, int steps) {
        return offset[axis] + steps * scale[axis];
    }

    /** Returns whether the header says in which box its points lie, and a point lies outside of it by more than a rounding. */
    boolean isOutside(double... place) {
        for (int axis = 0; axis < 3; axis++) {
            double near = 2 * scale[axis];
            if (place[axis] < least[axis] - near || place[axis] > most[axis] + near) {
                return true;
            }
        }
        return false;
    }

    /**
     * Reads a header.
     *
     * @param input the file
     * @param head  its first bytes, as many as the longest header has, or all
     */
    static LasHeader read(SurveyInput input, byte[] head) throws IOException, ExchangeException {
        long size = input.size();
        ByteBuffer in = ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN);
        if (head.length < LEAST_BYTES[0] || !new String(head, 0, 4, StandardCharsets.US_ASCII).equals("LASF")) {
            throw input.fault(0, Message.of("survey-file.no-las"));
        }
        int minor = in.get(25);
        if (in.get(24) != 1 || minor < 0 || minor > 4) {
            throw input.fault(0, Message.said("survey-file.las-version", in.get(24), minor));
        }
        int bytes = in.getShort(94) & 0xFFFF;
        long begin = in.getInt(96) & INT;
        long records = in.getInt(100) & INT;
        if (bytes < LEAST_BYTES[minor] || bytes > begin || begin > size || head.length < LEAST_BYTES[minor]
                || records > (begin - bytes) / RECORD_HEAD) {
            throw input.fault(0, Message.said("survey-file.las-header", bytes, records, begin, size));
        }
        int format = in.get(104) & FORMAT_BITS;
        boolean packed = (in.get(104) & 0x80) != 0;
        int length = in.getShort(105) & 0xFFFF;
        if (format >= POINT_BYTES.length || (in.get(104) & 0x40) != 0 || length < POINT_BYTES[format]) {
            throw input.fault(0, Message.said("survey-file.las-format", format, length));
        }
        LasHeader header = new LasHeader(minor, bytes, begin, records, format, packed, length, count(input, in, minor),
                numbers(in, 131, 1), numbers(in, 155, 1), numbers(in, 187, 2), numbers(in, 179, 2));
        header.refuseCount(input, end(in, minor, size), size);
        header.refuseNumbers(input);
        return header;
    }

    private static long count(SurveyInput input, ByteBuffer in, int minor) throws ExchangeException {
        long old = in.getInt(107) & INT;
        long count = minor < 4 ? old : in.getLong(247);
        if (old != 0 && old != count) {
            throw input.fault(0, Message.said("survey-file.las-counts", old, count));
        }
        return count;
    }

    /** Returns where what follows the points begins: records behind them, waves, or nothing. */
    private static long end(ByteBuffer in, int minor, long size) {
        long waves = minor >= 3 ? in.getLong(227) : 0;
        long more = minor >= 4 && in.getInt(243) != 0 ? in.getLong(235) : 0;
        return Math.min(waves > 0 ? waves : size, more > 0 ? more : size);
    }

    private static double[] numbers(ByteBuffer in, int from, int step) {
        return new double[] {in.getDouble(from), in.getDouble(from + 8 * step), in.getDouble(from + 16 * step)};
    }

    private void refuseCount(SurveyInput input, long end, long size) throws ExchangeException {
        long room = Math.min(end, size) - begin;
        if (packed) {
            return;
        }
        if (count < 0 || count > room / length) {
            throw input.fault(0, Message.said("survey-file.las-room", Long.toUnsignedString(count), length));
        }
        if (room - count * length >= length) {
            throw input.fault(0, Message.said("survey-file.las-goes-on", count));
        }
    }

    private void refuseNumbers(SurveyInput input) throws ExchangeException {
        for (int axis = 0; axis < 3; axis++) {
            boolean sound = scale[axis] > 0 && scale[axis] <= 1 && Double.isFinite(offset[axis]) && Double.isFinite(least[axis])
                    && Double.isFinite(most[axis]) && least[axis] <= most[axis];
            if (!sound) {
                throw input.fault(0, Message.said("survey-file.las-scale", scale[axis], offset[axis], least[axis], most[axis]));
            }
        }
    }
}
