package slopewright.realdata;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.sqlite.SQLiteDataSource;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Verdict;
import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNames;
import slopewright.evaluation.site.SiteNumber;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.runways.OpenAirport;
import slopewright.exchange.runways.RunwayData;
import slopewright.exchange.runways.RunwayOffer;
import slopewright.siting.SitingException;

/**
 * Every runway end of the data set, as the reader of the product has it and as the SQLite driver has it: the same figures, each end
 * either taken or refused with a reason; and sites that are begun with them, of which no rule of design is ever met.
 */
class OpenRunwayDataTest {
    private static final double FOOT = 0.3048;
    private static final double RADIUS_M = 6_371_000;
    /** A sphere for the ellipsoid: two thirds of a percent are the most that it is out. */
    private static final double SPHERE = 0.007;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 1);
    private static final int EVERY = 97;

    private static Path file;
    private static RunwayData data;

    private final Map<String, Integer> counts = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();

    /** One end as the driver reads it. */
    private record Row(String code, String type, long runway, int lengthFt, int widthFt, String ident, double latitudeDeg,
            double longitudeDeg, Optional<Double> displacedFt, Optional<Double> elevationFt) {
    }

    @BeforeAll
    static void read() throws IOException, InterruptedException, ExchangeException {
        file = RunwayEndData.fetch();
        data = RunwayData.read(file);
    }

    private static List<Row> rows() throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:file:" + file + "?mode=ro&immutable=1");
        List<Row> rows = new ArrayList<>();
        try (Connection connection = source.getConnection(); Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select a.icao, a.type, r.id, r.length_ft, r.width_ft, e.ident, e.latitude_deg, "
                        + "e.longitude_deg, e.displaced_threshold_ft, e.elevation_ft from runway_ends e "
                        + "join runways r on r.id = e.runway_id"
                        + " join airports a on a.id = r.airport_id order by e.id")) {
            while (row.next()) {
                rows.add(new Row(row.getString(1), row.getString(2), row.getLong(3), row.getInt(4), row.getInt(5), row.getString(6),
                        row.getDouble(7), row.getDouble(8), number(row, 9), number(row, 10)));
            }
        }
        return rows;
    }

    private static Optional<Double> number(ResultSet row, int column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? Optional.empty() : Optional.of(value);
    }

    @Test
    void everyEndIsTakenAsItIsOrRefusedWithAReason() throws IOException, SQLException, ExchangeException {
        List<Row> rows = rows();
        for (Row row : rows) {
            OpenAirport airport = data.find(row.code()).orElseThrow();
            List<RunwayOffer> offers = data.offers(airport, "ODbL", DAY).stream().filter(found -> found.ident().equals(row.ident())
                    && found.runway().id().equals(String.valueOf(row.runway()))).toList();
            require(row, offers.size() == 1, offers.size() + " offers");
            RunwayOffer offer = offers.get(0);
            require(row, offer.refused().isPresent() != offer.known().isPresent(), "neither taken nor refused");
            counts.merge(offer.refused().map(reason -> reason.key()).orElse("taken"), 1, Integer::sum);
            offer.known().ifPresent(known -> compare(row, known));
        }
        String summary = rows.size() + " runway ends of open data: " + counts;
        Files.writeString(Path.of(System.getProperty("slopewright.root"), ".cache", "real-data", "open-data.txt"), summary + "\n");
        assertEquals(List.of(), faults.subList(0, Math.min(20, faults.size())), summary);
        assertTrue(rows.size() > 20_000 && counts.get("taken") > 0.9 * rows.size() - 1000, summary);
    }

    private void require(Row row, boolean holds, String fault) {
        if (!holds) {
            faults.add(row + ": " + fault);
        }
    }

    private void compare(Row row, KnownRunway known) {
        require(row, !row.type().equals("closed"), "closed, and taken");
        double displaced = row.displacedFt().orElse(0.0) * FOOT;
        double moved = distanceM(row.latitudeDeg(), row.longitudeDeg(), known.first().latitudeDeg(), known.first().longitudeDeg());
        require(row, Math.abs(moved - displaced) <= SPHERE * displaced + 0.05, "threshold " + moved + " m from the end");
        require(row, known.first().displacedM().orElse(0) == displaced, "displaced");
        double length = row.lengthFt() * FOOT;
        require(row, known.lengthM().isEmpty() ? length < 200 || length > 6000 : known.lengthM().getAsDouble() == length, "length");
        double width = row.widthFt() * FOOT;
        require(row, known.widthM().isEmpty() ? width < 10 || width > 100 : known.widthM().getAsDouble() == width, "width");
        Optional<Double> elevation = row.elevationFt().map(feet -> feet * FOOT);
        require(row, known.first().elevationM().isPresent() == elevation.isPresent(), "elevation");
        if (elevation.isPresent() && displaced == 0) {
            require(row, known.first().elevationM().getAsDouble() == elevation.get(), "elevation");
        }
        int named = Integer.parseInt(known.first().designator().substring(0, 2)) * 10;
        boolean far = Math.abs(known.first().latitudeDeg()) > 65;
        double apart = Math.abs((known.first().bearingDeg() - named + 540) % 360 - 180);
        require(row, far || apart < 125, "leads to " + known.first().bearingDeg());
    }

    private static double distanceM(double latitude, double longitude, double otherLatitude, double otherLongitude) {
        double north = Math.toRadians(otherLatitude - latitude);
        double east = Math.toRadians(otherLongitude - longitude) * Math.cos(Math.toRadians((latitude + otherLatitude) / 2));
        return RADIUS_M * Math.hypot(north, east);
    }

    /** Whatever is begun with open data, not one rule of design is met until somebody confirms them. */
    @Test
    void noRuleOfDesignIsMetOnOpenData() throws SQLException, ExchangeException {
        int begun = 0;
        int refused = 0;
        List<Row> rows = rows();
        for (int i = 0; i < rows.size(); i += EVERY) {
            Row row = rows.get(i);
            Optional<KnownRunway> known = data.offers(data.find(row.code()).orElseThrow(), "ODbL", DAY).stream()
                    .filter(offer -> offer.ident().equals(row.ident())).flatMap(offer -> offer.known().stream()).findFirst();
            if (known.isEmpty()) {
                continue;
            }
            NewSite site = new NewSite("icao:9th");
            site.start(known.get());
            if (site.number(SiteNumber.ELEVATION).isEmpty() || site.number(SiteNumber.LENGTH).isEmpty() || site.number(SiteNumber.WIDTH)
                    .isEmpty()) {
                continue;
            }
            try {
                CheckResult result = Checks.run(site.laidOut(SiteNames.english(site.runwayDesignator()), "four-unit-row"),
                        Optional.empty());
                begun++;
                result.outcomes().stream().filter(outcome -> outcome.verdict() == Verdict.MET && !outcome.isAboutData())
                        .forEach(outcome -> faults.add(row.code() + " " + row.ident() + ": " + outcome.rule() + " is met"));
                require(row, result.outcomes().stream().anyMatch(outcome -> outcome.rule().equals("DATA-64")
                        && outcome.verdict() == Verdict.TO_CLEAR_UP), "DATA-64");
            } catch (SitingException e) {
                refused++;
            }
        }
        assertEquals(List.of(), faults.subList(0, Math.min(20, faults.size())));
        assertTrue(begun > 150, begun + " begun, " + refused + " refused");
    }

    @Test
    void theLicenceOfTheDataSetIsFound() {
        assertTrue(data.licence().orElseThrow().contains("Open Database License"), data.licence().toString());
    }
}
