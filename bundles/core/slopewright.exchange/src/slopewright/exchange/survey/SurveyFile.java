package slopewright.exchange.survey;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;

import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;

/** Reads survey files, the format chosen by the ending among those that are there as services of this bundle. */
public final class SurveyFile {

    private static final List<SurveyFormat> FORMATS = ServiceLoader.load(SurveyFormat.class, SurveyFile.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get).toList();
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

        /**
         * Takes that a part of the file is faulty, where the format can go on with the next one.
         *
         * @param fault what is wrong
         * @throws ExchangeException where one faulty part is enough to end the reading
         */
        default void refused(ExchangeException fault) throws ExchangeException {
            throw fault;
        }

        /**
         * Hears in which coordinate reference the file itself says that its metres east and north are.
         *
         * @param reference of the form EPSG:32629
         * @throws ExchangeException where they are taken to be in another one
         */
        default void refers(String reference) throws ExchangeException {
            // whoever does not know better takes it as it is
        }

        /**
         * Hears that the file does not say in which coordinate reference its metres east and north are.
         *
         * @throws ExchangeException where nobody else says it either
         */
        default void refersToNothing() throws ExchangeException {
            // whoever does not mind takes it as it is
        }

        /**
         * Hears in which vertical datum the file itself says that its elevations are.
         *
         * @param name what the file calls it
         * @throws ExchangeException where they are taken to be in another one
         */
        default void elevationsIn(String name) throws ExchangeException {
            // whoever does not know better takes them as they are
        }

        /**
         * Hears for which epoch the file itself says that its coordinates hold.
         *
         * @param year a decimal year
         */
        default void holdsAt(double year) {
            // whoever does not know better takes them as they are
        }

        /** Returns whether the points of a table are taken all at once, if they are fit for it. */
        default boolean wantsColumns() {
            return false;
        }

        /**
         * Takes the points of a table all at once.
         *
         * @return whether they are taken; where one of them is not fit none is, and the table is to be read row by row
         */
        default boolean takes(PointColumns columns) {
            return false;
        }

        /** Returns whether points of a class are taken of a cloud, and counts the others. */
        default boolean takes(int pointClass) {
            return PointClasses.STANDING.contains(pointClass);
        }

        /** Returns whether a place of the terrain, decimal degrees, lies near enough to the aerodrome to be taken. */
        default boolean isNear(double latitudeDeg, double longitudeDeg) {
            return true;
        }
    }

    /** Returns the formats that are read. */
    public static List<SurveyFormat> formats() {
        return FORMATS;
    }

    /** Returns the endings that are read, without the dot. */
    public static List<String> endings() {
        return FORMATS.stream().flatMap(format -> format.endings().stream()).toList();
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param sink receives the shapes
     * @return what was skipped and why, one sentence each
     * @throws ExchangeException where the file cannot be read; the message names file, line and reason
     */
    public static List<Message> read(Path file, Sink sink) throws ExchangeException {
        return read(file, Optional.empty(), sink);
    }

    /**
     * Reads a file.
     *
     * @param file  the file
     * @param table how it is read where it is a table; empty where its header says so in the words of this program
     * @param sink  receives the shapes
     * @return what was skipped and why, one sentence each
     * @throws ExchangeException where the file cannot be read; the message names file, line and reason
     */
    public static List<Message> read(Path file, Optional<TableForm> table, Sink sink) throws ExchangeException {
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        SurveyFormat format = FORMATS.stream().filter(each -> each.endings().contains(ending)).findFirst()
                .orElseThrow(() -> new ExchangeException(file.toString(), 0, Message.said("survey-file.endings", "." + String.join(", .",
                        endings()))));
        SurveyInput input = new SurveyInput(file, sink, table);
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new ExchangeException(file.toString(), 0, Message.said("survey-file.larger", MOST_BYTES >> 20));
            }
            format.read(input);
        } catch (CharacterCodingException e) {
            throw new ExchangeException(file.toString(), 0, Message.of("survey-file.no-utf8"));
        } catch (IOException e) {
            throw new ExchangeException(file.toString(), 0, Message.said("survey-file.unreadable", e));
        }
        return input.skipped();
    }
}
