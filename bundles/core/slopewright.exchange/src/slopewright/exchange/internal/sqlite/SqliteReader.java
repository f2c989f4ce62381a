package slopewright.exchange.internal.sqlite;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;
import slopewright.messages.RefusedException;

/**
 * Reads whole tables of a database file in the published format of SQLite 3 (sqlite.org, "Database File Format"), as {@link SqliteFile}
 * writes them: no index, no statement and no journal. A driver with machine code for every platform need not be shipped for that.
 */
public final class SqliteReader {

    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int HEAD = 100;
    private static final int TABLE_LEAF = 13;
    private static final int TABLE_INTERIOR = 5;
    private static final int FIRST_TEXT = 13;
    private static final int DEEPEST = 40;
    private static final int[] INTEGER_BYTES = {0, 1, 2, 3, 4, 6, 8};

    private final String file;
    private final ByteBuffer bytes;
    private final int pageSize;
    private final int usable;
    private final Charset charset;
    private final Map<String, Table> tables = new LinkedHashMap<>();

    /** Receives rows. */
    @FunctionalInterface
    public interface Sink {

        /**
         * Takes a row.
         *
         * @param values a long, a double, a text, bytes or null for each column; where a row was written before columns were added, null
         */
        void take(Object[] values);
    }

    private record Table(int root, List<String> columns, int key) {
    }

    private SqliteReader(String file, byte[] content) {
        this.file = file;
        bytes = ByteBuffer.wrap(content);
        int size = Short.toUnsignedInt(bytes.getShort(16));
        pageSize = size == 1 ? 65_536 : size;
        usable = pageSize - Byte.toUnsignedInt(bytes.get(20));
        charset = switch (bytes.getInt(56)) {
            case 2 -> StandardCharsets.UTF_16LE;
            case 3 -> StandardCharsets.UTF_16BE;
            default -> StandardCharsets.UTF_8;
        };
    }

