package slopewright.exchange.survey;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import slopewright.exchange.ExchangeException;
import slopewright.geometry.Decimals;
import slopewright.messages.Message;

/** A survey file that is read, and what the formats share: names of facts, faults with their line, and where shapes go. */
public final class SurveyInput {

    private static final Map<String, SurveyShape.Fact> NAMES = Map.ofEntries(Map.entry("id", SurveyShape.Fact.ID),
            Map.entry("name", SurveyShape.Fact.NAME), Map.entry("topelevationm", SurveyShape.Fact.TOP_ELEVATION),
            Map.entry("topelevation", SurveyShape.Fact.TOP_ELEVATION), Map.entry("elevationm", SurveyShape.Fact.ELEVATION),
            Map.entry("elevation", SurveyShape.Fact.ELEVATION), Map.entry("ele", SurveyShape.Fact.ELEVATION),
            Map.entry("heightm", SurveyShape.Fact.HEIGHT), Map.entry("height", SurveyShape.Fact.HEIGHT),
            Map.entry("groundelevationm", SurveyShape.Fact.GROUND_ELEVATION),
            Map.entry("groundelevation", SurveyShape.Fact.GROUND_ELEVATION),
            Map.entry("horizontalaccuracym", SurveyShape.Fact.HORIZONTAL_ACCURACY),
            Map.entry("verticalaccuracym", SurveyShape.Fact.VERTICAL_ACCURACY), Map.entry("source", SurveyShape.Fact.SOURCE),
            Map.entry("verticaldatum", SurveyShape.Fact.VERTICAL_DATUM), Map.entry("unit", SurveyShape.Fact.UNIT),
            Map.entry("units", SurveyShape.Fact.UNIT), Map.entry("uom", SurveyShape.Fact.UNIT),
            Map.entry("lengthunit", SurveyShape.Fact.UNIT), Map.entry("elevationunit", SurveyShape.Fact.UNIT),
            Map.entry("heightunit", SurveyShape.Fact.UNIT), Map.entry("verticalunit", SurveyShape.Fact.UNIT),
            Map.entry("date", SurveyShape.Fact.DATE));

    /** What the maps of this program hold beside obstacles. */
    private static final Set<String> OTHER_KINDS = Set.of("unit", "beam", "sector-edge", "surface", "runway", "threshold", "helipad",
            "survey-point");

    private static final Set<String> METRES = Set.of("m", "metre", "metres", "meter", "meters", "mtr");

    private static final int TEN = 10;
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final Path file;
    private final SurveyFile.Sink sink;
    private final Content content;
    private final Map<Message, Integer> skipped;
    private final Optional<TableForm> table;
    private final Set<Message> said;

    /** Opens what is read, from its beginning. */
    @FunctionalInterface
    public interface Content {

        /** Opens it; whoever asked closes it. */
        InputStream open() throws IOException;
    }

    SurveyInput(Path file, SurveyFile.Sink sink, Optional<TableForm> table) {
        this(file, sink, () -> Files.newInputStream(file), new HashMap<>(), table, new LinkedHashSet<>());
    }

    private SurveyInput(Path file, SurveyFile.Sink sink, Content content, Map<Message, Integer> skipped, Optional<TableForm> table,
            Set<Message> said) {
        this.table = table;
        this.said = said;
        this.file = file;
        this.sink = sink;
        this.content = content;
        this.skipped = skipped;
    }

    /** Returns what stands for a file that is packed in this one: shapes, notes and faults are this one's. */
    public SurveyInput inside(Content packed) {
        return new SurveyInput(file, sink, packed, skipped, table, said);
    }

    /** Returns the file of the same name with another ending that lies beside this one, empty where there is none. */
    public Optional<SurveyInput> besideIt(String ending) {
        String name = String.valueOf(file.getFileName());
        String stem = name.substring(0, name.lastIndexOf('.') + 1);
        return Stream.of(ending, ending.toUpperCase(Locale.ROOT)).map(each -> file.resolveSibling(stem + each)).filter(Files::isRegularFile)
                .findFirst().map(beside -> new SurveyInput(beside, sink, () -> Files.newInputStream(beside), skipped, table, said));
    }

    /**
     * Opens the file. A byte order mark of UTF-8 is left out.
     *
     * @throws ExchangeException where it begins with the mark of another encoding
     */
    @SuppressWarnings("resource") // whoever opens it closes it
    public InputStream open() throws IOException, ExchangeException {
        InputStream raw = content.open();
        try {
            return withoutMark(new PushbackInputStream(raw, MARK.length));
        } catch (IOException | ExchangeException e) {
            raw.close();
            throw e;
        }
    }

