package slopewright.exchange.internal.runways;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.sqlite.SqliteReader;
import slopewright.exchange.runways.OpenAirport;
import slopewright.exchange.runways.OpenRunway;
import slopewright.messages.Message;

/** A database with tables of airports, runways and runway ends, feet and true degrees. */
public final class SqliteAirports implements AirportTables {
    private static final String AIRPORTS = "airports";
    private static final String RUNWAYS = "runways";
    private static final String ENDS = "runway_ends";
    /** The codes of an airport, that by which the table is led first. */
    private static final List<String> CODES = List.of("icao", "iata", "faa", "local");
    private static final int DAY_LETTERS = 10;

    private static final String CLOSED = "closed";

    private final SqliteReader database;
    private final List<Map<String, List<Entry>>> byCode = new ArrayList<>();
    private final Map<Object, List<OpenRunway>> runways = new HashMap<>();

    /** What is kept of a row of airports. */
    private record Entry(Object id, String code, String name, boolean isClosed, String day) {
    }

    /**
     * Looks whether a database holds what is asked for.
     *
     * @param file     its name, for messages
     * @param database the database
     * @throws ExchangeException where a table or a column is missing
     */
    public SqliteAirports(String file, SqliteReader database) throws ExchangeException {
        this.database = database;
        if (!database.holds(AIRPORTS, "id", "icao", "name", "type") || !database.holds(RUNWAYS, "id", "airport_id", "length_ft", "width_ft")
                || !database.holds(ENDS, "runway_id", "ident", "heading_degt", "latitude_deg", "longitude_deg", "displaced_threshold_ft",
                        "elevation_ft")) {
            throw new ExchangeException(file, 0, Message.of("survey-file.no-runway-tables"));
        }
    }

    @Override
    public List<OpenAirport> find(String code) throws ExchangeException {
        if (byCode.isEmpty()) {
            index();
        }
        List<OpenAirport> found = new ArrayList<>();
        for (Entry entry : byCode.stream().map(codes -> codes.getOrDefault(code, List.of())).filter(entries -> !entries.isEmpty())
                .findFirst().orElse(List.of())) {
            found.add(new OpenAirport(entry.code(), entry.name(), entry.isClosed(), entry.day(), runways.getOrDefault(entry.id(),
                    List.of())));
        }
        return found;
    }

    private void index() throws ExchangeException {
        List<Map<String, List<Entry>>> codes = CODES.stream().<Map<String, List<Entry>>>map(column -> new HashMap<>()).toList();
        database.rows(AIRPORTS, row -> {
            String day = text(AIRPORTS, row, "updated_at");
            Entry entry = new Entry(value(AIRPORTS, row, "id"), text(AIRPORTS, row, CODES.get(0)), text(AIRPORTS, row, "name"),
                    CLOSED.equals(text(AIRPORTS, row, "type")) || CLOSED.equals(text(AIRPORTS, row, "status")),
                    day.substring(0, Math.min(DAY_LETTERS, day.length())));
            for (int i = 0; i < CODES.size(); i++) {
                String code = text(AIRPORTS, row, CODES.get(i)).toUpperCase(Locale.ROOT);
                if (!code.isEmpty()) {
                    codes.get(i).computeIfAbsent(code, none -> new ArrayList<>()).add(entry);
                }
            }
        });
        Map<Object, List<OpenRunway.OpenEnd>> ends = new HashMap<>();
        database.rows(ENDS, row -> ends.computeIfAbsent(value(ENDS, row, "runway_id"), none -> new ArrayList<>())
                .add(new OpenRunway.OpenEnd(text(ENDS, row, "ident"), number(ENDS, row, "heading_degt"), number(ENDS, row, "latitude_deg"),
                        number(ENDS, row, "longitude_deg"), number(ENDS, row, "displaced_threshold_ft"),
                        number(ENDS, row, "elevation_ft"))));
        database.rows(RUNWAYS, row -> runways.computeIfAbsent(value(RUNWAYS, row, "airport_id"), none -> new ArrayList<>())
                .add(new OpenRunway(text(RUNWAYS, row, "id"), number(RUNWAYS, row, "length_ft"), number(RUNWAYS, row, "width_ft"),
                        Surfaces.word(text(RUNWAYS, row, "surface")), "1".equals(text(RUNWAYS, row, CLOSED)),
                        ends.getOrDefault(value(RUNWAYS, row, "id"), List.of()))));
        byCode.addAll(codes);
    }

    private Object value(String table, Object[] row, String column) {
        int at = database.column(table, column);
        return at < 0 ? null : row[at];
    }

    private String text(String table, Object[] row, String column) {
        Object value = value(table, row, column);
        return value == null ? "" : String.valueOf(value).strip();
    }

    private OptionalDouble number(String table, Object[] row, String column) {
        return value(table, row, column) instanceof Number number && Double.isFinite(number.doubleValue())
                ? OptionalDouble.of(number.doubleValue()) : OptionalDouble.empty();
    }
}
