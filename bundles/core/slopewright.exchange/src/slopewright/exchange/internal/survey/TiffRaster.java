package slopewright.exchange.internal.survey;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;
import slopewright.messages.RefusedException;

/**
 * The first picture of a TIFF (revision 6.0 of 1992) or BigTIFF (libtiff, "BigTIFF Design"): one band of whole or floating-point numbers in
 * strips or tiles. Every count, length and offset is held against the file, and no room is made for what is only said.
 */
final class TiffRaster {

    private static final int WIDTH = 256;
    private static final int HEIGHT = 257;
    private static final int BITS = 258;
    private static final int COMPRESSION = 259;
    private static final int COLOURS = 262;
    private static final int FILL_ORDER = 266;
    private static final int STRIP_OFFSETS = 273;
    private static final int SAMPLES = 277;
    private static final int ROWS_PER_STRIP = 278;
    private static final int STRIP_BYTES = 279;
    private static final int PREDICTOR = 317;
    private static final int TILE_WIDTH = 322;
    private static final int TILE_HEIGHT = 323;
    private static final int TILE_OFFSETS = 324;
    private static final int TILE_BYTES = 325;
    private static final int SAMPLE_FORMAT = 339;
    private static final int PALETTE = 3;
    /** Bytes of each type of value, nothing where there is none. */
    private static final int[] TYPE_BYTES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

    private final ByteBuffer file;
    private final boolean big;
    private final long mostCells;
    private final Map<Integer, Tag> tags = new HashMap<>();

    /** A tag of the picture. */
    private record Tag(int type, int count, ByteBuffer values) {
    }

    /** Takes the rows of the picture, the first at its top. */
    @FunctionalInterface
    interface Rows {

        /** Takes a row; cells that are not in the file are no numbers, and the array is used again. */
        void take(int row, double[] cells) throws ExchangeException;
    }

    /** How the picture is cut into blocks. */
    private record Blocks(int width, int height, long[] offsets, long[] bytes, int across) {
    }

