package slopewright.ui.plan.internal.survey;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.PointClasses;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.exchange.survey.TableForm;
import slopewright.exchange.survey.TablePreview;
import slopewright.model.Project;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What the user says of a survey file before it is imported. */
final class SurveyChoices {

    /** Encodings that are offered. */
    static final List<Charset> ENCODINGS = List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"), StandardCharsets.ISO_8859_1);

    /** Separators that are offered. */
    static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');

    /** What is typed. */
    enum Entry {
        /** Where the survey comes from. */
        SOURCE,
        /** Its day. */
        DATE,
        /** Coordinate reference of east and north. */
        GRID,
        /** Accuracy of places. */
        HORIZONTAL,
        /** Accuracy of elevations. */
        VERTICAL,
        /** Elevation of the ground below heights that have none. */
        GROUND,
        /** Vertical datum of its elevations. */
        DATUM,
        /** Classes of the points that are taken of a cloud. */
        CLASSES;

        String key() {
            return "import." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** Neither the ground nor an error of a survey is higher, metres. */
    private static final double HIGHEST_M = 10_000;

    private final Path file;
    private final Optional<TablePreview> table;
    private final Map<Entry, String> entries = new HashMap<>();
    private Optional<TableForm> form;
    private SurveyReading.Form taken = SurveyReading.Form.OBSTACLES;
    private SurveyHeights.Meaning heights = SurveyHeights.Meaning.AS_STATED;

    /**
     * Begins with what the file says and what was chosen for one with the same columns before.
     *
     * @param file the survey file
     * @throws ExchangeException where it is a table that cannot be read
     */
    SurveyChoices(Path file) throws ExchangeException {
        this.file = file;
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        boolean isTable = name.endsWith(".csv") || name.endsWith(".xlsx");
        table = isTable ? Optional.of(TablePreview.of(file)) : Optional.empty();
        form = table.map(found -> KeptForms.of(found.columns()).orElse(found.guess()));
        entries.put(Entry.SOURCE, String.valueOf(file.getFileName()));
    }

    Path file() {
        return file;
    }

    Optional<TablePreview> table() {
        return table;
    }

    Optional<TableForm> form() {
        return form;
    }

    void choose(TableForm chosen) {
        form = Optional.of(chosen);
    }

    void chooseTaken(SurveyReading.Form chosen) {
        taken = chosen;
    }

    void chooseHeights(SurveyHeights.Meaning chosen) {
        heights = chosen;
    }

    /** Returns whether an answer says anything as things are chosen. */
    boolean isAsked(Entry entry) {
        return entry != Entry.GROUND || heights == SurveyHeights.Meaning.ABOVE_GROUND;
    }

    String text(Entry entry) {
        return entries.getOrDefault(entry, "");
    }

    void type(Entry entry, String text) {
        entries.put(entry, text);
    }

    /** Returns what is said of the survey as a whole. */
    private SurveyOrigin origin() {
        Optional<String> date = given(Entry.DATE);
        try {
            date.ifPresent(LocalDate::parse);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(Messages.get("import.no-date", date.get()));
        }
        OptionalDouble ground = isAsked(Entry.GROUND) ? number(Entry.GROUND, -HIGHEST_M, HIGHEST_M) : OptionalDouble.empty();
        return new SurveyOrigin(given(Entry.SOURCE).orElse(String.valueOf(file.getFileName())), date, given(Entry.GRID),
                number(Entry.HORIZONTAL, 0, HIGHEST_M), number(Entry.VERTICAL, 0, HIGHEST_M), new SurveyHeights(heights, ground),
                given(Entry.DATUM), given(Entry.CLASSES).map(PointClasses::parse).orElse(PointClasses.STANDING));
    }

    private Optional<String> given(Entry entry) {
        return Optional.of(text(entry).strip()).filter(text -> !text.isEmpty());
    }

    /** Returns what an answer is called, with the unit of a length. */
    String label(Entry entry) {
        boolean isLength = entry == Entry.HORIZONTAL || entry == Entry.VERTICAL || entry == Entry.GROUND;
        return Messages.get(entry.key()) + (isLength ? " (" + QuantityFormat.preferred().unit(Quantity.LENGTH) + ")" : "");
    }

    /** A length, in the unit that the user prefers where none is typed. */
    private OptionalDouble number(Entry entry, double leastM, double mostM) {
        Optional<String> text = given(entry);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        QuantityFormat format = QuantityFormat.preferred();
        double value;
        try {
            value = format.read(text.get(), Quantity.LENGTH);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(label(entry) + ": " + e.getMessage(), e);
        }
        if (value < leastM || value > mostM) {
            throw new IllegalArgumentException(Messages.get("obstacle.range", label(entry),
                    format.showWithUnit(value, Quantity.LENGTH), format.showWithUnit(leastM, Quantity.LENGTH),
                    format.showWithUnit(mostM, Quantity.LENGTH)));
        }
        return OptionalDouble.of(value);
    }

    /**
     * Returns what reads the file as it is chosen now, on any thread.
     *
     * @param copy a copy of the project
     * @throws IllegalArgumentException where something that is typed is no such thing; the message says what
     */
    Reading reading(Project copy) {
        SurveyOrigin origin = origin();
        Optional<TableForm> chosen = form;
        SurveyReading.Form becomes = taken;
        return () -> SurveyReading.of(copy, file, origin, chosen, becomes);
    }

    /** Keeps the choices of columns for the next file that has the same ones. */
    void keep() {
        table.ifPresent(found -> KeptForms.keep(found.columns(), form.orElseThrow()));
    }

    /** Reads the file. */
    @FunctionalInterface
    interface Reading {

        SurveyReading read() throws ExchangeException;
    }
}
