package slopewright.exchange.internal.survey;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

import slopewright.messages.Message;
import slopewright.messages.RefusedException;

/**
 * How the cells of a strip or tile of a TIFF are packed: plain, LZW, Deflate or PackBits (sections 9 and 13 of revision 6.0, technical
 * note 2 of 2002), after a predictor of whole numbers (section 14) or of floating-point ones (technical note 3 of 2005).
 *
 * @param compression how bytes are packed
 * @param predictor   1 for none, 2 for differences, 3 for differences of floating-point numbers
 * @param bytes       bytes of a number
 * @param format      1 for whole numbers from zero, 2 for whole numbers, 3 for floating-point ones
 * @param order       order of the bytes of a number
 */
record TiffCells(int compression, int predictor, int bytes, int format, ByteOrder order) {

    private static final int PLAIN = 1;
    private static final int LZW = 5;
    private static final int DEFLATE = 8;
    private static final int PACK_BITS = 32773;
    private static final int OLD_DEFLATE = 32946;
    private static final int LZW_CLEAR = 256;
    private static final int LZW_END = 257;
    private static final int LZW_MOST = 4096;

    TiffCells {
        if (format < 1 || format > 3 || format == 3 && bytes < 4 || bytes < 1 || bytes > 8 || Integer.bitCount(bytes) != 1) {
            throw new RefusedException(Message.said("survey-file.tiff.kind", format, bytes));
        }
        if (predictor < 1 || predictor > 3 || predictor == 3 && format != 3) {
            throw new RefusedException(Message.said("survey-file.tiff.predictor", predictor));
        }
    }

    /** Returns cells of which nothing is known. */
    static double[] nothing(int count) {
        double[] cells = new double[count];
        Arrays.fill(cells, Double.NaN);
        return cells;
    }

