package slopewright.exchange.map;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.internal.sqlite.SqliteFile;

/** A GeoPackage as another implementation reads it: SQLite itself, by its driver, with its own check of every page. */
class GeoPackageTest {

    @TempDir
    private Path folder;

    private Connection open(byte[] bytes) throws IOException, SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:file:" + Files.write(folder.resolve("trial.gpkg"), bytes) + "?mode=ro&immutable=1");
        return source.getConnection();
    }

    private static List<String> column(Statement statement, String query) throws SQLException {
        List<String> values = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                values.add(rows.getString(1));
            }
        }
        return values;
    }

    private static MapDocument demo() {
        ProjectEvaluation evaluation = Demo.evaluate(Demo.project());
        return MapExport.of(evaluation, evaluation.aids(), 5000, Demo.ENGLISH);
    }

    /** OGC 12-128r19: the application id, the tables that have to be there, a layer a kind, and each row with its geometry. */
    @Test
    void theDemoIsALayerAKindWithHeightsAndStyles() throws Exception {
        MapDocument map = demo();
        byte[] bytes = GeoPackageFile.bytes(map);
        assertArrayEquals(bytes, GeoPackageFile.bytes(map));
        try (Connection connection = open(bytes); Statement statement = connection.createStatement()) {
            assertEquals(List.of("ok"), column(statement, "PRAGMA integrity_check"));
            assertEquals(List.of(), column(statement, "PRAGMA foreign_key_check"));
            assertEquals(List.of(String.valueOf(0x47504B47)), column(statement, "PRAGMA application_id"));
            Set<String> kinds = new TreeSet<>(map.features().stream().map(feature -> feature.kind().replace('-', '_')).toList());
            assertEquals(kinds, new TreeSet<>(column(statement, "SELECT table_name FROM gpkg_contents WHERE data_type = 'features'")));
            assertEquals(kinds, new TreeSet<>(column(statement, "SELECT f_table_name FROM layer_styles")));
            int rows = 0;
            for (String kind : kinds) {
                rows += column(statement, "SELECT fid FROM " + kind).size();
            }
            assertEquals(map.features().size(), rows);
            for (String style : column(statement, "SELECT styleSLD FROM layer_styles")) {
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(style.getBytes(
                        StandardCharsets.UTF_8)));
            }
            assertEquals(List.of("slopewright 0.1.0"), column(statement, "SELECT value FROM about WHERE name = 'program'"));
            assertTrue(column(statement, "SELECT value FROM about WHERE name = 'projectFileSha256'").get(0).matches("[0-9a-f]{64}.*"));
        }
    }

    /** The bytes of a point: the head of 8 bytes, then well-known binary of a point with height (type 1001), little-endian. */
    @Test
    void aUnitStandsWhereItsFeatureStands() throws Exception {
        MapDocument map = demo();
        try (Connection connection = open(GeoPackageFile.bytes(map)); Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT id, geom, settingDeg, frangible FROM unit")) {
            int found = 0;
            while (rows.next()) {
                String id = rows.getString(1);
                MapFeature unit = map.features().stream().filter(feature -> feature.id().equals(id)).findFirst().orElseThrow();
                ByteBuffer blob = ByteBuffer.wrap(rows.getBytes(2)).order(ByteOrder.LITTLE_ENDIAN);
                assertEquals("GP", new String(rows.getBytes(2), 0, 2, StandardCharsets.US_ASCII));
                assertEquals(List.of(4326, 1001), List.of(blob.getInt(4), blob.getInt(9)));
                MapPosition place = unit.positions().get(0);
                assertEquals(place.longitudeDeg(), blob.getDouble(13));
                assertEquals(place.latitudeDeg(), blob.getDouble(21));
                assertEquals(place.elevationM(), blob.getDouble(29));
                assertEquals(unit.properties().get("settingDeg"), rows.getDouble(3));
                assertEquals(unit.properties().get("frangible"), rows.getBoolean(4));
                found++;
            }
            assertEquals(map.features().stream().filter(feature -> feature.kind().equals("unit")).count(), found);
        }
    }

    /** Trees of two levels, records on many pages, ids and numbers of every length: all come back as they were. */
    @Test
    void aLargeTableIsReadBack() throws Exception {
        List<SqliteFile.Row> rows = new ArrayList<>();
        for (int i = 0; i < 6000; i++) {
            long id = i < 3 ? i - 5L : (long) i * i * i;
            String text = "x".repeat(i % 500 == 7 ? 20_000 : i % 97 * 5);
            rows.add(new SqliteFile.Row(id, Arrays.asList(null, text, i / 8.0, (long) Integer.MAX_VALUE * (i % 3 - 1) * 5, null)));
        }
        SqliteFile.Table table = new SqliteFile.Table("t", "CREATE TABLE t (id INTEGER PRIMARY KEY, a TEXT, b DOUBLE, c INTEGER, d TEXT)",
                rows, List.of());
        try (Connection connection = open(SqliteFile.write(List.of(table), 0, 0)); Statement statement = connection.createStatement()) {
            assertEquals(List.of("ok"), column(statement, "PRAGMA integrity_check"));
            try (ResultSet found = statement.executeQuery("SELECT id, a, b, c, d FROM t ORDER BY id")) {
                for (SqliteFile.Row row : rows) {
                    assertTrue(found.next());
                    assertEquals(row.id(), found.getLong(1));
                    assertEquals(row.values().get(1), found.getString(2));
                    assertEquals(row.values().get(2), found.getDouble(3));
                    assertEquals(row.values().get(3), found.getLong(4));
                    assertEquals(null, found.getString(5));
                }
            }
            try (ResultSet one = statement.executeQuery("SELECT c FROM t WHERE id = 27000")) {
                assertTrue(one.next(), "found by its key");
            }
        }
    }
}
