package slopewright.exchange.internal.sqlite;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a whole database file in the published format of SQLite 3 (sqlite.org, "Database File Format"): tables with their rows and the
 * small indexes that their keys ask for, nothing that changes later. So much of the format is a page of code, and a driver with machine
 * code for every platform, which unpacks itself when it runs, need not be shipped. The same tables give the same bytes.
 */
public final class SqliteFile {

    private static final int PAGE = 4096;
    private static final int HEAD = 100;
    private static final int TABLE_LEAF = 13;
    private static final int TABLE_INTERIOR = 5;
    private static final int INDEX_LEAF = 10;
    /** The most of a record that stands in a leaf of a table, and in one of an index, bytes. */
    private static final int MOST_IN_TABLE = PAGE - 35;
    private static final int MOST_IN_INDEX = (PAGE - 12) * 64 / 255 - 23;
    private static final int LEAST = (PAGE - 12) * 32 / 255 - 23;
    private static final int TEXT = 13;
    private static final int BLOB = 12;
    private static final int REAL = 7;
    private static final int WRITTEN_BY = 3_045_000;

    private final List<byte[]> pages = new ArrayList<>();

    /**
     * One table.
     *
     * @param name    its name
     * @param sql     the statement that made it
     * @param rows    its rows by their row ids, in rising order
     * @param indexes the columns of each index that the statement asks for without naming it, in their order
     */
    public record Table(String name, String sql, List<Row> rows, List<int[]> indexes) {

        /** Copies the lists. */
        public Table {
            rows = List.copyOf(rows);
            indexes = List.copyOf(indexes);
        }
    }

    /**
     * One row.
     *
     * @param id     its row id, which stands for a column of the type INTEGER PRIMARY KEY
     * @param values its values: a long, a double, a text, bytes or null, which an integer key is
     */
    public record Row(long id, List<Object> values) {

        /** Copies the list, which may hold nulls. */
        public Row {
            values = new ArrayList<>(values);
        }
    }

    /** A page of a tree with the greatest row id below it. */
    private record Child(int page, long greatest) {
    }

    private SqliteFile() {
    }

    /**
     * Writes a database.
     *
     * @param tables        its tables
     * @param applicationId by which programs know what it holds
     * @param userVersion   version of what it holds
     * @throws IllegalArgumentException where an index does not fit on its page
     */
    public static byte[] write(List<Table> tables, int applicationId, int userVersion) {
        SqliteFile file = new SqliteFile();
        file.pages.add(new byte[PAGE]);
        List<Row> schema = new ArrayList<>();
        for (Table table : tables) {
            int root = file.tree(table.rows(), 0);
            schema.add(new Row(schema.size() + 1L, schema("table", table.name(), table.name(), root, table.sql())));
            for (int i = 0; i < table.indexes().size(); i++) {
                int page = file.index(table.rows(), table.indexes().get(i));
                schema.add(new Row(schema.size() + 1L, schema("index", "sqlite_autoindex_" + table.name() + "_" + (i + 1), table.name(),
                        page, null)));
            }
        }
        file.tree(schema, 1);
        return file.bytes(applicationId, userVersion);
    }

    private static List<Object> schema(String type, String name, String table, int root, String sql) {
        List<Object> row = new ArrayList<>(List.of(type, name, table, (long) root));
        row.add(sql);
        return row;
    }

    private byte[] bytes(int applicationId, int userVersion) {
        ByteBuffer head = ByteBuffer.wrap(pages.get(0));
        head.put("SQLite format 3\0".getBytes(StandardCharsets.US_ASCII)).putShort((short) PAGE).put((byte) 1).put((byte) 1).put((byte) 0)
                .put((byte) 64).put((byte) 32).put((byte) 32).putInt(1).putInt(pages.size()).putInt(0).putInt(0).putInt(1).putInt(4)
                .putInt(0).putInt(0).putInt(1).putInt(userVersion).putInt(0).putInt(applicationId);
        head.putInt(92, 1).putInt(96, WRITTEN_BY);
        ByteArrayOutputStream out = new ByteArrayOutputStream(pages.size() * PAGE);
        pages.forEach(out::writeBytes);
        return out.toByteArray();
    }