    private InputStream withoutMark(PushbackInputStream in) throws IOException, ExchangeException {
        byte[] first = in.readNBytes(MARK.length);
        boolean wide = first.length >= 2 && (first[0] == (byte) 0xFE && first[1] == (byte) 0xFF
                || first[0] == (byte) 0xFF && first[1] == (byte) 0xFE);
        if (wide) {
            throw fault(1, Message.of("survey-file.utf16"));
        }
        if (!Arrays.equals(first, MARK)) {
            in.unread(first);
        }
        return in;
    }

    /** Opens the file as text in UTF-8; what is not UTF-8 ends in an exception. */
    public BufferedReader openText() throws IOException, ExchangeException {
        return new BufferedReader(new InputStreamReader(open(), StandardCharsets.UTF_8.newDecoder()));
    }

    /** Opens the file as text in another encoding. */
    public BufferedReader openText(Charset encoding) throws IOException, ExchangeException {
        return new BufferedReader(new InputStreamReader(open(), encoding));
    }

    /** Returns what stands between two fields of a table. */
    public char separator() {
        return table.map(TableForm::separator).orElse(',');
    }

    /** Opens the file as text of a table: in the encoding that was named, else in UTF-8. */
    public BufferedReader openTable() throws IOException, ExchangeException {
        return table.isEmpty() || table.get().encoding().equals(StandardCharsets.UTF_8) ? openText() : openText(table.get().encoding());
    }

    /** Returns what a column of a table is taken as, in lower case; empty where it is left out. */
    public String column(String header) {
        return table.map(form -> form.taken(header)).orElseGet(() -> header.toLowerCase(Locale.ROOT));
    }

    /** Returns a fact in a field of a table with a decimal point and in metres. */
    public String plain(SurveyShape.Fact fact, String text) {
        return table.map(form -> form.plain(fact, text)).orElse(text);
    }

    /** Returns a coordinate in a field of a table with a decimal point, and in metres where it is a length. */
    public String plainPlace(String text, boolean isLength) {
        return table.map(form -> form.plainPlace(text, isLength)).orElse(text);
    }

    /** Says that a part of the file is faulty and that the reading can go on behind it. */
    public void refuse(ExchangeException fault) throws ExchangeException {
        sink.refused(fault);
    }

    /**
     * Says in which coordinate reference the file itself says that its metres east and north are.
     *
     * @param reference of the form EPSG:32629
     * @throws ExchangeException where they are taken to be in another one
     */
    public void refer(String reference) throws ExchangeException {
        sink.refers(reference);
    }

    /**
     * Says that the file names no coordinate reference for its metres east and north.
     *
     * @throws ExchangeException where nobody else names it either
     */
    public void refersToNothing() throws ExchangeException {
        sink.refersToNothing();
    }

    /**
     * Says in which vertical datum the file itself says that its elevations are.
     *
     * @param name what the file calls it
     * @throws ExchangeException where they are taken to be in another one
     */
    public void elevationsIn(String name) throws ExchangeException {
        sink.elevationsIn(name);
    }

    /** Says for which epoch, a decimal year, the file has its coordinates. */
    public void holdsAt(double year) {
        sink.holdsAt(year);
    }

    /** Returns whether the points of a table are taken all at once: never of one whose columns or units somebody named. */
    public boolean wantsColumns() {
        return table.isEmpty() && sink.wantsColumns();
    }

    /** Hands on the points of a table; where they are not taken it is to be read row by row. */
    public boolean takes(PointColumns columns) {
        return sink.takes(columns);
    }

    /** Returns whether points of a class are taken of a cloud. */
    public boolean takes(int pointClass) {
        return sink.takes(pointClass);
    }

    /** Returns whether a place of the terrain, decimal degrees, lies near enough to be taken. */
    public boolean isNear(double latitudeDeg, double longitudeDeg) {
        return sink.isNear(latitudeDeg, longitudeDeg);
    }

