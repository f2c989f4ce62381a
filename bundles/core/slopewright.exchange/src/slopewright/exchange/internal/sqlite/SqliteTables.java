package slopewright.exchange.internal.sqlite;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/**
 * Reads the tables of a database in the published format of SQLite 3 (sqlite.org, "Database File Format"), row by row in the order of their
 * ids; indexes and views are not looked at. A database that keeps what is new in a log beside it is refused, for rows of it may be missing
 * here. Every page, offset and length is held against the file, and no page is visited twice, so that a damaged file ends in a
 * {@link Fault} and never in an endless walk. A driver with machine code for every platform need not be shipped for that.
 */
public final class SqliteTables {

    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int HEAD = 100;
    private static final int TABLE_LEAF = 13;
    private static final int TABLE_INTERIOR = 5;
    private static final int MOST_PAYLOAD = 64 << 20;
    private static final int DEEPEST = 32;

    private final ByteBuffer file;
    private final int page;
    private final int usable;
    private final long pages;
    private final Charset charset;
    private final Map<String, Table> tables = new HashMap<>();

    /** What is wrong with a file. */
    public static final class Fault extends Exception implements Reasoned {

        private static final long serialVersionUID = 1L;

        private final transient Message reason;

        Fault(Message reason) {
            this.reason = reason;
        }

        @Override
        public Message reason() {
            return reason;
        }
    }

    /** Takes the rows of a table. */
    @FunctionalInterface
    public interface Rows<E extends Exception> {

        /**
         * Takes a row.
         *
         * @param id     its row id
         * @param values its values by their columns in lower case: a long, a double, a text, bytes; those that are null are not there
         * @throws E what whoever takes it wants
         */
        void take(long id, Map<String, Object> values) throws E;
    }

    private record Table(int root, List<String> columns, Optional<String> idColumn) {
    }

    private SqliteTables(byte[] bytes) throws Fault {
        file = ByteBuffer.wrap(bytes);
        if (!isDatabase(bytes)) {
            throw new Fault(Message.of("survey-file.no-sqlite-3"));
        }
        if (file.get(18) != 1 || file.get(19) != 1) {
            throw new Fault(Message.of("survey-file.journal"));
        }
        int size = file.getShort(16) & 0xFFFF;
        page = size == 1 ? 1 << 16 : size;
        usable = page - (file.get(20) & 0xFF);
        pages = bytes.length / page;
        if (Integer.bitCount(page) != 1 || page < 512 || usable < 480 || pages < 1) {
            throw new Fault(Message.said("survey-file.page-bytes", page));
        }
        charset = switch (file.getInt(56)) {
            case 0, 1 -> StandardCharsets.UTF_8;
            case 2 -> StandardCharsets.UTF_16LE;
            case 3 -> StandardCharsets.UTF_16BE;
            default -> throw new Fault(Message.said("survey-file.sqlite-encoding", file.getInt(56)));
        };
    }

    /** Returns whether a file begins as a database does. */
    public static boolean isDatabase(byte[] bytes) {
        return bytes.length >= HEAD && Arrays.equals(bytes, 0, MAGIC.length, MAGIC, 0, MAGIC.length);
    }

    /**
     * Opens a database.
     *
     * @param bytes the whole file
     * @throws Fault where it is none, or damaged
     */
    public static SqliteTables open(byte[] bytes) throws Fault {
        SqliteTables opened = new SqliteTables(bytes);
        opened.<Fault>walk(new Table(1, List.of("type", "name", "tbl_name", "rootpage", "sql"), Optional.empty()), (id, row) -> {
            if ("table".equals(row.get("type")) && row.get("rootpage") instanceof Long root && row.get("sql") instanceof String sql
                    && root > 0 && root <= opened.pages) {
                String name = String.valueOf(row.get("name")).toLowerCase(Locale.ROOT);
                opened.tables.put(name, new Table(root.intValue(), TableColumns.names(sql), TableColumns.id(sql)));
            }
        });
        return opened;
    }

    /** Returns whether there is a table of that name, which is not told by the size of letters. */
    public boolean has(String table) {
        return tables.containsKey(table.toLowerCase(Locale.ROOT));
    }

    /** Returns the columns of a table in lower case, empty where there is none of that name. */
    public List<String> columns(String table) {
        Table found = tables.get(table.toLowerCase(Locale.ROOT));
        return found == null ? List.of() : found.columns();
    }

    /**
     * Reads a table.
     *
     * @param table its name
     * @param rows  takes its rows
     * @throws Fault where it is not there or damaged
     * @throws E     what takes the rows throws
     */
    public <E extends Exception> void read(String table, Rows<E> rows) throws Fault, E {
        Table found = tables.get(table.toLowerCase(Locale.ROOT));
        if (found == null) {
            throw new Fault(Message.said("survey-file.no-table", table));
        }
        if (found.columns().isEmpty()) {
            throw new Fault(Message.said("survey-file.table-columns", table));
        }
        walk(found, rows);
    }

    private <E extends Exception> void walk(Table table, Rows<E> rows) throws Fault, E {
        try {
            walk(table, rows, table.root(), new BitSet(), 0);
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            throw new Fault(Message.of("survey-file.damaged.outside"));
        }
    }

