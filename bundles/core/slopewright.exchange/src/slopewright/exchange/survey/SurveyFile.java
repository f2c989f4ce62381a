package slopewright.exchange.survey;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import slopewright.exchange.ExchangeException;

/**
 * Reads survey files, the format chosen by the ending: CSV with a header, GeoJSON, KML, and DXF in its ASCII form. Shapes are handed on
 * one by one, so that a large file takes little memory.
 */
public final class SurveyFile {

    /** The endings that are read, without the dot. */
    public static final List<String> ENDINGS = List.of("csv", "geojson", "json", "kml", "dxf");

    private static final long MOST_BYTES = 1L << 30;

    private SurveyFile() {
    }

    /** Takes the shapes of a file in their order. */
    @FunctionalInterface
    public interface Sink {

        /**
         * Takes a shape.
         *
         * @param shape the shape
         * @throws ExchangeException where it is of no use; reading ends
         */
        void accept(SurveyShape shape) throws ExchangeException;
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param sink receives the shapes
     * @return what was passed over and why, one sentence each
     * @throws ExchangeException where the file can not be read; the message names file, line and reason
     */
    public static List<String> read(Path file, Sink sink) throws ExchangeException {
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        SurveyReader reader = switch (ending) {
            case "csv" -> new CsvSurvey(file, sink);
            case "geojson", "json" -> new GeoJsonSurvey(file, sink);
            case "kml" -> new KmlSurvey(file, sink);
            case "dxf" -> new DxfSurvey(file, sink);
            default -> throw new ExchangeException(file.toString(), 0, "a survey file must end in ." + String.join(", .", ENDINGS));
        };
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new ExchangeException(file.toString(), 0, "is larger than " + (MOST_BYTES >> 20) + " MB");
            }
            reader.read();
        } catch (NoSuchFileException e) {
            throw new ExchangeException(file.toString(), 0, "there is no such file");
        } catch (CharacterCodingException e) {
            throw new ExchangeException(file.toString(), 0, "is not written in UTF-8");
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, "can not be read: " + e.getMessage());
        }
        return reader.notes();
    }
}