    /** Returns the name of the file without its ending. */
    public String stem() {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, Math.max(0, name.lastIndexOf('.')));
    }

    /** Returns how many bytes the file has. */
    public long size() throws IOException {
        return Files.size(file);
    }

    /** Opens the file as the bytes that it holds, nothing left out. */
    public InputStream openBytes() throws IOException {
        return content.open();
    }

    /** Counts something that is skipped. */
    public void skip(Message what) {
        skipped.merge(what, 1, Integer::sum);
    }

    /** Says something of the file as a whole that whoever imports it must know. */
    public void note(Message sentence) {
        said.add(sentence);
    }

    /** Returns what is to be known and what was skipped, one sentence each. */
    List<Message> skipped() {
        List<Message> notes = new ArrayList<>();
        skipped.forEach((what, count) -> notes.add(Message.said("survey-file.skipped", count, what)));
        notes.sort(Comparator.comparing(Message::english));
        notes.addAll(0, said);
        return notes;
    }

    /** Makes the exception for a fault; the line is 0 where the whole file is meant. */
    public ExchangeException fault(long line, Message reason) {
        return new ExchangeException(file.toString(), line, reason);
    }

    /** Returns which fact of a shape a column, property or datum of that name gives; empty where it gives none. */
    public static Optional<SurveyShape.Fact> fact(String name) {
        return Optional.ofNullable(NAMES.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /** Returns the same for a name of which no more than the first ten letters were kept. */
    public static Optional<SurveyShape.Fact> factOfTenLetters(String name) {
        String known = name.strip().toLowerCase(Locale.ROOT);
        return fact(name).or(() -> NAMES.keySet().stream().filter(full -> known.length() == TEN && full.startsWith(known)).findFirst()
                .map(NAMES::get));
    }

    /**
     * Puts a fact of a shape beside the others.
     *
     * @throws ExchangeException where the file says another value of it elsewhere: none may be lost
     */
    public void put(Map<SurveyShape.Fact, String> facts, SurveyShape.Fact fact, String text, long line) throws ExchangeException {
        String before = facts.putIfAbsent(fact, text);
        if (before != null && !before.equals(text)) {
            throw fault(line, Message.said("survey-file.fact-twice", fact.label(), before, text));
        }
    }

    /** Returns whether a feature is of a kind that no survey has: a unit or a surface of a map that this program wrote. It is skipped. */
    public boolean isOwnFeature(String kind) {
        if (!OTHER_KINDS.contains(kind)) {
            return false;
        }
        skip(Message.said("survey-file.skip.kind", kind));
        return true;
    }

    /**
     * Reads a number.
     *
     * @throws ExchangeException where it is none; the message names what it was to be
     */
    public double number(String text, String what, long line) throws ExchangeException {
        try {
            return Decimals.parse(text);
        } catch (IllegalArgumentException e) {
            throw fault(line, Message.said("survey-file.of-column", what, e));
        }
    }

    /**
     * Hands on a shape.
     *
     * @param kind     its shape
     * @param grid     whether its positions are metres east and north instead of latitude and longitude
     * @param vertices its positions; the first of an area may be repeated at the end
     * @param facts    what the file says of it
     * @param line     where it stands in the file
     * @throws ExchangeException where it has too few positions, or a position or text that nothing can have, or is of no use, or is said to
     *                           be in another unit than metres
     */
    public void emit(SurveyShape.Kind kind, boolean grid, List<SurveyVertex> vertices, Map<SurveyShape.Fact, String> facts, long line)
            throws ExchangeException {
        List<SurveyVertex> open = kind == SurveyShape.Kind.AREA && vertices.size() > 1
                && isSame(vertices.get(0), vertices.get(vertices.size() - 1)) ? vertices.subList(0, vertices.size() - 1) : vertices;
        int least = kind.ordinal() + 1;
        if (open.size() < least) {
            throw fault(line, Message.said("survey-file.positions", open.size(), least));
        }
        for (SurveyVertex vertex : open) {
            if (!grid && !(Math.abs(vertex.north()) <= 90 && Math.abs(vertex.east()) <= 180)) {
                throw fault(line, Message.said("survey-file.out-of-range", vertex.north(), vertex.east()));
            }
        }
        String unit = facts.getOrDefault(SurveyShape.Fact.UNIT, "");
        if (!unit.isBlank() && !METRES.contains(unit.strip().toLowerCase(Locale.ROOT))) {
            throw fault(line, Message.said("survey-file.unit", unit));
        }
        for (Map.Entry<SurveyShape.Fact, String> fact : facts.entrySet()) {
            String text = fact.getValue();
            for (int i = 0; i < text.length(); i++) {
                if (Character.isISOControl(text.charAt(i))) {
                    throw fault(line, Message.said("survey-file.control", fact.getKey().label(),
                            String.format(Locale.ROOT, "U+%04X", (int) text.charAt(i))));
                }
            }
        }
        sink.accept(new SurveyShape(kind, grid, open, facts, line));
    }

    private static boolean isSame(SurveyVertex first, SurveyVertex last) {
        return first.north() == last.north() && first.east() == last.east();
    }

    /** Returns the facts with the number of a part after id and name. */
    public static Map<SurveyShape.Fact, String> numbered(Map<SurveyShape.Fact, String> facts, int number) {
        Map<SurveyShape.Fact, String> own = new EnumMap<>(facts);
        own.computeIfPresent(SurveyShape.Fact.ID, (fact, id) -> id + "-" + number);
        own.computeIfPresent(SurveyShape.Fact.NAME, (fact, name) -> name + " " + number);
        return own;
    }
}
