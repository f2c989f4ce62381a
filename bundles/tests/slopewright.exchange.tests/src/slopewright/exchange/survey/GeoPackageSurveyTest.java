package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.zip.GZIPInputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteDataSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyReading.Form;
import slopewright.model.Obstacle;
import slopewright.siting.site.SurveyPoints;

/** Obstacles in GeoPackages that GDAL wrote, see the note beside them, and in what SQLite itself made of one. */
class GeoPackageSurveyTest {

    private static final Path ROOT = Path.of(System.getProperty("slopewright.root"));
    private static final Path SURVEY = ROOT.resolve("demo-data/harrow-vale/survey");
    private static final Path OTHERS = ROOT.resolve("bundles/tests/slopewright.exchange.tests/src/others");
    private static final int BROKEN = 1500;
    private static final int SEED = 16;

    @TempDir
    private Path folder;

    private static SurveyOrigin origin(String grid) {
        return new SurveyOrigin("survey", Optional.of("2026-05-20"), Optional.ofNullable(grid), OptionalDouble.empty(),
                OptionalDouble.empty(), SurveyHeights.AS_STATED);
    }

    private Path unpacked(String name) throws IOException {
        try (InputStream in = new GZIPInputStream(Files.newInputStream(OTHERS.resolve(name + ".gz")))) {
            return Files.write(folder.resolve(name), in.readAllBytes());
        }
    }

