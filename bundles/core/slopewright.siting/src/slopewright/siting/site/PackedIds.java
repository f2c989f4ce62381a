package slopewright.siting.site;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.Objects;
import java.util.RandomAccess;

/** Names of very many points as they stand in a file of survey points: bytes, of which a text is made when somebody asks. Immutable. */
public final class PackedIds extends AbstractList<String> implements RandomAccess {

    /** The most bytes that a name may have. */
    public static final int MOST_BYTES = 0xFFFF;

    private final byte[] packed;
    private final int length;
    private final int[] starts;
    private final int count;

    private PackedIds(byte[] packed, int length, int[] starts, int count) {
        this.packed = packed;
        this.length = length;
        this.starts = starts;
        this.count = count;
    }

    /** Takes names as they stand in a file, each with where it begins; the arrays are shared. */
    static PackedIds of(byte[] packed, int[] starts) {
        return new PackedIds(packed, packed.length, starts, starts.length);
    }

    /** Takes names one after the other. */
    public static final class Builder {

        private byte[] packed = new byte[1 << 16];
        private int[] starts = new int[1 << 12];
        private int length;
        private int count;

        /**
         * Takes the next name.
         *
         * @param text bytes in which it stands, in UTF-8
         * @param from the first of them
         * @param to   the byte after the last, at most {@link PackedIds#MOST_BYTES} on
         */
        public void add(byte[] text, int from, int to) {
            int size = to - from;
            Objects.checkIndex(size, MOST_BYTES + 1);
            if (length > packed.length - size - Short.BYTES) {
                packed = Arrays.copyOf(packed, Math.addExact(Math.addExact(packed.length, packed.length / 2), size));
            }
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, 2 * count);
            }
            starts[count++] = length;
            packed[length] = (byte) (size >>> Byte.SIZE);
            packed[length + 1] = (byte) size;
            System.arraycopy(text, from, packed, length + Short.BYTES, size);
            length += Short.BYTES + size;
        }

        /** Returns the names; nothing is added any more. */
        public PackedIds build() {
            return new PackedIds(packed, length, starts, count);
        }
    }

    /** Returns how many bytes they take in a file. */
    int byteCount() {
        return length;
    }

    /** Writes them as they stand in a file. */
    void put(ByteBuffer out) {
        out.put(packed, 0, length);
    }

    @Override
    public String get(int index) {
        int from = starts[Objects.checkIndex(index, count)];
        int size = (packed[from] & 0xFF) << Byte.SIZE | packed[from + 1] & 0xFF;
        return new String(packed, from + Short.BYTES, size, StandardCharsets.UTF_8);
    }

    @Override
    public int size() {
        return count;
    }
}
