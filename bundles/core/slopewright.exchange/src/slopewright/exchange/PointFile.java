package slopewright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import slopewright.exchange.internal.FastDecimals;
import slopewright.messages.Message;

/**
 * Points as comma-separated values with the header {@code id,alongM,rightM,heightM}: read in blocks of flat arrays, so that a file of
 * any length takes bounded memory.
 */
public final class PointFile {

    /** The only header. */
    public static final String HEADER = "id,alongM,rightM,heightM";

    private static final int BLOCK_BYTES = 8 << 20;
    private static final int LEAST_BLOCK_BYTES = 1 << 16;
    private static final int LEAST_LINE_BYTES = 6;
    private static final int MOST_QUOTED = 80;

    private final String name;
    private final int blockBytes;
    private long line;

    private PointFile(String name, int blockBytes) {
        this.name = name;
        this.blockBytes = blockBytes;
    }

    /** Takes one block; the arrays are used again for the next one. */
    @FunctionalInterface
    public interface BlockSink {

        /**
         * Takes a block.
         *
         * @param block     the points
         * @param count     how many
         * @param firstLine line of the first point in the file
         */
        void accept(PointBlock block, int count, long firstLine);
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param sink receives the points block by block, in their order
     * @throws ExchangeException where the file cannot be read; the message names file, line and reason
     */
    public static void read(Path file, BlockSink sink) throws ExchangeException {
        try (InputStream in = Files.newInputStream(file)) {
            new PointFile(file.toString(), blockBytes(file)).readAll(in, sink);
        } catch (NoSuchFileException e) {
            throw new ExchangeException(file.toString(), 0, Message.of("survey-file.no-file"));
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.unreadable", e));
        }
    }

    /** A small file takes little memory; where nothing is known of its length, as of a pipe, a block is as large as any. */
    private static int blockBytes(Path file) throws IOException {
        return Files.isRegularFile(file) ? (int) Math.max(LEAST_BLOCK_BYTES, Math.min(BLOCK_BYTES, Files.size(file) + 1)) : BLOCK_BYTES;
    }

    private void readAll(InputStream in, BlockSink sink) throws IOException, ExchangeException {
        byte[] text = new byte[blockBytes];
        int most = blockBytes / LEAST_LINE_BYTES;
        PointBlock block = new PointBlock(new double[most], new double[most], new double[most], new int[most], new int[most], text);
        int filled = 0;
        boolean end = false;
        boolean headed = false;
        while (!end) {
            int got = in.readNBytes(text, filled, blockBytes - filled);
            end = got < blockBytes - filled;
            filled += got;
            int whole = end ? filled : lastLineEnd(text, filled);
            int from = 0;
            if (!headed) {
                from = header(text, whole);
                headed = true;
            }
            long firstLine = line + 1;
            int count = parse(block, from, whole);
            if (count > 0) {
                sink.accept(block, count, firstLine);
            }
            System.arraycopy(text, whole, text, 0, filled - whole);
            filled -= whole;
        }
    }

    private int lastLineEnd(byte[] text, int filled) throws ExchangeException {
        for (int i = filled - 1; i >= 0; i--) {
            if (text[i] == '\n') {
                return i + 1;
            }
        }
        throw new ExchangeException(name, line + 1, Message.said("survey-file.long-line", blockBytes >> 20));
    }

    private int header(byte[] text, int whole) throws ExchangeException {
        int end = 0;
        while (end < whole && text[end] != '\n') {
            end++;
        }
        line = 1;
        String header = new String(text, 0, end, StandardCharsets.UTF_8).replace("\uFEFF", "").strip();
        if (!header.equals(HEADER)) {
            throw new ExchangeException(name, 1, Message.said("survey-file.header-found", HEADER,
                    (header.length() > MOST_QUOTED ? header.substring(0, MOST_QUOTED) + "…" : header)));
        }
        return Math.min(end + 1, whole);
    }

    private int parse(PointBlock block, int from, int to) throws ExchangeException {
        byte[] text = block.text();
        int count = 0;
        int at = from;
        while (at < to) {
            int end = at;
            while (end < to && text[end] != '\n') {
                end++;
            }
            line++;
            int last = end > at && text[end - 1] == '\r' ? end - 1 : end;
            if (last == at) {
                if (end < to) {
                    throw new ExchangeException(name, line, Message.of("survey-file.empty-line"));
                }
            } else {
                point(block, count++, at, last);
            }
            at = end + 1;
        }
        return count;
    }

    private void point(PointBlock block, int index, int from, int to) throws ExchangeException {
        byte[] text = block.text();
        int first = comma(text, from, to);
        int second = first < to ? comma(text, first + 1, to) : to;
        int third = second < to ? comma(text, second + 1, to) : to;
        if (third >= to || comma(text, third + 1, to) < to) {
            throw new ExchangeException(name, line, Message.said("survey-file.four-fields", HEADER));
        }
        block.idStart()[index] = from;
        block.idLength()[index] = first - from;
        block.alongM()[index] = number(text, first + 1, second, "alongM");
        block.rightM()[index] = number(text, second + 1, third, "rightM");
        block.heightM()[index] = number(text, third + 1, to, "heightM");
    }

    private static int comma(byte[] text, int from, int to) {
        int at = from;
        while (at < to && text[at] != ',') {
            at++;
        }
        return at;
    }

    private double number(byte[] text, int from, int to, String column) throws ExchangeException {
        double value = FastDecimals.parse(text, from, to);
        if (Double.isNaN(value)) {
            throw new ExchangeException(name, line, Message.said("survey-file.column-no-number", column, new String(text, from, to - from,
                    StandardCharsets.UTF_8)));
        }
        return value;
    }
}