    private int page() {
        pages.add(new byte[PAGE]);
        return pages.size();
    }

    /** Writes the tree of a table; its root goes onto a page of the caller's, or onto one of its own where that is zero. */
    private int tree(List<Row> rows, int rootPage) {
        List<byte[]> cells = new ArrayList<>();
        List<Long> ids = new ArrayList<>();
        for (Row row : rows) {
            cells.add(cell(row));
            ids.add(row.id());
        }
        List<Child> level = level(cells, ids, TABLE_LEAF, rootPage);
        while (level.size() > 1) {
            List<byte[]> pointers = new ArrayList<>();
            List<Long> greatest = new ArrayList<>();
            for (Child child : level) {
                ByteArrayOutputStream pointer = new ByteArrayOutputStream();
                pointer.writeBytes(ByteBuffer.allocate(4).putInt(child.page()).array());
                varint(pointer, child.greatest());
                pointers.add(pointer.toByteArray());
                greatest.add(child.greatest());
            }
            level = level(pointers, greatest, TABLE_INTERIOR, rootPage);
        }
        return level.get(0).page();
    }

    /** Fills pages with cells; where one page holds them all it is the root. No inner page is left with a single child. */
    private List<Child> level(List<byte[]> cells, List<Long> ids, int type, int rootPage) {
        int room = PAGE - (type == TABLE_LEAF ? 8 : 12);
        boolean fits = cells.stream().mapToInt(cell -> cell.length + 2).sum() <= room - (rootPage == 1 ? HEAD : 0);
        List<Child> level = new ArrayList<>();
        int first = 0;
        while (first < cells.size() || level.isEmpty()) {
            int next = first;
            int used = 0;
            while (next < cells.size() && used + cells.get(next).length + 2 <= room) {
                used += cells.get(next).length + 2;
                next++;
            }
            next -= type == TABLE_INTERIOR && cells.size() - next == 1 ? 1 : 0;
            int number = fits && rootPage > 0 ? rootPage : page();
            fill(number, type, cells.subList(first, next));
            level.add(new Child(number, next == 0 ? 0 : ids.get(next - 1)));
            first = next;
        }
        return level;
    }

    /** Writes one page: head, the offsets of its cells, the cells from its end. The last cell of an inner page is its right pointer. */
    private void fill(int number, int type, List<byte[]> all) {
        boolean inner = type == TABLE_INTERIOR;
        List<byte[]> cells = inner ? all.subList(0, all.size() - 1) : all;
        byte[] page = pages.get(number - 1);
        int at = number == 1 ? HEAD : 0;
        ByteBuffer head = ByteBuffer.wrap(page);
        int end = PAGE;
        int offsets = at + (inner ? 12 : 8);
        for (int i = 0; i < cells.size(); i++) {
            end -= cells.get(i).length;
            System.arraycopy(cells.get(i), 0, page, end, cells.get(i).length);
            head.putShort(offsets + 2 * i, (short) end);
        }
        head.put(at, (byte) type).putShort(at + 3, (short) cells.size()).putShort(at + 5, (short) end);
        if (inner) {
            System.arraycopy(all.get(all.size() - 1), 0, page, at + 8, 4);
        }
    }