    private TiffRaster(ByteBuffer file, long mostCells) {
        this.mostCells = mostCells;
        this.file = file;
        int mark = file.capacity() < 8 ? 0 : file.getShort(0);
        file.order(mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int version = mark == 0x4949 || mark == 0x4D4D ? file.getShort(2) : 0;
        big = version == 43;
        if (version != 42 && !big) {
            throw new RefusedException(Message.of("survey-file.tiff.mark"));
        }
    }

    /**
     * Opens a picture.
     *
     * @param bytes     the whole file
     * @param mostCells the most cells that are taken
     * @throws IllegalArgumentException where it is none, or its parts do not fit together; the message says what
     */
    static TiffRaster open(byte[] bytes, long mostCells) {
        TiffRaster raster = new TiffRaster(ByteBuffer.wrap(bytes), mostCells);
        raster.directory();
        return raster;
    }

    private void directory() {
        int at = place(big ? file.getLong(8) : file.getInt(4) & 0xFFFFFFFFL, big ? 8 : 2);
        long count = big ? file.getLong(at) : file.getShort(at) & 0xFFFF;
        int entry = big ? 20 : 12;
        int begin = at + (big ? 8 : 2);
        if (count < 1 || count > (file.capacity() - begin) / entry) {
            throw new RefusedException(Message.said("survey-file.tiff.directory", Long.toUnsignedString(count)));
        }
        for (int i = 0; i < count; i++) {
            tag(begin + i * entry);
        }
    }

    private void tag(int at) {
        int type = file.getShort(at + 2) & 0xFFFF;
        long count = big ? file.getLong(at + 4) : file.getInt(at + 4) & 0xFFFFFFFFL;
        int each = type < TYPE_BYTES.length ? TYPE_BYTES[type] : 0;
        if (each == 0) {
            return;
        }
        int inside = big ? 8 : 4;
        int value = at + (big ? 12 : 8);
        if (count < 0 || count > file.capacity() / each) {
            throw new RefusedException(Message.said("survey-file.tiff.tag-values", (file.getShort(at) & 0xFFFF),
                    Long.toUnsignedString(count)));
        }
        int bytes = (int) count * each;
        int from = bytes <= inside ? value : place(big ? file.getLong(value) : file.getInt(value) & 0xFFFFFFFFL, bytes);
        tags.put(file.getShort(at) & 0xFFFF, new Tag(type, (int) count, file.slice(from, bytes).order(file.order())));
    }

    private int place(long offset, long bytes) {
        if (offset < 0 || bytes < 0 || bytes > file.capacity() || offset > file.capacity() - bytes) {
            throw new RefusedException(Message.said("survey-file.tiff.part", bytes, Long.toUnsignedString(offset), file.capacity()));
        }
        return (int) offset;
    }

    /** Returns whether a tag is there. */
    boolean has(int tag) {
        return tags.containsKey(tag);
    }

    /** Returns the numbers of a tag, none where it is not there. */
    double[] numbers(int tag) {
        Tag found = tags.get(tag);
        if (found == null) {
            return new double[0];
        }
        ByteBuffer in = found.values();
        double[] numbers = new double[found.count()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = switch (found.type()) {
                case 5 -> (double) (in.getInt(8 * i) & 0xFFFFFFFFL) / (in.getInt(8 * i + 4) & 0xFFFFFFFFL);
                case 10 -> (double) in.getInt(8 * i) / in.getInt(8 * i + 4);
                case 11 -> in.getFloat(4 * i);
                case 12 -> in.getDouble(8 * i);
                default -> whole(found, i);
            };
        }
        return numbers;
    }

    private static long whole(Tag tag, int i) {
        ByteBuffer in = tag.values();
        return switch (tag.type()) {
            case 1, 2, 7 -> in.get(i) & 0xFF;
            case 3 -> in.getShort(2 * i) & 0xFFFF;
            case 4, 13 -> in.getInt(4 * i) & 0xFFFFFFFFL;
            case 6 -> in.get(i);
            case 8 -> in.getShort(2 * i);
            case 9 -> in.getInt(4 * i);
            case 16, 17, 18 -> in.getLong(8 * i);
            default -> throw new RefusedException(Message.said("survey-file.tiff.whole", tag.type()));
        };
    }

    private long[] wholes(int tag) {
        Tag found = tags.get(tag);
        if (found == null) {
            return new long[0];
        }
        long[] numbers = new long[found.count()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = whole(found, i);
        }
        return numbers;
    }

    private long first(int tag, long otherwise) {
        Tag found = tags.get(tag);
        return found == null || found.count() == 0 ? otherwise : whole(found, 0);
    }

    /** Returns the text of a tag, empty where it is not there. */
    Optional<String> text(int tag) {
        return Optional.ofNullable(tags.get(tag)).map(found -> {
            byte[] bytes = new byte[found.values().capacity()];
            found.values().get(0, bytes);
            return new String(bytes, StandardCharsets.US_ASCII).replaceFirst("(?s)\0.*", "").strip();
        });
    }

    /** Returns how many columns it has. */
    int width() {
        return size(WIDTH);
    }

    /** Returns how many rows it has. */
    int height() {
        return size(HEIGHT);
    }

    private int size(int tag) {
        long size = first(tag, 0);
        if (size < 1 || size > Integer.MAX_VALUE) {
            throw new RefusedException(Message.said("survey-file.tiff.size", size));
        }
        return (int) size;
    }

    /** Returns how many bands it has. */
    long bands() {
        return first(SAMPLES, 1);
    }

    /** Returns how many bits a number has. */
    long bits() {
        return first(BITS, 1);
    }

    /**
     * Reads all cells.
     *
     * @throws IllegalArgumentException where the file is damaged, or packed in a way that is not read; the message says how
     * @throws ExchangeException        what takes the rows throws
     */
    void read(Rows rows) throws ExchangeException {
        if (first(FILL_ORDER, 1) != 1 || first(COLOURS, 1) == PALETTE) {
            throw new RefusedException(Message.of("survey-file.tiff.colours"));
        }
        TiffCells cells = new TiffCells((int) first(COMPRESSION, 1), (int) first(PREDICTOR, 1), (int) bits() / 8,
                (int) first(SAMPLE_FORMAT, 1), file.order());
        Blocks blocks = blocks();
        double[] row = new double[width()];
        double[][] decoded = new double[blocks.across()][];
        for (int top = 0; top < height(); top += blocks.height()) {
            int high = has(TILE_WIDTH) ? blocks.height() : Math.min(blocks.height(), height() - top);
            for (int i = 0; i < blocks.across(); i++) {
                decoded[i] = decoded(cells, blocks, top / blocks.height() * blocks.across() + i, high);
            }
            for (int y = top; y < Math.min(height(), top + high); y++) {
                for (int x = 0; x < row.length; x++) {
                    row[x] = decoded[x / blocks.width()][(y - top) * blocks.width() + x % blocks.width()];
                }
                rows.take(y, row);
            }
        }
    }

    /** A block that is not in the file holds nothing: programs leave out those in which nothing was measured. */
    private double[] decoded(TiffCells cells, Blocks blocks, int index, int high) {
        long bytes = blocks.bytes()[index];
        int from = place(blocks.offsets()[index], bytes);
        return bytes == 0 ? TiffCells.nothing(blocks.width() * high)
                : cells.decode(file.slice(from, (int) bytes).order(file.order()), blocks.width(), high);
    }

    private Blocks blocks() {
        boolean tiled = has(TILE_WIDTH);
        long wide = tiled ? first(TILE_WIDTH, 0) : width();
        long high = tiled ? first(TILE_HEIGHT, 0) : Math.min(height(), first(ROWS_PER_STRIP, height()) & 0xFFFFFFFFL);
        if (wide < 1 || high < 1 || wide > mostCells / high) {
            throw new RefusedException(Message.said("survey-file.tiff.block-cells", wide, high, mostCells));
        }
        long[] offsets = wholes(tiled ? TILE_OFFSETS : STRIP_OFFSETS);
        long[] bytes = wholes(tiled ? TILE_BYTES : STRIP_BYTES);
        long across = (width() + wide - 1) / wide;
        long count = across * ((height() + high - 1) / high);
        if (offsets.length < count || bytes.length < count) {
            throw new RefusedException(Message.said("survey-file.tiff.blocks", count, Math.min(offsets.length, bytes.length)));
        }
        return new Blocks((int) wide, (int) high, offsets, bytes, (int) across);
    }
}
