package slopewright.exchange.internal.survey;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.messages.Message;

/**
 * The table of a shapefile, dBASE III: one row a shape. Its names of columns have ten letters at most, so that {@code topElevati} is
 * {@code topElevationM}. Letters beyond ASCII are read where a {@code .cpg} names their encoding.
 */
final class DbaseTable implements Closeable {

    private static final int HEAD_BYTES = 32;
    private static final int MOST_HEAD_BYTES = 1 << 16;
    private static final int END_OF_HEAD = 0x0D;
    private static final int DELETED = '*';

    private final SurveyInput input;
    private final InputStream in;
    private final Charset encoding;
    private final List<Column> columns = new ArrayList<>();
    private long left;
    private int rowBytes;

    private record Column(Optional<SurveyShape.Fact> fact, String name, char type, int length) {
    }

    private DbaseTable(SurveyInput input, InputStream in, Charset encoding) {
        this.input = input;
        this.in = in;
        this.encoding = encoding;
    }

    /** Opens a table and reads its head. */
    @SuppressWarnings("resource") // the table closes what it reads
    static DbaseTable open(SurveyInput input, Optional<SurveyInput> codePage) throws IOException, ExchangeException {
        DbaseTable table = new DbaseTable(input, input.open(), codePage.isPresent() ? encoding(codePage.get()) : StandardCharsets.US_ASCII);
        try {
            table.readHead();
            return table;
        } catch (IOException | ExchangeException e) {
            table.close();
            throw e;
        }
    }

    private static Charset encoding(SurveyInput codePage) throws IOException, ExchangeException {
        try (InputStream in = codePage.open()) {
            String name = new String(in.readNBytes(HEAD_BYTES), StandardCharsets.US_ASCII).strip();
            return Charset.forName(name.matches("\\d+") ? "8859".equals(name.substring(0, Math.min(4, name.length())))
                    ? "ISO-8859-" + name.substring(4) : "windows-" + name : name);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw codePage.fault(1, Message.said("survey-file.unknown-encoding", e));
        }
    }

    private void readHead() throws IOException, ExchangeException {
        ByteBuffer head = ByteBuffer.wrap(in.readNBytes(HEAD_BYTES)).order(ByteOrder.LITTLE_ENDIAN);
        if (head.remaining() < HEAD_BYTES || (head.get(0) & 0x07) != 3) {
            throw input.fault(0, Message.of("survey-file.no-dbase"));
        }
        left = head.getInt(4) & 0xFFFFFFFFL;
        int headBytes = head.getShort(8) & 0xFFFF;
        rowBytes = head.getShort(10) & 0xFFFF;
        byte[] rest = in.readNBytes(Math.min(MOST_HEAD_BYTES, Math.max(0, headBytes - HEAD_BYTES)));
        int used = 1;
        for (int at = 0; at + HEAD_BYTES <= rest.length && rest[at] != END_OF_HEAD; at += HEAD_BYTES) {
            int end = at;
            while (end < at + 11 && rest[end] != 0) {
                end++;
            }
            String name = new String(rest, at, end - at, StandardCharsets.US_ASCII);
            int length = rest[at + 16] & 0xFF;
            columns.add(new Column(SurveyInput.factOfTenLetters(name), name, (char) rest[at + 11], length));
            used += length;
        }
        if (rest.length < headBytes - HEAD_BYTES || columns.isEmpty() || used != rowBytes) {
            throw input.fault(0, Message.said("survey-file.dbase-columns", rowBytes));
        }
    }

    /** Returns whether there is a row that was not read. */
    boolean hasMore() {
        return left > 0;
    }

    /** Reads what the next row says. */
    Map<SurveyShape.Fact, String> next(long number) throws IOException, ExchangeException {
        byte[] row = left-- > 0 ? in.readNBytes(rowBytes) : new byte[0];
        if (row.length < rowBytes) {
            throw input.fault(number, Message.of("survey-file.dbase-short"));
        }
        if (row[0] == DELETED) {
            throw input.fault(number, Message.of("survey-file.dbase-deleted"));
        }
        Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
        int at = 1;
        for (Column column : columns) {
            if (column.fact.isPresent()) {
                String text = text(row, at, column, number);
                if (!text.isEmpty()) {
                    input.put(facts, column.fact.get(), text, number);
                }
            }
            at += column.length;
        }
        return facts;
    }

    private String text(byte[] row, int at, Column column, long number) throws ExchangeException {
        String text;
        try {
            text = encoding.newDecoder().decode(ByteBuffer.wrap(row, at, column.length)).toString().replace("\0", " ").strip();
        } catch (CharacterCodingException e) {
            throw input.fault(number, Message.said("survey-file.not-encoded", column.name, encoding.name()));
        }
        if (text.matches("[*]+") && (column.type == 'N' || column.type == 'F')) {
            return ""; // how programs write that there is no number
        }
        boolean day = column.type == 'D' && text.matches("\\d{8}");
        return day ? text.substring(0, 4) + "-" + text.substring(4, 6) + "-" + text.substring(6) : text;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
