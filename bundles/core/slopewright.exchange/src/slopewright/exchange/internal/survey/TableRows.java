package slopewright.exchange.internal.survey;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * The rows of a table with a header: {@code latitudeDeg} and {@code longitudeDeg}, or {@code eastM} and {@code northM}, and the facts of a
 * shape. Rows that follow each other with the same id and {@code shape} {@code line} or {@code area} are one shape, each with the elevation
 * of its own position.
 */
final class TableRows {

    private static final List<String> GEODETIC = List.of("latitudedeg", "longitudedeg");
    private static final List<String> GRID = List.of("northm", "eastm");

    private final SurveyInput input;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<Integer, SurveyShape.Fact> factColumns = new LinkedHashMap<>();
    private final List<SurveyVertex> open = new ArrayList<>();
    private SurveyShape.Kind kind = SurveyShape.Kind.POINT;
    private Map<SurveyShape.Fact, String> facts = Map.of();
    private final Set<String> spoiled = new HashSet<>();
    private boolean faultBefore;
    private long firstLine;
    private int width;
    private boolean grid;

    TableRows(SurveyInput input) {
        this.input = input;
    }

    /** Returns whether a row is a header of places. */
    static boolean isHeader(SurveyInput input, List<String> fields) {
        List<String> keys = fields.stream().map(String::strip).map(input::column).toList();
        return keys.containsAll(GEODETIC) || keys.containsAll(GRID);
    }

    /** Takes the next row: the first is the header. */
    void take(List<String> fields, long line) throws ExchangeException {
        Row row = new Row(fields, line);
        if (width == 0) {
            header(row);
        } else {
            rowOrFault(row);
        }
    }

    /** Hands on the last shape. */
    void end() throws ExchangeException {
        if (width == 0) {
            throw input.fault(1, Message.of("survey-file.empty"));
        }
        finish();
    }

    private void header(Row row) throws ExchangeException {
        width = row.fields().size();
        List<String> names = row.fields().stream().map(String::strip).toList();
        Set<SurveyShape.Fact> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String key = input.column(names.get(i));
            if (key.isEmpty()) {
                input.skip(Message.said("survey-file.skip.column", names.get(i)));
                continue;
            }
            Optional<SurveyShape.Fact> fact = SurveyInput.fact(key);
            if (columns.putIfAbsent(key, i) != null || fact.isPresent() && !seen.add(fact.get())) {
                throw input.fault(1, Message.said("survey-file.same-column", names.get(i)));
            }
            if (fact.isPresent()) {
                factColumns.put(i, fact.get());
            } else if (!GEODETIC.contains(key) && !GRID.contains(key) && !"shape".equals(key)) {
                input.skip(Message.said("survey-file.skip.column", names.get(i)));
            }
        }
        grid = columns.keySet().containsAll(GRID);
        if (grid == columns.keySet().containsAll(GEODETIC)) {
            throw input.fault(1, Message.of("survey-file.place-columns"));
        }
    }

    /**
     * A row that is faulty is refused, and with it every line or area that it is or may be a row of: a part of one would stand where
     * the whole does not.
     */
    private void rowOrFault(Row row) throws ExchangeException {
        boolean wasFaulty = faultBefore;
        faultBefore = false;
        try {
            row(row, wasFaulty);
        } catch (ExchangeException e) {
            Optional<ExchangeException> withIt = columns.containsKey("shape") ? spoil(row) : Optional.empty();
            input.refuse(e);
            if (withIt.isPresent()) {
                input.refuse(withIt.get());
            }
        }
    }

    private Optional<ExchangeException> spoil(Row row) {
        Integer at = columns.get("id");
        String id = at != null && row.fields().size() == width ? row.fields().get(at).strip() : "";
        String openId = facts.getOrDefault(SurveyShape.Fact.ID, "");
        faultBefore = true;
        if (!id.isEmpty()) {
            spoiled.add(id);
        }
        if (!open.isEmpty() && kind != SurveyShape.Kind.POINT && (id.isEmpty() || id.equals(openId))) {
            open.clear();
            spoiled.add(openId);
            return Optional.of(input.fault(firstLine, Message.of("survey-file.left-out")));
        }
        return Optional.empty();
    }

    private void row(Row row, boolean afterFault) throws ExchangeException {
        long line = row.line();
        if (row.fields().size() != width) {
            throw input.fault(line, Message.said("survey-file.row-fields", row.fields().size(), width));
        }
        Map<SurveyShape.Fact, String> own = new EnumMap<>(SurveyShape.Fact.class);
        factColumns.forEach((column, fact) -> {
            String text = row.fields().get(column).strip();
            if (!text.isEmpty()) {
                own.put(fact, input.plain(fact, text));
            }
        });
        SurveyShape.Kind shape = shape(row, line);
        boolean goesOn = shape != SurveyShape.Kind.POINT && shape == kind && !open.isEmpty() && own.containsKey(SurveyShape.Fact.ID)
                && own.get(SurveyShape.Fact.ID).equals(facts.get(SurveyShape.Fact.ID));
        if (shape != SurveyShape.Kind.POINT && (spoiled.contains(own.getOrDefault(SurveyShape.Fact.ID, "")) || afterFault && !goesOn)) {
            throw input.fault(line, Message.of("survey-file.other-row"));
        }
        if (!goesOn) {
            finish();
            kind = shape;
            facts = own;
            firstLine = line;
        }
        double elevation = Double.NaN;
        if (shape != SurveyShape.Kind.POINT && own.containsKey(SurveyShape.Fact.ELEVATION)) {
            elevation = input.number(own.remove(SurveyShape.Fact.ELEVATION), "elevationM", line);
        }
        for (Map.Entry<SurveyShape.Fact, String> fact : own.entrySet()) {
            if (!fact.getValue().equals(facts.get(fact.getKey()))) {
                throw input.fault(line, Message.said("survey-file.rows-differ", fact.getValue(), firstLine,
                        facts.getOrDefault(fact.getKey(), "")));
            }
        }
        open.add(new SurveyVertex(number(row, grid ? "northM" : "latitudeDeg", line),
                number(row, grid ? "eastM" : "longitudeDeg", line), elevation));
    }

    private double number(Row row, String column, long line) throws ExchangeException {
        String text = row.fields().get(columns.get(column.toLowerCase(Locale.ROOT)));
        return input.number(input.plainPlace(text, grid), column, line);
    }

    private SurveyShape.Kind shape(Row row, long line) throws ExchangeException {
        String text = columns.containsKey("shape") ? row.fields().get(columns.get("shape")).strip() : "";
        return switch (text) {
            case "", "point" -> SurveyShape.Kind.POINT;
            case "line" -> SurveyShape.Kind.LINE;
            case "area" -> SurveyShape.Kind.AREA;
            default -> throw input.fault(line, Message.said("survey-file.no-shape", text));
        };
    }

    private void finish() throws ExchangeException {
        if (!open.isEmpty()) {
            List<SurveyVertex> whole = List.copyOf(open);
            open.clear();
            try {
                input.emit(kind, grid, whole, facts, firstLine);
            } catch (ExchangeException e) {
                input.refuse(e);
            }
        }
    }

    /** One row. */
    private record Row(List<String> fields, long line) {
    }
}
