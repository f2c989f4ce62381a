package slopewright.siting.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.geometry.Decimals;
import slopewright.standards.StandardsException;

/**
 * A data file of this bundle: head lines {@code # name: text}, one line of column names, then rows of decimal numbers separated by
 * commas. Strict: what does not fit is refused with file and line.
 */
public final class DataFile {

    private final String path;
    private final Map<String, String> head = new LinkedHashMap<>();
    private final List<String> columns = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();

    private DataFile(String path) {
        this.path = path;
    }

    /**
     * Reads a file of the bundle.
     *
     * @param path its path from the root of the bundle, with a slash in front
     * @return the file
     * @throws StandardsException where it is missing or damaged
     */
    public static DataFile bundled(String path) {
        try (InputStream in = DataFile.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new StandardsException(path, 0, "is missing");
            }
            return of(path, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new StandardsException(path, 0, "cannot be read: " + e.getMessage());
        }
    }

    /** Reads the text of a file that is called by a path. */
    public static DataFile of(String path, String text) {
        DataFile file = new DataFile(path);
        int number = 0;
        for (String line : text.lines().toList()) {
            file.read(line, ++number);
        }
        if (file.rows.isEmpty()) {
            throw new StandardsException(path, number, "holds no rows");
        }
        return file;
    }

    private void read(String line, int number) {
        if (line.startsWith("#")) {
            int colon = line.indexOf(':');
            if (colon < 0) {
                throw new StandardsException(path, number, "a head line reads '# name: text'");
            }
            head.put(line.substring(1, colon).strip(), line.substring(colon + 1).strip());
        } else if (columns.isEmpty()) {
            columns.addAll(List.of(line.split(",", -1)));
        } else {
            rows.add(row(line.split(",", -1), number));
        }
    }

    private double[] row(String[] fields, int number) {
        if (fields.length != columns.size()) {
            throw new StandardsException(path, number, "holds " + fields.length + " fields where " + columns.size() + " are expected");
        }
        double[] row = new double[fields.length];
        for (int i = 0; i < fields.length; i++) {
            try {
                row[i] = Decimals.parse(fields[i]);
            } catch (IllegalArgumentException e) {
                throw new StandardsException(path, number, columns.get(i) + ": " + e.getMessage());
            }
        }
        return row;
    }

    /** Returns the text of a head line that must be there. */
    public String head(String name) {
        String text = head.get(name);
        if (text == null) {
            throw new StandardsException(path, 1, "the head line '# " + name + ": ...' is missing");
        }
        return text;
    }

    /** Returns the number of a head line that must be there. */
    public double number(String name) {
        try {
            return Decimals.parse(head(name));
        } catch (IllegalArgumentException e) {
            throw new StandardsException(path, 1, name + ": " + e.getMessage());
        }
    }

    /** Returns the names of the columns. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Returns the rows in the order of the columns, each its own copy. */
    public List<double[]> rows() {
        return rows.stream().map(double[]::clone).toList();
    }
}
