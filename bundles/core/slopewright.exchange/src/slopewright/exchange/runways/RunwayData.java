package slopewright.exchange.runways;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.internal.runways.AirportTables;
import slopewright.exchange.internal.runways.CsvAirports;
import slopewright.exchange.internal.runways.SqliteAirports;
import slopewright.exchange.internal.sqlite.SqliteTables;
import slopewright.messages.Message;

/**
 * Open runway data in a file that the user names: a database of SQLite with the tables {@code airports}, {@code runways} and
 * {@code runway_ends}, or a table of comma-separated values with a runway a line. Nothing is fetched from anywhere. The licence is the
 * first line of a file {@code LICENSE} beside the data or in the folder above, where there is one.
 */
public final class RunwayData {
    /** So long a file is none of runways, bytes. */
    private static final long LONGEST = 512L << 20;
    private static final long LONGEST_LICENCE = 1L << 20;
    private static final List<String> LOGS = List.of("-wal", "-journal");
    private static final int HASH_SHOWN = 16;
    private static final List<String> LICENCES = List.of("LICENSE", "LICENSE.txt", "LICENSE.md", "LICENCE", "LICENCE.txt");

    private final Path file;
    private final AirportTables tables;
    private final String sha256;

    private RunwayData(Path file, AirportTables tables, String sha256) {
        this.file = file;
        this.tables = tables;
        this.sha256 = sha256;
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @return what it holds
     * @throws IOException       where it cannot be read
     * @throws ExchangeException where it is none of runways; the message says why
     */
    public static RunwayData read(Path file) throws IOException, ExchangeException {
        String name = file.toString();
        if (!Files.isRegularFile(file)) {
            throw new ExchangeException(name, 0, Message.of("survey-file.is-no-file"));
        }
        if (Files.size(file) > LONGEST) {
            throw new ExchangeException(name, 0, Message.of("survey-file.too-long"));
        }
        byte[] content;
        try (InputStream in = Files.newInputStream(file)) {
            content = in.readNBytes((int) LONGEST);
        }
        AirportTables tables = SqliteTables.isDatabase(content) ? database(file, content) : new CsvAirports(name, content);
        return new RunwayData(file, tables, sha256(content));
    }

    private static AirportTables database(Path file, byte[] content) throws IOException, ExchangeException {
        String name = file.toString();
        for (String log : LOGS) {
            Path beside = Path.of(name + log);
            if (Files.exists(beside) && Files.size(beside) > 0) {
                throw new ExchangeException(name, 0, Message.of("survey-file.journal"));
            }
        }
        try {
            return new SqliteAirports(name, SqliteTables.open(content));
        } catch (SqliteTables.Fault e) {
            throw new ExchangeException(name, 0, e.reason());
        }
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns the licence that a file beside the data names; empty where there is none. */
    public Optional<String> licence() {
        Path folder = file.toAbsolutePath().getParent();
        return Stream.of(folder, folder == null ? null : folder.getParent()).filter(found -> found != null)
                .flatMap(found -> LICENCES.stream().map(found::resolve)).filter(Files::isRegularFile).findFirst()
                .flatMap(RunwayData::firstLine);
    }

    private static Optional<String> firstLine(Path licence) {
        try {
            return Files.size(licence) > LONGEST_LICENCE ? Optional.empty()
                    : Files.readString(licence, StandardCharsets.UTF_8).lines().map(String::strip).filter(line -> !line.isEmpty())
                            .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Finds the airport of a code.
     *
     * @param code a code of four letters, three letters, or a national one
     * @return the airport that the table leads by the code, else the one that has it as another code; empty where none has
     * @throws ExchangeException where several have it, or the file is broken; the message says so
     */
    public Optional<OpenAirport> find(String code) throws ExchangeException {
        String wanted = code.strip().toUpperCase(Locale.ROOT);
        List<OpenAirport> found = wanted.isEmpty() ? List.of() : tables.find(wanted);
        if (found.size() > 1) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.several-airports", wanted, String.join(", ",
                    found.stream().map(airport -> airport.code() + " " + airport.name()).toList())));
        }
        return found.stream().findFirst();
    }

    /**
     * Returns what a new site can make of each end of an airport.
     *
     * @param airport an airport of these data
     * @param licence the licence under which the data are used
     * @param day     the day for which the magnetic variation is worked out
     * @return the ends in the order of the data
     */
    public List<RunwayOffer> offers(OpenAirport airport, String licence, LocalDate day) {
        String source = file.getFileName() + ", " + airport.code() + (airport.day().isEmpty() ? "" : ", " + airport.day()) + ", SHA-256 "
                + sha256.substring(0, HASH_SHOWN);
        return RunwayOffer.of(airport, source, licence, day);
    }
}