    /**
     * Returns the cells of a block, row after row.
     *
     * @param packed the bytes in the file
     * @param wide   cells of a row
     * @param high   rows
     * @throws IllegalArgumentException where they are damaged, or packed in a way that is not read
     */
    double[] decode(ByteBuffer packed, int wide, int high) {
        byte[] plain = new byte[Math.multiplyExact(Math.multiplyExact(wide, high), bytes)];
        switch (compression) {
            case PLAIN -> packed.get(plain, 0, enough(packed.remaining(), plain.length));
            case LZW -> unpackLzw(packed, plain);
            case DEFLATE, OLD_DEFLATE -> inflate(packed, plain);
            case PACK_BITS -> unpackBits(packed, plain);
            default -> throw new RefusedException(Message.said("survey-file.tiff.compression", compression));
        }
        ByteBuffer numbers = ByteBuffer.wrap(plain).order(order);
        for (int row = 0; row < high && predictor > 1; row++) {
            if (predictor == 2) {
                add(numbers, row * wide, wide);
            } else {
                join(plain, row * wide * bytes, wide);
            }
        }
        ByteBuffer in = predictor == 3 ? numbers.order(ByteOrder.BIG_ENDIAN) : numbers;
        double[] cells = new double[wide * high];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = number(in, i);
        }
        return cells;
    }

    private static int enough(int there, int needed) {
        if (there < needed) {
            throw new RefusedException(Message.said("survey-file.tiff.block", there, needed));
        }
        return needed;
    }

    private double number(ByteBuffer in, int i) {
        if (format == 3) {
            return bytes == 4 ? in.getFloat(4 * i) : in.getDouble(8 * i);
        }
        long whole = whole(in, i);
        if (format == 1 && bytes == 8 && whole < 0) {
            throw new RefusedException(Message.said("survey-file.tiff.number", Long.toUnsignedString(whole)));
        }
        return format == 2 || bytes == 8 ? whole : whole & (1L << 8 * bytes) - 1;
    }

    private long whole(ByteBuffer in, int i) {
        return switch (bytes) {
            case 1 -> in.get(i);
            case 2 -> in.getShort(2 * i);
            case 4 -> in.getInt(4 * i);
            default -> in.getLong(8 * i);
        };
    }

    /** Each number is kept as its difference from the one to the left. */
    private void add(ByteBuffer numbers, int first, int wide) {
        long sum = 0;
        for (int i = first; i < first + wide; i++) {
            sum += whole(numbers, i);
            switch (bytes) {
                case 1 -> numbers.put(i, (byte) sum);
                case 2 -> numbers.putShort(2 * i, (short) sum);
                case 4 -> numbers.putInt(4 * i, (int) sum);
                default -> numbers.putLong(8 * i, sum);
            }
        }
    }

    /** The most significant bytes of all numbers of a row stand first; each byte is kept as its difference from the one before. */
    private void join(byte[] plain, int from, int wide) {
        byte[] parted = Arrays.copyOfRange(plain, from, from + wide * bytes);
        for (int i = 1; i < parted.length; i++) {
            parted[i] += parted[i - 1];
        }
        for (int i = 0; i < wide; i++) {
            for (int k = 0; k < bytes; k++) {
                plain[from + i * bytes + k] = parted[k * wide + i];
            }
        }
    }

    private static void inflate(ByteBuffer packed, byte[] plain) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            int done = 0;
            while (done < plain.length) {
                int got = inflater.inflate(plain, done, plain.length - done);
                if (got == 0) {
                    enough(done, plain.length);
                }
                done += got;
            }
        } catch (DataFormatException e) {
            throw new RefusedException(Message.said("survey-file.tiff.damaged", e));
        } finally {
            inflater.end();
        }
    }

    private static void unpackBits(ByteBuffer packed, byte[] plain) {
        int done = 0;
        while (done < plain.length) {
            enough(packed.remaining(), 2);
            int run = packed.get();
            if (run >= 0) {
                int count = Math.min(run + 1, plain.length - done);
                packed.get(plain, done, enough(packed.remaining(), count));
                done += count;
            } else if (run != Byte.MIN_VALUE) {
                int count = Math.min(1 - run, plain.length - done);
                Arrays.fill(plain, done, done + count, packed.get());
                done += count;
            }
        }
    }

    /** Codes of nine to twelve bits, the highest bit first; a code is as wide as the next but one needs. */
    private static void unpackLzw(ByteBuffer packed, byte[] plain) {
        int[] from = new int[LZW_MOST];
        int[] length = new int[LZW_MOST];
        int next = LZW_END + 1;
        int wide = 9;
        int last = -1;
        long bits = 0;
        int held = 0;
        int done = 0;
        while (done < plain.length) {
            while (held < wide) {
                enough(packed.remaining(), 1);
                bits = bits << 8 | packed.get() & 0xFF;
                held += 8;
            }
            held -= wide;
            int code = (int) (bits >> held) & (1 << wide) - 1;
            if (code == LZW_END) {
                break;
            }
            if (code == LZW_CLEAR) {
                next = LZW_END + 1;
                wide = 9;
                last = -1;
                continue;
            }
            int start = done;
            if (code < LZW_CLEAR) {
                plain[done++] = (byte) code;
            } else {
                boolean isNew = code == next && last >= 0;
                if (code > next || code == next && !isNew || next > LZW_MOST) {
                    throw new RefusedException(Message.said("survey-file.tiff.code", code));
                }
                int source = isNew ? start - lengthOf(last, length) : from[code];
                int count = isNew ? lengthOf(last, length) + 1 : length[code];
                for (int i = 0; i < count && done < plain.length; i++) {
                    plain[done++] = plain[source + i];
                }
            }
            if (last >= 0 && next < LZW_MOST) {
                from[next] = start - lengthOf(last, length);
                length[next] = lengthOf(last, length) + 1;
                next++;
            }
            wide = next >= 2047 ? 12 : next >= 1023 ? 11 : next >= 511 ? 10 : 9;
            last = code;
        }
        enough(done, plain.length);
    }

    private static int lengthOf(int code, int[] length) {
        return code < LZW_CLEAR ? 1 : length[code];
    }
}