    /** Returns whether a file begins as a database does. */
    public static boolean isDatabase(byte[] content) {
        if (content.length < HEAD) {
            return false;
        }
        for (int i = 0; i < MAGIC.length; i++) {
            if (content[i] != MAGIC[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Reads which tables there are.
     *
     * @param file    its name, for messages
     * @param content the whole file
     * @throws ExchangeException where it is no database or is broken
     */
    public static SqliteReader of(String file, byte[] content) throws ExchangeException {
        if (!isDatabase(content)) {
            throw new ExchangeException(file, 0, Message.of("survey-file.no-sqlite"));
        }
        if (content[18] != 1 || content[19] != 1) {
            throw new ExchangeException(file, 0, Message.of("survey-file.journal"));
        }
        SqliteReader reader = new SqliteReader(file, content);
        if (Integer.bitCount(reader.pageSize) != 1 || reader.pageSize < 512 || reader.usable < 480) {
            throw new ExchangeException(file, 0, Message.said("survey-file.broken-pages", reader.pageSize));
        }
        List<Object[]> schema = new ArrayList<>();
        reader.rows(new Table(1, List.of("type", "name", "tbl_name", "rootpage", "sql"), -1), schema::add);
        for (Object[] row : schema) {
            if ("table".equals(row[0]) && row[1] instanceof String name && row[3] instanceof Long root && row[4] instanceof String sql) {
                reader.tables.put(name.toLowerCase(Locale.ROOT), table(root.intValue(), sql));
            }
        }
        return reader;
    }

    /** Returns whether there is a table of a name with columns of these names. */
    public boolean holds(String table, String... columns) {
        return tables.containsKey(table) && tables.get(table).columns().containsAll(List.of(columns));
    }

    /** Returns the place of a column among the values of a row; -1 where the table has none of this name. */
    public int column(String table, String column) {
        return tables.get(table).columns().indexOf(column);
    }

    /**
     * Goes through the rows of a table.
     *
     * @param table a table that is there
     * @param sink  receives them in the order of their row ids
     * @throws ExchangeException where the table is broken
     */
    public void rows(String table, Sink sink) throws ExchangeException {
        rows(tables.get(table), sink);
    }

    /** What stands between the outer brackets of the statement, up to the constraints of the table: names come first. */
    private static Table table(int root, String sql) {
        List<String> columns = new ArrayList<>();
        int key = -1;
        int depth = 0;
        StringBuilder part = new StringBuilder();
        for (char sign : sql.toCharArray()) {
            depth += sign == '(' ? 1 : sign == ')' ? -1 : 0;
            boolean ends = sign == ',' && depth == 1 || sign == ')' && depth == 0;
            if (ends) {
                String[] words = part.toString().strip().split("\\s+");
                String name = words[0].replaceAll("[\"'`\\[\\]]", "").toLowerCase(Locale.ROOT);
                if (!Set.of("foreign", "primary", "unique", "constraint", "check").contains(name)) {
                    String rest = String.join(" ", words).toUpperCase(Locale.ROOT);
                    key = rest.contains(" INTEGER PRIMARY KEY") ? columns.size() : key;
                    columns.add(name);
                }
                part.setLength(0);
            } else if (depth > 1 || depth == 1 && sign != '(') {
                part.append(sign);
            }
        }
        return new Table(root, columns, key);
    }

    private void rows(Table table, Sink sink) throws ExchangeException {
        try {
            tree(table, table.root(), sink, new HashSet<>(), 0);
        } catch (ArithmeticException | IndexOutOfBoundsException | BufferUnderflowException | IllegalArgumentException e) {
            throw new ExchangeException(file, 0, Message.said("survey-file.broken", e));
        }
    }

    private void tree(Table table, int page, Sink sink, Set<Integer> seen, int depth) {
        if (page < 1 || !seen.add(page) || depth > DEEPEST) {
            throw new RefusedException(Message.said("survey-file.broken.tree", page));
        }
        int start = Math.multiplyExact(page - 1, pageSize);
        int head = page == 1 ? start + HEAD : start;
        int type = bytes.get(head);
        int cells = Short.toUnsignedInt(bytes.getShort(head + 3));
        if (type != TABLE_LEAF && type != TABLE_INTERIOR) {
            throw new RefusedException(Message.said("survey-file.broken.table", page));
        }
        int pointers = head + (type == TABLE_LEAF ? 8 : 12);
        for (int i = 0; i < cells; i++) {
            int at = start + Short.toUnsignedInt(bytes.getShort(pointers + 2 * i));
            if (type == TABLE_LEAF) {
                sink.take(row(table, at));
            } else {
                tree(table, bytes.getInt(at), sink, seen, depth + 1);
            }
        }
        if (type == TABLE_INTERIOR) {
            tree(table, bytes.getInt(head + 8), sink, seen, depth + 1);
        }
    }

    private Object[] row(Table table, int at) {
        ByteBuffer cell = bytes.duplicate().position(at);
        long length = varint(cell);
        long id = varint(cell);
        if (length < 1 || length > bytes.capacity()) {
            throw new RefusedException(Message.said("survey-file.broken.row", length));
        }
        ByteBuffer record = ByteBuffer.wrap(payload(cell, (int) length));
        int headEnd = Math.toIntExact(varint(record));
        List<Long> types = new ArrayList<>();
        while (record.position() < headEnd) {
            types.add(varint(record));
        }
        Object[] values = new Object[table.columns().size()];
        for (int i = 0; i < types.size(); i++) {
            Object value = value(record, types.get(i));
            if (i < values.length) {
                values[i] = value;
            }
        }
        if (table.key() >= 0 && values[table.key()] == null) {
            values[table.key()] = id;
        }
        return values;
    }

    /** The beginning of a long row stands in its leaf, the rest on a chain of pages. */
    private byte[] payload(ByteBuffer cell, int length) {
        byte[] payload = new byte[length];
        int local = length;
        if (length > usable - 35) {
            int least = (usable - 12) * 32 / 255 - 23;
            local = least + (length - least) % (usable - 4);
            local = local > usable - 35 ? least : local;
        }
        cell.get(payload, 0, local);
        int next = local < length ? cell.getInt() : 0;
        for (int done = local; done < length;) {
            if (next < 1) {
                throw new RefusedException(Message.of("survey-file.broken.short"));
            }
            ByteBuffer page = bytes.duplicate().position(Math.multiplyExact(next - 1, pageSize));
            next = page.getInt();
            int more = Math.min(length - done, usable - 4);
            page.get(payload, done, more);
            done += more;
        }
        return payload;
    }

    private Object value(ByteBuffer record, long type) {
        if (type == 0) {
            return null;
        }
        if (type < INTEGER_BYTES.length) {
            long number = record.get();
            for (int i = 1; i < INTEGER_BYTES[(int) type]; i++) {
                number = number << 8 | Byte.toUnsignedLong(record.get());
            }
            return number;
        }
        if (type == 7) {
            return record.getDouble();
        }
        if (type == 8 || type == 9) {
            return type - 8;
        }
        if (type < FIRST_TEXT - 1) {
            throw new RefusedException(Message.said("survey-file.broken.kind", type));
        }
        byte[] data = new byte[Math.toIntExact(Math.min((type - FIRST_TEXT + 1) / 2, record.remaining() + 1L))];
        record.get(data);
        return type % 2 == 0 ? data : new String(data, charset);
    }

    private static long varint(ByteBuffer from) {
        long number = 0;
        for (int i = 0; i < 8; i++) {
            int next = from.get();
            number = number << 7 | next & 0x7F;
            if (next >= 0) {
                return number;
            }
        }
        return number << 8 | Byte.toUnsignedLong(from.get());
    }
}
