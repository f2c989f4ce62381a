package slopewright.standards.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.geometry.Decimals;
import slopewright.messages.Message;
import slopewright.standards.Provenance;
import slopewright.standards.StandardsException;

/**
 * A data file: head lines {@code # name: text}, comments behind {@code ##}, one line of column names, then rows. Fields are separated by
 * commas and may stand in
 * double quotes. Strict: a row with too few or too many fields, an unexpected column or a bad number is refused with its line.
 */
final class HeadedCsv {

    /** One row with its line in the file. */
    final class Row {

        private final int line;
        private final Map<String, String> fields;

        Row(int line, Map<String, String> fields) {
            this.line = line;
            this.fields = fields;
        }

        String text(String column) {
            return fields.get(column);
        }

        boolean isBlank(String column) {
            return "-".equals(fields.get(column));
        }

        double number(String column) {
            try {
                return Decimals.parse(fields.get(column));
            } catch (IllegalArgumentException e) {
                throw fault("field", column, e);
            }
        }

        /** Returns a number that is no size where it is negative. */
        double size(String column) {
            double size = number(column);
            if (size < 0) {
                throw fault("below-zero", column, size);
            }
            return size;
        }

        /** Returns a number that lets everything pass where it is zero or negative. */
        double realSize(String column) {
            double size = number(column);
            if (size <= 0) {
                throw fault("not-above-zero", column, size);
            }
            return size;
        }

        Provenance provenance(String column) {
            try {
                return Provenance.of(fields.get(column));
            } catch (IllegalArgumentException e) {
                throw fault("no-provenance", column, fields.get(column));
            }
        }

        /** Makes the exception for the row. */
        StandardsException fault(String key, Object... values) {
            return new StandardsException(file, line, said(key, values));
        }
    }

    private final String file;
    private final Map<String, String> head = new LinkedHashMap<>();
    private final Map<String, Integer> headLines = new LinkedHashMap<>();
    private final List<Row> rows = new ArrayList<>();

    private HeadedCsv(String file) {
        this.file = file;
    }

    static HeadedCsv read(String file, String text, List<String> columns) {
        HeadedCsv csv = new HeadedCsv(file);
        csv.readLines(text.lines().toList(), columns);
        return csv;
    }

    private void readLines(List<String> lines, List<String> columns) {
        boolean named = false;
        int number = 0;
        for (String line : lines) {
            number++;
            if (line.startsWith("##")) {
                continue;
            }
            if (line.startsWith("#")) {
                readHead(line, number);
            } else if (!named) {
                if (!List.of(line.split(",", -1)).equals(columns)) {
                    throw fault(number, "columns", String.join(",", columns), line);
                }
                named = true;
            } else {
                rows.add(row(line, number, columns));
            }
        }
        if (!named || rows.isEmpty()) {
            throw fault(number, "no-rows");
        }
    }

    private void readHead(String line, int number) {
        int colon = line.indexOf(':');
        if (colon < 0) {
            throw fault(number, "head-line");
        }
        String name = line.substring(1, colon).strip();
        head.put(name, line.substring(colon + 1).strip());
        headLines.put(name, number);
    }

    private Row row(String line, int number, List<String> columns) {
        List<String> fields = fields(line, number);
        if (fields.size() != columns.size()) {
            throw fault(number, "fields", fields.size(), columns.size());
        }
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < fields.size(); i++) {
            named.put(columns.get(i), fields.get(i));
        }
        return new Row(number, named);
    }

    private List<String> fields(String line, int number) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    field.append(c);
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        if (quoted) {
            throw fault(number, "quote");
        }
        fields.add(field.toString());
        return fields;
    }

    List<Row> rows() {
        return rows;
    }

    Optional<String> findHead(String name) {
        return Optional.ofNullable(head.get(name));
    }

    String head(String name) {
        String text = head.get(name);
        if (text == null) {
            throw fault(1, "no-head", name);
        }
        return text;
    }

    Provenance headProvenance(String name) {
        try {
            return Provenance.of(head(name));
        } catch (IllegalArgumentException e) {
            throw headFault(name, "no-provenance", name, head(name));
        }
    }

    /** Makes the exception for a head line. */
    StandardsException headFault(String name, String key, Object... values) {
        return fault(headLines.getOrDefault(name, 1), key, values);
    }

    private StandardsException fault(int line, String key, Object... values) {
        return new StandardsException(file, line, said(key, values));
    }

    /** Returns why a file of a rule set or a book is refused. */
    static Message said(String key, Object... values) {
        return Message.said("rule-file." + key, values);
    }
}
