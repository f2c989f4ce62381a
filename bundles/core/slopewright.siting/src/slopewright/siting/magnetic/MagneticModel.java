package slopewright.siting.magnetic;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.SitingException;
import slopewright.siting.internal.DataFile;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.Provenance;
import slopewright.standards.Source;
import slopewright.standards.StandardsException;

/**
 * A spherical harmonic model of the Earth's main field on the WGS 84 ellipsoid: Gauss coefficients at an epoch and their change in a
 * year. The coefficients, the epoch and the time for which they hold are data; a date outside that time is refused. Immutable.
 */
public final class MagneticModel {

    private static final String FILE = "/data/wmm/wmm-2025.csv";
    private static final List<String> COLUMNS = List.of("n", "m", "g", "h", "gDot", "hDot");
    private static final MagneticModel BUNDLED = of(DataFile.bundled(FILE), FILE);

    /** Semi-axes of the WGS 84 ellipsoid, kilometres, as the model defines them. */
    private static final double MAJOR_KM = 6378.137;
    private static final double MINOR_KM = 6356.7523142;

    /** Nearer to a pole than this the direction of true north is not worth a number. */
    private static final double POLE_LIMIT_DEG = 89.999;
    /** Horizontal fields that the model's makers call unreliable and doubtful for a compass, nanotesla; from memory. */
    private static final double UNRELIABLE_NT = 2000;
    private static final double DOUBTFUL_NT = 6000;
    private static final double M_PER_KM = 1000;

    private final String name;
    private final double epoch;
    private final double validFrom;
    private final double validTo;
    private final double referenceKm;
    private final int degree;
    private final double[][] g;
    private final double[][] h;
    private final double[][] gDot;
    private final double[][] hDot;
    private final Citation citation;

    private MagneticModel(DataFile file, String path) {
        name = file.head("name");
        epoch = file.number("epoch");
        validFrom = file.number("valid from");
        validTo = file.number("valid to");
        referenceKm = file.number("reference radius km");
        if (!file.columns().equals(COLUMNS)) {
            throw new StandardsException(path, 0, "expected the columns " + String.join(",", COLUMNS));
        }
        degree = (int) file.rows().stream().mapToDouble(row -> row[0]).max().orElseThrow();
        g = new double[degree + 1][degree + 1];
        h = new double[degree + 1][degree + 1];
        gDot = new double[degree + 1][degree + 1];
        hDot = new double[degree + 1][degree + 1];
        fill(file, path);
        citation = new Citation("magnetic.model", new Source("wmm", CitedText.of(file.head("title")), CitedText.of(file.head("epoch"))),
                CitedText.of(file.head("source")), Provenance.of(file.head("provenance")), CitedText.of(file.head("note")), "");
    }

    private void fill(DataFile file, String path) {
        boolean[][] seen = new boolean[degree + 1][degree + 1];
        for (double[] row : file.rows()) {
            int n = (int) row[0];
            int m = (int) row[1];
            if (n != row[0] || m != row[1] || n < 1 || m < 0 || m > n || seen[n][m]) {
                throw new StandardsException(path, 0, "holds a wrong or second row for degree " + row[0] + " and order " + row[1]);
            }
            seen[n][m] = true;
            g[n][m] = row[2];
            h[n][m] = row[3];
            gDot[n][m] = row[4];
            hDot[n][m] = row[5];
        }
        if (file.rows().size() != degree * (degree + 3) / 2) {
            throw new StandardsException(path, 0, "does not hold every coefficient up to degree " + degree);
        }
    }

    /** Returns the model that comes with the product. */
    public static MagneticModel bundled() {
        return BUNDLED;
    }

    static MagneticModel of(DataFile file, String path) {
        return new MagneticModel(file, path);
    }

    /** Returns the name of the model. */
    public String name() {
        return name;
    }

    /** Returns its epoch, a decimal year. */
    public double epoch() {
        return epoch;
    }

    /** Returns the decimal year from which it holds. */
    public double validFrom() {
        return validFrom;
    }

    /** Returns the decimal year before which it holds. */
    public double validTo() {
        return validTo;
    }

    /** Returns where the coefficients come from. */
    public Citation citation() {
        return citation;
    }

    /** Returns a day at its start as a decimal year: the days that passed over the days of that year. */
    public static double decimalYear(LocalDate date) {
        return date.getYear() + (date.getDayOfYear() - 1.0) / date.lengthOfYear();
    }

    /** Returns whether the model holds on a day. */
    public boolean isValid(LocalDate date) {
        double year = decimalYear(date);
        return year >= validFrom && year < validTo;
    }

    /**
     * Returns the magnetic variation at a place on a day.
     *
     * @param latitudeDeg           geodetic latitude, decimal degrees, north positive
     * @param longitudeDeg          longitude, decimal degrees, east positive
     * @param heightAboveEllipsoidM height above the WGS 84 ellipsoid, metres
     * @param date                  the day
     * @return the variation with model and epoch
     * @throws SitingException where the date is outside the model's time, or the place is no place or a pole; the message says which
     */
    public Declination declination(double latitudeDeg, double longitudeDeg, double heightAboveEllipsoidM, LocalDate date) {
        if (!isValid(date)) {
            throw new SitingException(Message.of("variation.outside-model", Words.name(name), Words.quantity(validFrom, Notation.YEAR),
                    Words.quantity(validTo, Notation.YEAR), Words.name(date.toString())));
        }
        double year = decimalYear(date);
        MagneticField field = field(latitudeDeg, longitudeDeg, heightAboveEllipsoidM, year);
        MagneticField change = change(latitudeDeg, longitudeDeg, heightAboveEllipsoidM);
        double square = field.horizontalNt() * field.horizontalNt();
        double annual = Math.toDegrees((field.northNt() * change.eastNt() - field.eastNt() * change.northNt()) / square);
        List<Message> notes = new ArrayList<>();
        if (field.horizontalNt() < DOUBTFUL_NT) {
            notes.add(Message.of(field.horizontalNt() < UNRELIABLE_NT ? "variation.compass-unreliable" : "variation.compass-doubtful",
                    Words.count(Math.round(field.horizontalNt())), Words.count(Math.round(UNRELIABLE_NT)),
                    Words.count(Math.round(DOUBTFUL_NT))));
        }
        return new Declination(field.declinationDeg(), annual, name, epoch, year, notes, citation);
    }

