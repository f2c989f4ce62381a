package slopewright.exchange.internal.survey;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/** ESRI ASCII grid: elevations of the terrain in rows from north to south, each that of the middle of a cell, see {@link GridCells}. */
public final class AsciiGridSurvey implements SurveyFormat {

    private static final double USUAL_NO_DATA = -9999;
    private static final Set<String> NAMES = Set.of("ncols", "nrows", "xllcorner", "xllcenter", "yllcorner", "yllcenter", "cellsize",
            "nodata_value");

    @Override
    public String name() {
        return "ESRI ASCII grid";
    }

    @Override
    public List<String> endings() {
        return List.of("asc");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        try (BufferedReader text = input.openText()) {
            new Grid(input, text).read();
        }
    }

    /** The grid of one file. */
    private static final class Grid {
        private final SurveyInput input;
        private final BufferedReader text;
        private final Map<String, Double> head = new HashMap<>();
        private final Deque<String> words = new ArrayDeque<>();
        private long line;

        private Grid(SurveyInput input, BufferedReader text) {
            this.input = input;
            this.text = text;
        }

        private void read() throws IOException, ExchangeException {
            readHead();
            int columns = count("ncols");
            int rows = count("nrows");
            double cell = need("cellsize");
            GridCells cells = new GridCells(input, new GridCells.Frame(columns, rows, middle("x", cell), middle("y", cell)
                    + (rows - 1) * cell, cell, cell));
            double noData = head.getOrDefault("nodata_value", USUAL_NO_DATA);
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    double elevationM = next();
                    if (elevationM == noData) {
                        cells.isVoid(row, column);
                    } else {
                        cells.take(row, column, elevationM, line);
                    }
                }
            }
            if (word() != null) {
                throw input.fault(line, Message.said("survey-file.grid-goes-on", rows, columns));
            }
            cells.end();
        }

        /** Reads names with their numbers up to the first word that is no name. */
        private void readHead() throws IOException, ExchangeException {
            for (String word = word(); word != null; word = word()) {
                String name = word.toLowerCase(Locale.ROOT);
                if (!NAMES.contains(name)) {
                    words.addFirst(word);
                    return;
                }
                String value = word();
                if (value == null) {
                    throw input.fault(line, Message.of("survey-file.grid-ends"));
                }
                if (head.put(name, input.number(value, name, line)) != null) {
                    throw input.fault(line, Message.said("survey-file.twice", name));
                }
            }
        }

        private double need(String name) throws ExchangeException {
            Double value = head.get(name);
            if (value == null) {
                throw input.fault(1, Message.said("survey-file.not-given", name));
            }
            return value;
        }

        private int count(String name) throws ExchangeException {
            double value = need(name);
            if (!(value >= 1 && value <= Integer.MAX_VALUE && value == Math.rint(value))) {
                throw input.fault(1, Message.said("survey-file.is", name, value));
            }
            return (int) value;
        }

        /** Returns where the middle of the cell in the lower left corner lies. */
        private double middle(String axis, double cell) throws ExchangeException {
            boolean corner = head.containsKey(axis + "llcorner");
            if (corner == head.containsKey(axis + "llcenter")) {
                throw input.fault(1, Message.said(corner ? "survey-file.grid-two-corners" : "survey-file.grid-no-corner", axis + "llcorner",
                        axis + "llcenter"));
            }
            return corner ? need(axis + "llcorner") + cell / 2 : need(axis + "llcenter");
        }

        private double next() throws IOException, ExchangeException {
            String word = word();
            if (word == null) {
                throw input.fault(line, Message.of("survey-file.grid-ends"));
            }
            return input.number(word, "elevation", line);
        }

        private String word() throws IOException {
            while (words.isEmpty()) {
                String next = text.readLine();
                if (next == null) {
                    return null;
                }
                line++;
                for (String word : next.strip().split("\\s+")) {
                    if (!word.isEmpty()) {
                        words.add(word);
                    }
                }
            }
            return words.poll();
        }
    }
}
