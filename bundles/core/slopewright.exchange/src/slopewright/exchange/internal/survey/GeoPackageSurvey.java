package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.sqlite.SqliteTables;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.messages.Message;

/**
 * Points, lines and areas of a GeoPackage (OGC 12-128r18), layer by layer, with what the columns say of each. Each layer is held against
 * the coordinate reference that it names itself. A log beside the file that was not written into it is refused, for it holds rows too.
 */
public final class GeoPackageSurvey implements SurveyFormat {

    private static final long MOST_BYTES = 1L << 28;
    private static final String REFERENCES = "gpkg_spatial_ref_sys";
    private static final String GEOMETRIES = "gpkg_geometry_columns";
    private static final List<String> LOGS = List.of("gpkg-wal", "gpkg-journal");

    @Override
    public String name() {
        return "GeoPackage";
    }

    @Override
    public List<String> endings() {
        return List.of("gpkg");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        if (input.size() > MOST_BYTES) {
            throw input.fault(0, Message.said("survey-file.larger", (MOST_BYTES >> 20)));
        }
        for (String log : LOGS) {
            Optional<SurveyInput> beside = input.besideIt(log);
            if (beside.isPresent() && beside.get().size() > 0) {
                throw beside.get().fault(0, Message.of("survey-file.wal"));
            }
        }
        byte[] bytes;
        try (InputStream in = input.openBytes()) {
            bytes = in.readAllBytes();
        }
        try {
            new Layers(input, SqliteTables.open(bytes)).read();
        } catch (SqliteTables.Fault e) {
            throw input.fault(0, e.reason());
        }
    }

    /** The layers of one file. */
    private static final class Layers {

        private final SurveyInput input;
        private final SqliteTables tables;
        private final Map<Long, Map<String, Object>> references = new HashMap<>();

        Layers(SurveyInput input, SqliteTables tables) {
            this.input = input;
            this.tables = tables;
        }

        private void read() throws ExchangeException, SqliteTables.Fault {
            if (!tables.has(REFERENCES) || !tables.has(GEOMETRIES)) {
                throw input.fault(0, Message.of("survey-file.no-geopackage"));
            }
            tables.<ExchangeException>read(REFERENCES, (id, row) -> references.put(number(row.get("srs_id")), row));
            List<Map<String, Object>> layers = new ArrayList<>();
            tables.<ExchangeException>read(GEOMETRIES, (id, row) -> layers.add(row));
            for (Map<String, Object> layer : layers) {
                layer(String.valueOf(layer.get("table_name")), String.valueOf(layer.get("column_name")), number(layer.get("srs_id")));
            }
        }

        private static Long number(Object value) {
            return value instanceof Long number ? number : Long.valueOf(0);
        }

        private void layer(String table, String column, Long reference) throws ExchangeException, SqliteTables.Fault {
            boolean grid = isGrid(table, reference);
            String geometry = column.toLowerCase(Locale.ROOT);
            tables.<ExchangeException>read(table, (id, row) -> {
                if (!input.isOwnFeature(String.valueOf(row.get("kind")))) {
                    feature(grid, row.get(geometry), facts(id, row), id, table);
                }
            });
        }

        /** Returns whether the positions of a layer are metres east and north instead of longitude and latitude. */
        private boolean isGrid(String table, Long reference) throws ExchangeException {
            Map<String, Object> row = references.getOrDefault(reference, Map.of());
            boolean known = "EPSG".equalsIgnoreCase(String.valueOf(row.get("organization")));
            long code = number(row.get("organization_coordsys_id"));
            if (known && Geographic.isTaken(code, input)) {
                return false;
            }
            if (reference == -1) {
                input.refersToNothing();
                return true;
            }
            WellKnownText text = new WellKnownText(String.valueOf(row.get("definition")));
            if (reference == 0 || row.isEmpty() || text.isGeographic()) {
                throw input.fault(0, Message.said("survey-file.layer-reference", table, known ? "EPSG:" + code
                        : Message.of("survey-file.no-named-reference")));
            }
            text.refuse(input);
            Optional<String> named = known ? Optional.of("EPSG:" + code) : text.reference();
            if (named.isPresent()) {
                input.refer(named.get());
            } else {
                input.refersToNothing();
            }
            return true;
        }

        private Map<SurveyShape.Fact, String> facts(long id, Map<String, Object> row) throws ExchangeException {
            Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
            for (Map.Entry<String, Object> value : row.entrySet()) {
                Optional<SurveyShape.Fact> fact = SurveyInput.fact(value.getKey());
                if (fact.isPresent() && !(value.getValue() instanceof byte[])) {
                    input.put(facts, fact.get(), String.valueOf(value.getValue()), id);
                }
            }
            return facts;
        }

        private void feature(boolean grid, Object geometry, Map<SurveyShape.Fact, String> facts, long id, String table)
                throws ExchangeException {
            if (!(geometry instanceof byte[] blob)) {
                input.skip(Message.of("survey-file.skip.placeless-features"));
                return;
            }
            try {
                List<WellKnownBinary.Part> parts = WellKnownBinary.ofGeoPackage(blob,
                        () -> input.skip(Message.of("survey-file.skip.polygon-holes")));
                if (parts.isEmpty()) {
                    input.skip(Message.of("survey-file.skip.placeless-features"));
                }
                for (int i = 0; i < parts.size(); i++) {
                    input.emit(parts.get(i).kind(), grid, parts.get(i).vertices(),
                            parts.size() == 1 ? facts : SurveyInput.numbered(facts, i + 1), id);
                }
            } catch (IllegalArgumentException e) {
                input.refuse(input.fault(id, Message.said("survey-file.of-layer", table, e)));
            }
        }
    }
}