    /**
     * Returns the field at a place and time.
     *
     * @param latitudeDeg           geodetic latitude, decimal degrees, north positive
     * @param longitudeDeg          longitude, decimal degrees, east positive
     * @param heightAboveEllipsoidM height above the WGS 84 ellipsoid, metres
     * @param decimalYear           the time
     * @return the field
     * @throws SitingException where the place is no place or a pole
     */
    public MagneticField field(double latitudeDeg, double longitudeDeg, double heightAboveEllipsoidM, double decimalYear) {
        return sum(latitudeDeg, longitudeDeg, heightAboveEllipsoidM, 1, decimalYear - epoch);
    }

    /** Returns the change of the field in a year. */
    private MagneticField change(double latitudeDeg, double longitudeDeg, double heightM) {
        return sum(latitudeDeg, longitudeDeg, heightM, 0, 1);
    }

    private MagneticField sum(double latitudeDeg, double longitudeDeg, double heightM, double weight, double years) {
        if (!(Math.abs(latitudeDeg) < POLE_LIMIT_DEG) || !(Math.abs(longitudeDeg) <= 360) || !Double.isFinite(heightM)) {
            throw new SitingException(Message.of("variation.no-place"));
        }
        double sin = Math.sin(Math.toRadians(latitudeDeg));
        double cos = Math.cos(Math.toRadians(latitudeDeg));
        double eccentricity = 1 - MINOR_KM * MINOR_KM / (MAJOR_KM * MAJOR_KM);
        double normal = MAJOR_KM / Math.sqrt(1 - eccentricity * sin * sin);
        double axial = (normal * (1 - eccentricity) + heightM / M_PER_KM) * sin;
        double radial = (normal + heightM / M_PER_KM) * cos;
        double radius = Math.hypot(axial, radial);
        MagneticField spherical = spherical(Math.atan2(axial, radial), Math.toRadians(longitudeDeg), radius, weight, years);
        double turn = Math.atan2(axial, radial) - Math.toRadians(latitudeDeg);
        return new MagneticField(spherical.northNt() * Math.cos(turn) - spherical.downNt() * Math.sin(turn), spherical.eastNt(),
                spherical.northNt() * Math.sin(turn) + spherical.downNt() * Math.cos(turn));
    }

    /** Sums the harmonics at a geocentric latitude: north, east and down in the directions of the sphere. */
    private MagneticField spherical(double latitude, double longitude, double radiusKm, double weight, double years) {
        double sin = Math.sin(latitude);
        double cos = Math.cos(latitude);
        double[][] p = new double[degree + 1][degree + 1];
        double[][] dp = new double[degree + 1][degree + 1];
        legendre(sin, cos, p, dp);
        double north = 0;
        double east = 0;
        double down = 0;
        double power = referenceKm / radiusKm * (referenceKm / radiusKm);
        for (int n = 1; n <= degree; n++) {
            power *= referenceKm / radiusKm;
            for (int m = 0; m <= n; m++) {
                double gNow = weight * g[n][m] + years * gDot[n][m];
                double hNow = weight * h[n][m] + years * hDot[n][m];
                double cosM = Math.cos(m * longitude);
                double sinM = Math.sin(m * longitude);
                double wave = gNow * cosM + hNow * sinM;
                north -= power * wave * dp[n][m];
                east += power * m * (gNow * sinM - hNow * cosM) * p[n][m] / cos;
                down -= power * (n + 1) * wave * p[n][m];
            }
        }
        return new MagneticField(north, east, down);
    }

    /**
     * Fills the associated Legendre functions of the sine of the latitude, Schmidt semi-normalised, and their derivatives by the
     * latitude.
     */
    private void legendre(double sin, double cos, double[][] p, double[][] dp) {
        p[0][0] = 1;
        for (int n = 1; n <= degree; n++) {
            double factor = n == 1 ? 1 : Math.sqrt((2.0 * n - 1) / (2.0 * n));
            p[n][n] = factor * cos * p[n - 1][n - 1];
            dp[n][n] = factor * (cos * dp[n - 1][n - 1] - sin * p[n - 1][n - 1]);
            for (int m = 0; m < n; m++) {
                double root = Math.sqrt((double) n * n - (double) m * m);
                double before = n - 1 > m ? Math.sqrt((n - 1.0) * (n - 1.0) - (double) m * m) / root : 0;
                double second = n - 2 >= m ? p[n - 2][m] : 0;
                double secondSlope = n - 2 >= m ? dp[n - 2][m] : 0;
                p[n][m] = (2 * n - 1) / root * sin * p[n - 1][m] - before * second;
                dp[n][m] = (2 * n - 1) / root * (sin * dp[n - 1][m] + cos * p[n - 1][m]) - before * secondSlope;
            }
        }
    }
}