    private <E extends Exception> void walk(Table table, Rows<E> rows, int number, BitSet seen, int depth) throws Fault, E {
        ByteBuffer in = page(number, seen);
        if (depth > DEEPEST) {
            throw new Fault(Message.of("survey-file.damaged.endless"));
        }
        int at = number == 1 ? HEAD : 0;
        int type = in.get(at);
        int cells = in.getShort(at + 3) & 0xFFFF;
        if (type != TABLE_LEAF && type != TABLE_INTERIOR || cells > page / 2) {
            throw new Fault(Message.said("survey-file.damaged.kind", number, type));
        }
        int offsets = at + (type == TABLE_LEAF ? 8 : 12);
        for (int i = 0; i < cells; i++) {
            int cell = in.getShort(offsets + 2 * i) & 0xFFFF;
            if (type == TABLE_INTERIOR) {
                walk(table, rows, in.getInt(cell), seen, depth + 1);
            } else {
                row(table, rows, in.position(cell), seen);
            }
        }
        if (type == TABLE_INTERIOR) {
            walk(table, rows, in.getInt(at + 8), seen, depth + 1);
        }
    }

    private ByteBuffer page(int number, BitSet seen) throws Fault {
        if (number < 1 || number > pages || seen.get(number)) {
            throw new Fault(Message.said("survey-file.damaged.page", Integer.toUnsignedString(number), pages));
        }
        seen.set(number);
        return file.slice((number - 1) * page, page);
    }

    private <E extends Exception> void row(Table table, Rows<E> rows, ByteBuffer in, BitSet seen) throws Fault, E {
        long length = varint(in);
        long id = varint(in);
        if (length < 0 || length > MOST_PAYLOAD || length > file.capacity()) {
            throw new Fault(Message.said("survey-file.damaged.row", length));
        }
        rows.take(id, values(table, id, payload(in, (int) length, seen)));
    }

    /** Returns what a cell of a leaf holds, with what stands on pages of its own where it is long (section 1.6). */
    private ByteBuffer payload(ByteBuffer in, int length, BitSet seen) throws Fault {
        int most = usable - 35;
        if (length <= most) {
            return in.slice(in.position(), length);
        }
        int least = (usable - 12) * 32 / 255 - 23;
        int surplus = least + (length - least) % (usable - 4);
        int local = surplus <= most ? surplus : least;
        ByteBuffer whole = ByteBuffer.allocate(length).put(in.slice(in.position(), local));
        int next = in.getInt(in.position() + local);
        while (whole.hasRemaining()) {
            ByteBuffer more = page(next, seen);
            next = more.getInt(0);
            whole.put(more.slice(4, Math.min(usable - 4, whole.remaining())));
        }
        return whole.flip();
    }

    private Map<String, Object> values(Table table, long id, ByteBuffer record) throws Fault {
        int head = (int) Math.min(varint(record), record.limit());
        ByteBuffer types = record.slice(record.position(), head - record.position());
        ByteBuffer body = record.slice(head, record.limit() - head);
        Map<String, Object> values = new HashMap<>();
        for (int i = 0; types.hasRemaining(); i++) {
            Optional<Object> value = value(varint(types), body);
            if (i < table.columns().size() && value.isPresent()) {
                values.put(table.columns().get(i), value.get());
            }
        }
        table.idColumn().ifPresent(column -> values.putIfAbsent(column, id));
        return values;
    }

    private Optional<Object> value(long type, ByteBuffer body) throws Fault {
        if (type >= 12) {
            long length = (type - 12) / 2;
            if (length > body.remaining()) {
                throw new Fault(Message.of("survey-file.damaged.value"));
            }
            byte[] bytes = new byte[(int) length];
            body.get(bytes);
            return Optional.of(type % 2 == 0 ? bytes : new String(bytes, charset));
        }
        return switch ((int) type) {
            case 0 -> Optional.empty();
            case 1, 2, 3, 4 -> Optional.of(integer(body, (int) type));
            case 5 -> Optional.of(integer(body, 6));
            case 6 -> Optional.of(integer(body, 8));
            case 7 -> Optional.of(Double.longBitsToDouble(integer(body, 8)));
            case 8, 9 -> Optional.of(type - 8);
            default -> throw new Fault(Message.said("survey-file.damaged.type", type));
        };
    }

    private static long integer(ByteBuffer body, int bytes) throws Fault {
        if (bytes > body.remaining()) {
            throw new Fault(Message.of("survey-file.damaged.value"));
        }
        long number = body.get();
        for (int i = 1; i < bytes; i++) {
            number = number << 8 | body.get() & 0xFF;
        }
        return number;
    }

    /** Reads a number in one to nine bytes, seven bits in each but the ninth, the most significant first. */
    private static long varint(ByteBuffer in) throws Fault {
        long number = 0;
        for (int i = 0; i < 9; i++) {
            if (!in.hasRemaining()) {
                throw new Fault(Message.of("survey-file.damaged.number"));
            }
            int each = in.get() & 0xFF;
            if (i == 8) {
                return number << 8 | each;
            }
            number = number << 7 | each & 0x7F;
            if (each < 0x80) {
                return number;
            }
        }
        return number;
    }
}
