package slopewright.exchange.runways;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.GZIPInputStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteDataSource;

import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNames;
import slopewright.exchange.ExchangeException;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/**
 * Invented airports with everything that open data hold and lack, in a database that the SQLite driver writes. On the equator a degree of
 * longitude is 111,319.491 m (WGS 84, 6378137 m times pi over 180), so a runway along it leads to 90 and 270 degrees true.
 */
class RunwayDataTest {
    private static final double DEGREE_M = 6_378_137 * Math.PI / 180;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);
    private static final String HEADER = "id,airport_ref,airport_ident,length_ft,width_ft,surface,lighted,closed,"
            + "le_ident,le_latitude_deg,le_longitude_deg,le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,"
            + "he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,he_heading_degT,he_displaced_threshold_ft\n";

    @TempDir
    private Path folder;
    private Path database;

    @BeforeEach
    void write() throws SQLException {
        write("runways.sqlite", "UTF-8");
    }

    private static Connection open(Path file) throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + file);
        return source.getConnection();
    }

    private void write(String name, String encoding) throws SQLException {
        database = folder.resolve(name);
        try (Connection connection = open(database); Statement statement = connection.createStatement()) {
            statement.executeUpdate("PRAGMA encoding = '" + encoding + "'");
            statement.executeUpdate("CREATE TABLE airports (id INTEGER PRIMARY KEY, icao TEXT NOT NULL UNIQUE, iata TEXT, faa TEXT, "
                    + "local TEXT, name TEXT NOT NULL, type TEXT NOT NULL, updated_at DATETIME, CHECK (length(name) > 0))");
            statement.executeUpdate("CREATE TABLE runways (id INTEGER PRIMARY KEY, airport_id INTEGER NOT NULL, length_ft INTEGER, "
                    + "width_ft INTEGER, surface TEXT, FOREIGN KEY (airport_id) REFERENCES airports(id))");
            statement.executeUpdate("CREATE TABLE runway_ends (id INTEGER PRIMARY KEY, runway_id INTEGER NOT NULL, ident TEXT NOT NULL, "
                    + "heading_degT REAL, latitude_deg REAL, longitude_deg REAL, displaced_threshold_ft INTEGER, elevation_ft INTEGER)");
            String longName = "Zett".repeat(3000);
            airport(statement, 1, "ZZAA", "ZZA", "Alder", "small_airport");
            airport(statement, 2, "ZZBB", "ZZX", "Birch", "closed");
            airport(statement, 3, "ZZCC", "ZZX", longName, "small_airport");
            airport(statement, 4, "ZZDD", "ZZY", "Dogwood", "small_airport");
            airport(statement, 5, "ZZEE", "ZZY", "Elder", "small_airport");
            // 0.01 degrees of the equator: 1113.195 m, 3652.2 ft
            runway(statement, 10, 1, 3652, 100, "asphalt", "09", 90.0, 0, 10, "500", "100", "27", 270.0, 0, 10.01, "null", "200");
            runway(statement, 20, 2, 3652, 100, "grass", "09", 90.0, 0, 0, "null", "100", "27", 270.0, 0, 0.01, "null", "200");
            runway(statement, 30, 3, 3652, 0, "unknown", "9", 181.0, 1, 0, "null", "null", "27", 270.0, 1, 0.01, "null", "200");
            runway(statement, 40, 4, 3652, 100, "water", "09", 90.0, 0, 0, "null", "100", "27", 270.0, 0, 0.01, "null", "200");
            runway(statement, 41, 4, 3652, 100, "gravel", "27L", 90.0, 2, 0, "null", "100", "09R", 270.0, 2, 0.01, "null", "200");
            runway(statement, 42, 4, 3652, 100, "gravel", "H1", 90.0, 3, 0, "null", "100", "09C", 270.0, 3, 0, "null", "200");
            runway(statement, 43, 4, 3652, 100, "gravel", "18", 180.0, 4, 0, "4000", "100", "36", 0.0, 3.99, 0, "null", "200");
        }
    }

    private static void airport(Statement statement, int id, String icao, String iata, String name, String type) throws SQLException {
        statement.executeUpdate(String.format("INSERT INTO airports VALUES (%d, '%s', '%s', NULL, NULL, '%s', '%s', "
                + "'2026-02-16 17:16:16')", id, icao, iata, name, type));
    }

    private static void runway(Statement statement, int id, int airport, int lengthFt, int widthFt, String surface, Object... ends)
            throws SQLException {
        statement.executeUpdate(String.format("INSERT INTO runways VALUES (%d, %d, %d, %d, '%s')", id, airport, lengthFt, widthFt,
                surface));
        for (int end = 0; end < 2; end++) {
            int at = end * 6;
            statement.executeUpdate(String.format("INSERT INTO runway_ends VALUES (%d, %d, '%s', %s, %s, %s, %s, %s)", id * 10 + end, id,
                    ends[at], ends[at + 1], ends[at + 2], ends[at + 3], ends[at + 4], ends[at + 5]));
        }
    }

    private RunwayOffer offer(String code, String end) throws IOException, ExchangeException {
        RunwayData data = RunwayData.read(database);
        return data.offers(data.find(code).orElseThrow(), "a licence", DAY).stream().filter(found -> found.ident().equals(end))
                .findFirst().orElseThrow();
    }

    private static List<String> keys(KnownRunway known) {
        return known.notes().stream().map(note -> note.key().substring("open-data.note.".length())).toList();
    }

    /** 500 ft are 152.4 m: the threshold lies so far to the east, and its elevation that much of the length up a slope of 100 ft. */
    @Test
    void feetAreMetresAndADisplacedThresholdLiesUpTheRunway() throws IOException, ExchangeException {
        KnownRunway known = offer("zzaa", "09").known().orElseThrow();
        KnownRunway.End first = known.first();
        assertEquals(3652 * 0.3048, known.lengthM().getAsDouble(), 1e-9);
        assertEquals(30.48, known.widthM().getAsDouble(), 1e-9);
        assertEquals(10 + 152.4 / DEGREE_M, first.longitudeDeg(), 1e-9);
        assertEquals(0, first.latitudeDeg(), 1e-9);
        assertEquals(90, first.bearingDeg(), 1e-9);
        assertEquals(152.4, first.displacedM().getAsDouble(), 1e-9);
        assertEquals(30.48, first.extremityElevationM().getAsDouble(), 1e-9);
        assertEquals((100 + 100 * 500.0 / 3652) * 0.3048, first.elevationM().getAsDouble(), 1e-9);
        KnownRunway.End other = known.other().orElseThrow();
        assertEquals(List.of("27", 10.01, 270.0), List.of(other.designator(), other.longitudeDeg(), other.bearingDeg()));
        assertEquals(60.96, other.elevationM().getAsDouble(), 1e-9);
        assertTrue(other.displacedM().isEmpty(), "the data say nothing of it");
        assertEquals(List.of("displaced-between", "no-displacement"), keys(known));
        assertEquals(Optional.of(true), known.isPaved());
        assertTrue(known.source().matches("runways\\.sqlite, ZZAA, 2026-02-16, SHA-256 [0-9a-f]{16}"), known.source());
    }

    /** An end that the data lead the other way, an end without elevation, a designator of one digit and a width of nothing. */
    @Test
    void whatIsWrongIsSaidAndWhatIsMissingStaysMissing() throws IOException, ExchangeException {
        KnownRunway known = offer("ZZCC", "9").known().orElseThrow();
        assertEquals("09", known.first().designator());
        assertTrue(known.first().elevationM().isEmpty() && known.widthM().isEmpty() && known.isPaved().isEmpty());
        assertEquals(List.of("written-out", "heading", "out-of-range", "no-elevation", "no-displacement", "no-displacement"), keys(known));
        assertEquals(12_000, known.airport().length());
        NewSite site = new NewSite("icao:9th");
        site.start(known);
        Project project = site.project(SiteNames.english("09/27"));
        RunwayEnd end = project.getAerodrome().getRunways().get(0).getEnds().get(0);
        assertEquals(null, end.getThresholdElevationM());
        assertEquals(null, project.getAerodrome().getRunways().get(0).getWidthM());
    }

    @ParameterizedTest
    @CsvSource({"ZZBB, 09, airport-closed", "ZZDD, 09, water", "ZZDD, 27L, other-way", "ZZDD, 09R, other-way", "ZZDD, H1, designator",
            "ZZDD, 09C, same-place", "ZZDD, 18, displaced"})
    void whatCannotBeTakenIsRefusedWithItsReason(String code, String end, String reason) throws IOException, ExchangeException {
        RunwayOffer offer = offer(code, end);
        assertEquals("open-data.refused." + reason, offer.refused().orElseThrow().key());
        assertTrue(offer.known().isEmpty());
    }

    @Test
    void aCodeIsThatByWhichTheTableIsLedElseAnotherOneOfOneAirport() throws IOException, ExchangeException {
        RunwayData data = RunwayData.read(database);
        assertEquals("ZZAA", data.find(" zza ").orElseThrow().code());
        assertEquals(Optional.empty(), data.find("ZZZZ"));
        assertEquals(Optional.empty(), data.find(" "));
        String message = assertThrows(ExchangeException.class, () -> data.find("ZZY")).getMessage();
        assertTrue(message.contains("ZZDD Dogwood, ZZEE Elder"), message);
    }

    @Test
    void theLicenceIsThatWhichLiesBesideTheData() throws IOException, ExchangeException {
        assertEquals(Optional.empty(), RunwayData.read(database).licence());
        Files.writeString(folder.resolve("LICENSE"), "\n  Some Licence 1.0 \nmore");
        assertEquals(Optional.of("Some Licence 1.0"), RunwayData.read(database).licence());
    }

    /** The project says where its runway comes from; the second end stands where the data have it, not where the length leads. */
    @Test
    void aSiteKeepsBothPlacesAndTheSource() throws IOException, ExchangeException {
        NewSite site = new NewSite("icao:9th");
        site.start(offer("ZZAA", "09").known().orElseThrow());
        Project project = site.laidOut(SiteNames.english("09/27"), "four-unit-row");
        Runway runway = project.getAerodrome().getRunways().get(0);
        assertEquals(List.of("09/27", "a licence", "asphalt", 2), List.of(runway.getDesignator(), runway.getOpenDataLicence(),
                runway.getSurface(), runway.getCodeNumber()));
        assertTrue(runway.getOpenDataSource().startsWith("runways.sqlite, ZZAA"), runway.getOpenDataSource());
        assertEquals(10.01, runway.getEnds().get(1).getThreshold().getLongitudeDeg());
        assertEquals(152.4, runway.getEnds().get(0).getDisplacedThresholdM(), 1e-9);
        assertEquals("ZZAA", project.getAerodrome().getIdentifier());
        site.setHelipad(true);
        assertTrue(site.known().isEmpty(), "a helipad is of no runway data");
    }

    /** One runway twice, a closed one, and an end without a place, as comma-separated values. */
    @Test
    void aTableOfCommaSeparatedValuesIsReadAsWell() throws IOException, ExchangeException {
        database = folder.resolve("runways.csv");
        Files.writeString(database, HEADER + "1,1,ZZAA,3652,100,ASP,1,0,09,0,0,100,90,,27,0,0.01,200,270,\n"
                + "2,1,ZZAA,3652,100,ASP,1,1,09L,1,0,100,90,,27R,1,0.01,200,270,\n"
                + "3,1,ZZAA,3652,100,GRS,1,0,18,,,100,180,,36,,,200,0,\n"
                + "4,1,ZZAA,3652,100,GRS,1,0,27,5,0,100,90,,09,5,0.01,200,270,\n"
                + "5,1,ZZAA,3652,100,GRS,1,0,05,7,0,100,50,,23,,,,,\n");
        assertEquals("open-data.refused.twice", offer("ZZAA", "09").refused().orElseThrow().key());
        assertEquals("open-data.refused.closed", offer("ZZAA", "09L").refused().orElseThrow().key());
        assertEquals("open-data.refused.place", offer("ZZAA", "18").refused().orElseThrow().key());
        KnownRunway alone = offer("ZZAA", "05").known().orElseThrow();
        assertEquals(50, alone.first().bearingDeg());
        assertTrue(alone.other().isEmpty() && keys(alone).containsAll(List.of("heading-alone", "no-other-end")));
        Files.writeString(database, "a,b\n1,2\n");
        assertThrows(ExchangeException.class, () -> RunwayData.read(database).find("ZZAA"));
        Files.writeString(database, HEADER + "1,1,ZZAA,x,100,ASP,1,0,09,0,0,100,90,,27,0,0.01,200,270,\n");
        String message = assertThrows(ExchangeException.class, () -> RunwayData.read(database).find("ZZAA")).getMessage();
        assertTrue(message.contains(":2: length_ft is no number: x"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16le", "UTF-16be"})
    void textsOfTwoBytesASignAreRead(String encoding) throws Exception {
        write(encoding + ".sqlite", encoding);
        KnownRunway known = offer("ZZCC", "9").known().orElseThrow();
        assertEquals("Zett".repeat(3000), known.airport());
        assertEquals(30.48, offer("zzaa", "09").known().orElseThrow().widthM().getAsDouble(), 1e-9);
    }

    /** A remark in the statement, and a key that is said for the whole table: SQLite keeps no value in its column. */
    @Test
    void columnsAreToldFromAnyStatementThatMadeThem() throws Exception {
        try (Connection connection = open(database); Statement statement = connection.createStatement()) {
            statement.executeUpdate("ALTER TABLE airports RENAME TO old");
            statement.executeUpdate("CREATE TABLE airports (note TEXT DEFAULT '-- a, b)', -- a remark, with (a bracket\n icao TEXT, "
                    + "/* iata, faa */ name TEXT, type TEXT, id INTEGER NOT NULL, PRIMARY KEY (\"id\"))");
            statement.executeUpdate("INSERT INTO airports (id, icao, name, type) SELECT id, icao, name, type FROM old");
        }
        assertEquals(3652 * 0.3048, offer("ZZAA", "09").known().orElseThrow().lengthM().getAsDouble(), 1e-9);
    }

    /** SQLite leaves the mark of a log in the file; what the log holds is not in the file, and rows that are not there say nothing. */
    @Test
    void aDatabaseWithALogIsRefused() throws Exception {
        Path journal = Files.write(folder.resolve("runways.sqlite-journal"), new byte[] {1});
        assertTrue(refused().contains("keeps what is new in a second file"), refused());
        Files.write(journal, new byte[0]);
        assertEquals("ZZAA", RunwayData.read(database).find("ZZAA").orElseThrow().code());
        try (Connection connection = open(database); Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = wal");
        }
        assertTrue(refused().contains("keeps what is new in a second file"), refused());
    }

    private String refused() {
        return assertThrows(ExchangeException.class, () -> RunwayData.read(database)).getMessage();
    }

    /** A database that another program wrote, with pages enough to have inner ones: the second airport is led by its row in the middle. */
    @Test
    void aDatabaseOfAnotherProgramIsRead() throws IOException, ExchangeException {
        Path packed = Path.of(System.getProperty("slopewright.root"), "bundles", "tests", "slopewright.exchange.tests", "src",
                "others", "runways.sqlite.gz");
        try (InputStream in = new GZIPInputStream(Files.newInputStream(packed))) {
            Files.write(database, in.readAllBytes());
        }
        KnownRunway known = offer("ZZAF", "09").known().orElseThrow();
        assertEquals(-12, known.first().latitudeDeg(), 1e-6);
        assertEquals(152.4, known.first().displacedM().getAsDouble(), 1e-9);
        assertEquals(3652 * 0.3048, known.lengthM().getAsDouble(), 1e-9);
        RunwayData data = RunwayData.read(database);
        assertEquals("Invented field 60", data.find("ZZCH").orElseThrow().name());
        assertEquals("ZZAC", data.find("Z03").orElseThrow().code());
        assertEquals(Optional.empty(), data.find("ZZCI"));
    }

    /** A broken database is one sentence, whatever is broken in it, and never ends the program. */
    @Test
    void aBrokenDatabaseIsRefused() throws IOException {
        byte[] sound = Files.readAllBytes(database);
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            byte[] broken = sound.clone();
            for (int hit = 0; hit < 1 + random.nextInt(20); hit++) {
                broken[random.nextInt(i % 2 == 0 ? 4096 : broken.length)] = (byte) random.nextInt();
            }
            Path file = folder.resolve("broken.sqlite");
            Files.write(file, i % 5 == 0 ? Arrays.copyOf(broken, random.nextInt(broken.length)) : broken);
            try {
                RunwayData data = RunwayData.read(file);
                for (String code : List.of("ZZAA", "ZZCC", "ZZDD")) {
                    Optional<OpenAirport> found = data.find(code);
                    found.ifPresent(airport -> data.offers(airport, "a licence", DAY));
                }
            } catch (ExchangeException e) {
                assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
            }
        }
    }
}
