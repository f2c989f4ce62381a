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
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;

/**
 * ESRI ASCII grid: elevations of the terrain in rows from north to south, each that of the middle of a cell. Between these places nothing
 * is known, so every point says how far the corners of its cell lie away. Cells of a tenth of a metre and more are metres east and north,
 * those of a hundredth of a degree and less are longitude and latitude; what lies between is refused, for it could be either. A grid with
 * cells that hold no elevation is refused too: what is not known must not look free.
 */
public final class AsciiGridSurvey implements SurveyFormat {

    private static final int MOST_CELLS = 10_000_000;
    private static final double GREATEST_DEG = 0.01;
    private static final double LEAST_M = 0.1;
    private static final double METRES_PER_DEGREE = 111_700;
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
        private long voids;

        private Grid(SurveyInput input, BufferedReader text) {
            this.input = input;
            this.text = text;
        }

        private void read() throws IOException, ExchangeException {
            readHead();
            int columns = count("ncols");
            int rows = count("nrows");
            if ((long) columns * rows > MOST_CELLS) {
                throw input.fault(1, "has " + (long) columns * rows + " cells, where at most " + MOST_CELLS + " are taken; cut it to what "
                        + "lies around the aerodrome");
            }
            double cell = need("cellsize");
            boolean degrees = cell > 0 && cell <= GREATEST_DEG;
            if (!degrees && !(cell >= LEAST_M)) {
                throw input.fault(1, "has cells of " + cell + ", which are neither metres nor degrees");
            }
            double west = middle("x", cell);
            double south = middle("y", cell);
            double noData = head.getOrDefault("nodata_value", USUAL_NO_DATA);
            double across = cell * (degrees ? METRES_PER_DEGREE : 1);
            Map<SurveyShape.Fact, String> facts = Map.of(SurveyShape.Fact.REACH, String.valueOf(Math.hypot(across, across) / 2));
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    double elevationM = next();
                    if (elevationM == noData) {
                        voids++;
                    } else {
                        input.emit(SurveyShape.Kind.POINT, !degrees,
                                List.of(new SurveyVertex(south + (rows - 1 - row) * cell, west + column * cell, elevationM)), facts, line);
                    }
                }
            }
            if (word() != null) {
                throw input.fault(line, "goes on after its " + rows + " rows of " + columns + " cells");
            }
            if (voids > 0) {
                throw input.fault(0, voids + " of its " + (long) columns * rows + " cells hold no elevation (" + noData
                        + "), and what is not known must not look free; cut the grid to what was measured, or fill it");
            }
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
                if (head.put(name, input.number(String.valueOf(value), name, line)) != null) {
                    throw input.fault(line, "gives " + name + " twice");
                }
            }
        }

        private double need(String name) throws ExchangeException {
            Double value = head.get(name);
            if (value == null) {
                throw input.fault(1, "gives no " + name + " in its first lines");
            }
            return value;
        }

        private int count(String name) throws ExchangeException {
            double value = need(name);
            if (!(value >= 1 && value <= MOST_CELLS && value == Math.rint(value))) {
                throw input.fault(1, name + " is " + value);
            }
            return (int) value;
        }

        /** Returns where the middle of the cell in the lower left corner lies. */
        private double middle(String axis, double cell) throws ExchangeException {
            boolean corner = head.containsKey(axis + "llcorner");
            if (corner == head.containsKey(axis + "llcenter")) {
                throw input.fault(1, "gives " + (corner ? "both " : "neither ") + axis + "llcorner " + (corner ? "and " : "nor ") + axis
                        + "llcenter");
            }
            return corner ? need(axis + "llcorner") + cell / 2 : need(axis + "llcenter");
        }

        private double next() throws IOException, ExchangeException {
            String word = word();
            if (word == null) {
                throw input.fault(line, "ends before its last row");
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