    private static SurveyReading read(Path file, String grid, Form form) throws ExchangeException {
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin(grid), Optional.empty(), form);
        reading.refuseFaults(false);
        return reading;
    }

    private static String fault(Path file, String grid) {
        return assertThrows(ExchangeException.class, () -> read(file, grid, Form.OBSTACLES)).getMessage();
    }

    @Test
    void aGeoPackageHoldsWhatTheGeoJsonHeldOfWhichItWasMade() throws Exception {
        List<Obstacle> wanted = obstacles(SURVEY.resolve("obstacles.geojson"), null);
        assertTrue(wanted.size() >= 4);
        same(wanted, obstacles(unpacked("obstacles.gpkg"), null), 0);
    }

    /** Brought to a grid by GDAL and back by this program: places within a millimetre, which 1e-8 degrees are. */
    @Test
    void aLayerOfAGridIsBroughtBack() throws Exception {
        List<Obstacle> wanted = obstacles(SURVEY.resolve("obstacles.geojson"), null);
        same(wanted, obstacles(unpacked("obstacles-utm29.gpkg"), "EPSG:32629"), 1e-8);
    }

    private static List<Obstacle> obstacles(Path file, String grid) throws ExchangeException {
        return read(file, grid, Form.OBSTACLES).elements().stream().map(Obstacle.class::cast).toList();
    }

    private static void same(List<Obstacle> wanted, List<Obstacle> found, double toleranceDeg) {
        assertEquals(wanted.size(), found.size());
        for (int i = 0; i < wanted.size(); i++) {
            Obstacle one = wanted.get(i);
            Obstacle other = found.get(i);
            assertEquals(one.getId(), other.getId());
            assertEquals(one.getName(), other.getName());
            assertEquals(one.getKind(), other.getKind());
            assertEquals(one.getTopElevationM(), other.getTopElevationM());
            assertEquals(one.getHorizontalAccuracyM(), other.getHorizontalAccuracyM());
            assertEquals(one.getVerticalAccuracyM(), other.getVerticalAccuracyM());
            assertEquals(one.getPlaces().size(), other.getPlaces().size());
            for (int k = 0; k < one.getPlaces().size(); k++) {
                assertEquals(one.getPlaces().get(k).getLatitudeDeg(), other.getPlaces().get(k).getLatitudeDeg(), toleranceDeg);
                assertEquals(one.getPlaces().get(k).getLongitudeDeg(), other.getPlaces().get(k).getLongitudeDeg(), toleranceDeg);
            }
        }
    }

    /** 600 points on more than one page. */
    @Test
    void manyRowsBecomeABlock() throws Exception {
        SurveyPoints wanted = read(SURVEY.resolve("canopy-points.csv"), null, Form.BLOCK).points().orElseThrow();
        SurveyPoints found = read(unpacked("canopy.gpkg"), null, Form.BLOCK).points().orElseThrow();
        assertEquals(600, found.count());
        assertArrayEquals(wanted.north(), found.north());
        assertArrayEquals(wanted.east(), found.east());
        assertArrayEquals(wanted.elevationM(), found.elevationM());
        assertEquals(wanted.ids(), found.ids());
    }

    @Test
    void whatALayerSaysOfItsReferenceIsNotOverruled() throws Exception {
        assertTrue(fault(unpacked("obstacles-utm29.gpkg"), "EPSG:32630").contains("says that it is in EPSG:32629"));
        Path other = unpacked("obstacles-etrs.gpkg");
        try (Connection database = open(other, ""); Statement statement = database.createStatement()) {
            statement.execute("UPDATE gpkg_spatial_ref_sys SET organization_coordsys_id = 4267 WHERE organization_coordsys_id = 4258");
        }
        assertTrue(fault(other, null).contains("in EPSG:4267; bring it to WGS 84"));
    }

    /** What GDAL brought from WGS 84 to ETRS89, without moving it. */
    @Test
    void etrs89IsTakenAndSaid() throws Exception {
        SurveyReading reading = read(unpacked("obstacles-etrs.gpkg"), null, Form.OBSTACLES);
        assertEquals(List.of("longitude and latitude in ETRS89 (EPSG:4258) are taken as WGS 84, from which they differ by less than a "
                + "metre", Surveys.NO_DATUM), Surveys.english(reading.notes()));
        same(obstacles(SURVEY.resolve("obstacles.geojson"), null), reading.elements().stream().map(Obstacle.class::cast).toList(), 1e-8);
    }

    /** SQLite itself changes the file: small pages, a name that stands on pages of its own, rows that are gone, a column that was added. */
    @Test
    void whatSqliteMadeOfAGeoPackageIsRead() throws Exception {
        Path file = unpacked("obstacles.gpkg");
        String name = "x".repeat(9000) + "é";
        try (Connection database = open(file, ""); Statement statement = database.createStatement()) {
            statement.execute("DELETE FROM obstacles WHERE id = 'SV-101'");
            statement.execute("ALTER TABLE obstacles ADD COLUMN \"groundElevationM\" REAL");
            try (PreparedStatement update = database.prepareStatement("UPDATE obstacles SET name = ? WHERE id = 'SV-102'")) {
                update.setString(1, name);
                assertEquals(1, update.executeUpdate());
            }
            statement.execute("PRAGMA page_size = 512");
            statement.execute("VACUUM");
        }
        List<Obstacle> wanted = obstacles(SURVEY.resolve("obstacles.geojson"), null);
        List<Obstacle> found = obstacles(file, null);
        assertEquals(wanted.size() - 1, found.size());
        assertEquals("SV-102", found.get(0).getId());
        assertEquals(name, found.get(0).getName());
    }

    private static Connection open(Path file, String options) throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file + options);
        return source.getConnection();
    }

    /** EPSG:4979 and 4937 count heights from the ellipsoid, which lies 52 m below the sea at the demo. */
    @ParameterizedTest
    @ValueSource(ints = {4979, 4937})
    void heightsAboveTheEllipsoidAreNoElevations(int code) throws Exception {
        Path file = unpacked("obstacles.gpkg");
        try (Connection connection = open(file, ""); Statement statement = connection.createStatement()) {
            statement.execute("UPDATE gpkg_spatial_ref_sys SET organization_coordsys_id = " + code + " WHERE srs_id = 4326");
        }
        String fault = fault(file, null);
        assertTrue(fault.contains("EPSG:" + code) && fault.contains("Harrow Vale local mean sea level"), fault);
    }

    @Test
    void aLogBesideTheFileIsRefused() throws Exception {
        Path file = unpacked("obstacles.gpkg");
        Files.write(folder.resolve("obstacles.gpkg-wal"), new byte[] {1});
        assertTrue(fault(file, null).contains("holds changes that are not yet in the GeoPackage"));
    }

    @Test
    void aDatabaseThatKeepsALogIsRefused() throws Exception {
        Path file = unpacked("obstacles.gpkg");
        try (Connection database = open(file, ""); Statement statement = database.createStatement()) {
            statement.execute("PRAGMA journal_mode = wal");
        }
        assertFalse(Files.exists(folder.resolve("obstacles.gpkg-wal")), "none lies beside it by now");
        assertTrue(fault(file, null).contains("keeps what is new in a second file"), fault(file, null));
    }

    /** The same rows in a database whose texts are written in two bytes a sign. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-16le", "UTF-16be"})
    void textsOfTwoBytesASignAreRead(String encoding) throws Exception {
        Path file = unpacked("obstacles.gpkg");
        Path wide = folder.resolve("wide.gpkg");
        try (Connection from = open(file, ""); Connection to = open(wide, ""); Statement make = to.createStatement()) {
            make.execute("PRAGMA encoding = '" + encoding + "'");
            for (String table : List.of("gpkg_spatial_ref_sys", "gpkg_geometry_columns", "obstacles")) {
                copy(table, from, to);
            }
        }
        assertEquals(encoding.endsWith("le") ? 2 : 3, ByteBuffer.wrap(Files.readAllBytes(wide)).getInt(56), "as SQLite marks it");
        same(obstacles(SURVEY.resolve("obstacles.geojson"), null), obstacles(wide, null), 0);
    }

    private static void copy(String table, Connection from, Connection to) throws SQLException {
        try (Statement read = from.createStatement(); Statement make = to.createStatement()) {
            try (ResultSet made = read.executeQuery("SELECT sql FROM sqlite_master WHERE name = '" + table + "'")) {
                make.execute(made.getString(1));
            }
            try (ResultSet rows = read.executeQuery("SELECT * FROM " + table)) {
                int columns = rows.getMetaData().getColumnCount();
                String places = String.join(",", Collections.nCopies(columns, "?"));
                try (PreparedStatement insert = to.prepareStatement("INSERT INTO " + table + " VALUES (" + places + ")")) {
                    while (rows.next()) {
                        for (int i = 1; i <= columns; i++) {
                            insert.setObject(i, rows.getObject(i));
                        }
                        insert.executeUpdate();
                    }
                }
            }
        }
    }

    @Test
    void anyOtherDatabaseIsRefused() throws Exception {
        Path file = folder.resolve("other.gpkg");
        try (Connection database = open(file, ""); Statement statement = database.createStatement()) {
            statement.execute("CREATE TABLE a (b)");
        }
        assertTrue(fault(file, null).contains("no GeoPackage with features"));
        assertTrue(fault(Files.writeString(file, "SQLite format 2"), null).contains("no database of SQLite 3"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity"})
    void aPlaceThatIsNoNumberIsRefusedAloneAndNamed(String text) throws Exception {
        Path file = unpacked("obstacles.gpkg");
        ByteBuffer point = ByteBuffer.allocate(37).order(ByteOrder.LITTLE_ENDIAN);
        point.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) 1).putInt(4326).put((byte) 1).putInt(1001);
        point.putDouble(-11.9).putDouble(Double.parseDouble(text)).putDouble(100);
        try (Connection database = open(file, ""); Statement drop = database.createStatement()) {
            drop.execute("DROP TRIGGER IF EXISTS rtree_obstacles_geom_update1");
            try (PreparedStatement update = database.prepareStatement("UPDATE obstacles SET geom = ? WHERE id = 'SV-101'")) {
                update.setBytes(1, point.array());
                update.executeUpdate();
            }
        }
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin(null), Optional.empty(), Form.OBSTACLES);
        assertEquals(1, reading.refusedCount(), reading.refused().toString());
        assertTrue(reading.refused().get(0).english().contains("has a position at -11.9, " + text), reading.refused().toString());
        assertTrue(reading.ending().isEmpty());
        assertTrue(reading.count() > 0);
    }

    @Test
    void aGeoPackageCutOrChangedIsReadOrRefused() throws Exception {
        byte[] whole = Files.readAllBytes(unpacked("obstacles.gpkg"));
        Random random = new Random(SEED);
        for (int i = 0; i < BROKEN; i++) {
            byte[] changed = i % 3 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            for (int k = 0; k < 3 && changed.length > 0; k++) {
                int at = k == 0 ? random.nextInt(changed.length) : random.nextInt(changed.length) % 4096;
                changed[at % changed.length] = (byte) random.nextInt(256);
            }
            Path file = Files.write(folder.resolve("changed.gpkg"), changed);
            try {
                read(file, null, Form.OBSTACLES);
            } catch (ExchangeException e) {
                assertTrue(!e.getMessage().isBlank());
            }
        }
    }

    /** The root page of the table is made its own child: the walk ends. */
    @Test
    void aTreeThatLeadsBackToItselfIsRefused() throws Exception {
        byte[] whole = Files.readAllBytes(unpacked("canopy.gpkg"));
        int page = 4096;
        int changed = 0;
        for (int at = page; at < whole.length; at += page) {
            if (whole[at] == 5) {
                ByteBuffer.wrap(whole).putInt(at + 8, at / page + 1);
                changed++;
            }
        }
        assertTrue(changed > 0);
        String said = fault(Files.write(folder.resolve("round.gpkg"), whole), null);
        assertTrue(said.contains("names it twice"), said);
    }
}
