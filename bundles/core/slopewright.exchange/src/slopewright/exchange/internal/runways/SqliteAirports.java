package slopewright.exchange.internal.runways;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.sqlite.SqliteTables;
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

    private final String file;
    private final SqliteTables database;
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
    public SqliteAirports(String file, SqliteTables database) throws ExchangeException {
        this.file = file;
        this.database = database;
        if (!holds(AIRPORTS, "id", "icao", "name", "type") || !holds(RUNWAYS, "id", "airport_id", "length_ft", "width_ft")
                || !holds(ENDS, "runway_id", "ident", "heading_degt", "latitude_deg", "longitude_deg", "displaced_threshold_ft",
                        "elevation_ft")) {
            throw new ExchangeException(file, 0, Message.of("survey-file.no-runway-tables"));
        }
    }

    private boolean holds(String table, String... columns) {
        return database.columns(table).containsAll(List.of(columns));
    }

    @Override
    public List<OpenAirport> find(String code) throws ExchangeException {
        if (byCode.isEmpty()) {
            try {
                index();
            } catch (SqliteTables.Fault e) {
                throw new ExchangeException(file, 0, e.reason());
            }
        }
        List<OpenAirport> found = new ArrayList<>();
        for (Entry entry : byCode.stream().map(codes -> codes.getOrDefault(code, List.of())).filter(entries -> !entries.isEmpty())
                .findFirst().orElse(List.of())) {
            found.add(new OpenAirport(entry.code(), entry.name(), entry.isClosed(), entry.day(), runways.getOrDefault(entry.id(),
                    List.of())));
        }
        return found;
    }

    private void index() throws SqliteTables.Fault {
        List<Map<String, List<Entry>>> codes = CODES.stream().<Map<String, List<Entry>>>map(column -> new HashMap<>()).toList();
        database.<SqliteTables.Fault>read(AIRPORTS, (id, row) -> {
            String day = text(row, "updated_at");
            Entry entry = new Entry(row.get("id"), text(row, CODES.get(0)), text(row, "name"),
                    CLOSED.equals(text(row, "type")) || CLOSED.equals(text(row, "status")),
                    day.substring(0, Math.min(DAY_LETTERS, day.length())));
            for (int i = 0; i < CODES.size(); i++) {
                String code = text(row, CODES.get(i)).toUpperCase(Locale.ROOT);
                if (!code.isEmpty()) {
                    codes.get(i).computeIfAbsent(code, none -> new ArrayList<>()).add(entry);
                }
            }
        });
        Map<Object, List<OpenRunway.OpenEnd>> ends = new HashMap<>();
        database.<SqliteTables.Fault>read(ENDS, (id, row) -> ends.computeIfAbsent(row.get("runway_id"), none -> new ArrayList<>())
                .add(new OpenRunway.OpenEnd(text(row, "ident"), number(row, "heading_degt"), number(row, "latitude_deg"),
                        number(row, "longitude_deg"), number(row, "displaced_threshold_ft"),
                        number(row, "elevation_ft"))));
        database.<SqliteTables.Fault>read(RUNWAYS, (id, row) -> runways.computeIfAbsent(row.get("airport_id"), none -> new ArrayList<>())
                .add(new OpenRunway(text(row, "id"), number(row, "length_ft"), number(row, "width_ft"),
                        Surfaces.word(text(row, "surface")), "1".equals(text(row, CLOSED)),
                        ends.getOrDefault(row.get("id"), List.of()))));
        byCode.addAll(codes);
    }

    private static String text(Map<String, Object> row, String column) {
        return row.containsKey(column) ? String.valueOf(row.get(column)).strip() : "";
    }

    private static OptionalDouble number(Map<String, Object> row, String column) {
        return row.get(column) instanceof Number number && Double.isFinite(number.doubleValue()) ? OptionalDouble.of(number.doubleValue())
                : OptionalDouble.empty();
    }
}