    private byte[] cell(Row row) {
        byte[] payload = record(row.values());
        ByteArrayOutputStream cell = new ByteArrayOutputStream();
        varint(cell, payload.length);
        varint(cell, row.id());
        if (payload.length <= MOST_IN_TABLE) {
            cell.writeBytes(payload);
            return cell.toByteArray();
        }
        int surplus = LEAST + (payload.length - LEAST) % (PAGE - 4);
        int local = surplus <= MOST_IN_TABLE ? surplus : LEAST;
        cell.write(payload, 0, local);
        cell.writeBytes(ByteBuffer.allocate(4).putInt(pages.size() + 1).array());
        for (int from = local; from < payload.length; from += PAGE - 4) {
            int length = Math.min(PAGE - 4, payload.length - from);
            int number = page();
            ByteBuffer.wrap(pages.get(number - 1)).putInt(from + length < payload.length ? number + 1 : 0).put(payload, from, length);
        }
        return cell.toByteArray();
    }

    /** Writes an index of one page: the columns of each row with its row id, in the order of their bytes. */
    private int index(List<Row> rows, int[] columns) {
        List<Row> sorted = new ArrayList<>(rows);
        sorted.sort((one, other) -> {
            for (int column : columns) {
                int order = String.valueOf(one.values().get(column)).compareTo(String.valueOf(other.values().get(column)));
                if (order != 0) {
                    return order;
                }
            }
            return Long.compare(one.id(), other.id());
        });
        List<byte[]> cells = new ArrayList<>();
        for (Row row : sorted) {
            List<Object> key = new ArrayList<>();
            for (int column : columns) {
                key.add(row.values().get(column));
            }
            key.add(row.id());
            byte[] payload = record(key);
            ByteArrayOutputStream cell = new ByteArrayOutputStream();
            varint(cell, payload.length);
            cell.writeBytes(payload);
            cells.add(cell.toByteArray());
            if (payload.length > MOST_IN_INDEX) {
                throw new IllegalArgumentException("the key of a row is too long for an index");
            }
        }
        if (cells.stream().mapToInt(cell -> cell.length + 2).sum() > PAGE - 8) {
            throw new IllegalArgumentException("an index has more rows than its page holds");
        }
        int number = page();
        fill(number, INDEX_LEAF, cells);
        return number;
    }

    private static byte[] record(List<Object> values) {
        ByteArrayOutputStream types = new ByteArrayOutputStream();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Object value : values) {
            if (value == null) {
                varint(types, 0);
            } else if (value instanceof Long number) {
                integer(number, types, body);
            } else if (value instanceof Double number) {
                varint(types, REAL);
                body.writeBytes(ByteBuffer.allocate(8).putDouble(number).array());
            } else {
                byte[] bytes = value instanceof byte[] blob ? blob : value.toString().getBytes(StandardCharsets.UTF_8);
                varint(types, 2L * bytes.length + (value instanceof byte[] ? BLOB : TEXT));
                body.writeBytes(bytes);
            }
        }
        int head = types.size() + 1;
        head += head > 127 ? 1 : 0;
        ByteArrayOutputStream record = new ByteArrayOutputStream();
        varint(record, head);
        record.writeBytes(types.toByteArray());
        record.writeBytes(body.toByteArray());
        return record.toByteArray();
    }

    /** Writes an integer in four bytes where it fits, else in eight: both are read alike. */
    private static void integer(long number, ByteArrayOutputStream types, ByteArrayOutputStream body) {
        boolean small = number == (int) number;
        varint(types, small ? 4 : 6);
        body.writeBytes(small ? ByteBuffer.allocate(4).putInt((int) number).array() : ByteBuffer.allocate(8).putLong(number).array());
    }

    /** Writes a number in one to nine bytes, seven bits in each but the ninth, the most significant first. */
    private static void varint(ByteArrayOutputStream out, long number) {
        if (number < 0 || number >>> 56 != 0) {
            for (int shift = 57; shift >= 8; shift -= 7) {
                out.write((int) (number >>> shift & 0x7f | 0x80));
            }
            out.write((int) (number & 0xff));
            return;
        }
        int shift = 49;
        while (shift > 0 && number >>> shift == 0) {
            shift -= 7;
        }
        for (; shift > 0; shift -= 7) {
            out.write((int) (number >>> shift & 0x7f | 0x80));
        }
        out.write((int) (number & 0x7f));
    }
}
