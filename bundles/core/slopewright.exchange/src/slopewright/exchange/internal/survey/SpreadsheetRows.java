package slopewright.exchange.internal.survey;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * Reads the rows of the first sheet of a spreadsheet (Office Open XML, ECMA-376 part 1, section 18), and only the headers of the others;
 * who reads says that they are left out. Fields are what the cells hold, numbers with a decimal point.
 * Small, because the reader that goes with the writer of spreadsheets brings seven libraries for the same.
 */
public final class SpreadsheetRows {

    private static final long MOST_BYTES = 128L << 20;
    private static final int MOST_ENTRIES = 10_000;
    private static final int MOST_COLUMNS = 16_384;
    private static final String BOOK = "xl/workbook.xml";
    private static final String TARGETS = "xl/_rels/workbook.xml.rels";
    private static final String TEXTS = "xl/sharedStrings.xml";

    private final Function<Message, ExchangeException> faults;
    private final Map<String, byte[]> parts = new HashMap<>();
    private final List<String> texts = new ArrayList<>();

    /** What stands in the first row of a sheet that is not read. */
    public record Unread(String name, List<String> header) {
    }

    private record SheetPart(String name, String relation) {
    }

    private SpreadsheetRows(Function<Message, ExchangeException> faults) {
        this.faults = faults;
    }

    /** Takes rows. */
    @FunctionalInterface
    public interface Sink {

        /**
         * Takes a row.
         *
         * @param fields its fields, as many as it has up to the last that holds something, at least as many as the row before
         * @param line   its number, counted from 1
         * @return whether a further one is wanted
         */
        boolean take(List<String> fields, long line) throws ExchangeException;
    }

    /**
     * Reads a spreadsheet.
     *
     * @param content opens its bytes
     * @param sink    receives the rows
     * @param faults  makes the exception for a reason
     * @return the sheets behind the first one that hold something
     */
    public static List<Unread> read(SurveyInput.Content content, Sink sink, Function<Message, ExchangeException> faults)
            throws IOException, ExchangeException {
        return new SpreadsheetRows(faults).read(content, sink);
    }

    private List<Unread> read(SurveyInput.Content content, Sink sink) throws IOException, ExchangeException {
        try (InputStream in = content.open(); ZipInputStream zip = new ZipInputStream(in)) {
            unpack(zip);
        } catch (ZipException | IllegalArgumentException e) {
            throw faults.apply(Message.said("survey-file.broken-zip", e));
        }
        try {
            if (parts.containsKey(TEXTS)) {
                sharedTexts();
            }
            List<SheetPart> sheets = sheets();
            rows(part(sheets.get(0)), sink);
            List<Unread> others = new ArrayList<>();
            for (SheetPart other : sheets.subList(1, sheets.size())) {
                rows(part(other), (fields, line) -> {
                    others.add(new Unread(other.name(), fields));
                    return false;
                });
            }
            return others;
        } catch (XMLStreamException e) {
            throw faults.apply(Message.said("survey-file.no-spreadsheet", String.valueOf(e.getMessage()).lines().reduce("", (a, b) -> b)));
        }
    }

    private void unpack(ZipInputStream zip) throws IOException, ExchangeException {
        long left = MOST_BYTES;
        int entries = 0;
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            boolean wanted = Set.of(BOOK, TARGETS, TEXTS).contains(entry.getName()) || entry.getName().startsWith("xl/worksheets/");
            byte[] found = wanted ? zip.readNBytes((int) Math.min(left + 1, Integer.MAX_VALUE - 8)) : new byte[0];
            left -= wanted ? found.length : zip.skip(left + 1);
            if (left < 0 || ++entries > MOST_ENTRIES) {
                throw faults.apply(Message.said("survey-file.zip-size", MOST_BYTES >> 20, MOST_ENTRIES));
            }
            if (wanted) {
                parts.put(entry.getName(), found);
            }
        }
        if (!parts.containsKey(BOOK)) {
            throw faults.apply(Message.said("survey-file.no-book", BOOK));
        }
    }

    /** A document type, and with it every entity of its own, is refused. */
    private XMLStreamReader xml(String part) throws IOException, XMLStreamException, ExchangeException {
        byte[] content = parts.get(part);
        if (content == null) {
            throw faults.apply(Message.said("survey-file.no-part", part));
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        StringWriter letters = new StringWriter();
        try (Reader in = XmlText.open(new ByteArrayInputStream(content))) {
            in.transferTo(letters);
        }
        return factory.createXMLStreamReader(new StringReader(letters.toString()));
    }

    private int next(XMLStreamReader xml) throws XMLStreamException, ExchangeException {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
            throw faults.apply(Message.of("survey-file.document-type"));
        }
        return event;
    }

    private boolean begins(XMLStreamReader xml, int event, String name) {
        return event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals(name);
    }

    private static String attribute(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    private List<SheetPart> sheets() throws IOException, XMLStreamException, ExchangeException {
        XMLStreamReader book = xml(BOOK);
        List<SheetPart> found = new ArrayList<>();
        while (book.hasNext()) {
            if (begins(book, next(book), "sheet")) {
                String relation = "";
                for (int i = 0; i < book.getAttributeCount(); i++) {
                    boolean isRelation = book.getAttributeLocalName(i).equals("id") && book.getAttributeNamespace(i) != null;
                    relation = isRelation ? book.getAttributeValue(i) : relation;
                }
                found.add(new SheetPart(attribute(book, "name"), relation));
            }
        }
        if (found.isEmpty()) {
            throw faults.apply(Message.of("survey-file.no-sheet"));
        }
        return found;
    }

    private String part(SheetPart sheet) throws IOException, XMLStreamException, ExchangeException {
        XMLStreamReader targets = xml(TARGETS);
        while (targets.hasNext()) {
            if (begins(targets, next(targets), "Relationship") && attribute(targets, "Id").equals(sheet.relation())) {
                String target = attribute(targets, "Target");
                return target.startsWith("/") ? target.substring(1) : "xl/" + target;
            }
        }
        throw faults.apply(Message.of("survey-file.no-sheet"));
    }

    private void sharedTexts() throws IOException, XMLStreamException, ExchangeException {
        XMLStreamReader xml = xml(TEXTS);
        while (xml.hasNext()) {
            if (begins(xml, next(xml), "si")) {
                texts.add(text(xml, "si"));
            }
        }
    }

    /** Returns the letters of all {@code t} in an element; how they are pronounced ({@code rPh}) is left out. */
    private String text(XMLStreamReader xml, String element) throws XMLStreamException, ExchangeException {
        StringBuilder found = new StringBuilder();
        boolean spoken = false;
        while (true) {
            int event = next(xml);
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals(element)) {
                return found.toString();
            }
            if (begins(xml, event, "rPh") || event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("rPh")) {
                spoken = event == XMLStreamConstants.START_ELEMENT;
            } else if (begins(xml, event, "t") && !spoken) {
                found.append(xml.getElementText());
            }
        }
    }

    private void rows(String sheet, Sink sink) throws IOException, XMLStreamException, ExchangeException {
        XMLStreamReader xml = xml(sheet);
        List<String> row = new ArrayList<>();
        int width = 0;
        long line = 0;
        while (xml.hasNext()) {
            int event = next(xml);
            if (begins(xml, event, "row")) {
                row.clear();
                line++;
            } else if (begins(xml, event, "c")) {
                cell(xml, row);
            } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row") && !row.isEmpty()) {
                while (row.size() < width) {
                    row.add("");
                }
                width = width == 0 ? row.size() : width;
                if (row.stream().anyMatch(field -> !field.isBlank()) && !sink.take(List.copyOf(row), line)) {
                    return;
                }
            }
        }
    }

    private void cell(XMLStreamReader xml, List<String> row) throws XMLStreamException, ExchangeException {
        String place = attribute(xml, "r");
        String type = attribute(xml, "t");
        int column = place.isEmpty() ? row.size() : column(place);
        while (row.size() <= column) {
            row.add("");
        }
        String found = "";
        while (true) {
            int event = next(xml);
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("c")) {
                row.set(column, found);
                return;
            }
            if (begins(xml, event, "v")) {
                String value = xml.getElementText();
                found = "s".equals(type) ? shared(value) : value;
            } else if (begins(xml, event, "is")) {
                found = text(xml, "is");
            }
        }
    }

    private String shared(String number) throws ExchangeException {
        try {
            return texts.get(Integer.parseInt(number.strip()));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw faults.apply(Message.said("survey-file.no-text", number.strip()));
        }
    }

    /** Returns the number of the column in a place such as B3, from 0. */
    private int column(String place) throws ExchangeException {
        int found = 0;
        for (int i = 0; i < place.length() && place.charAt(i) >= 'A' && place.charAt(i) <= 'Z' && found <= MOST_COLUMNS; i++) {
            found = found * 26 + place.charAt(i) - 'A' + 1;
        }
        if (found < 1 || found > MOST_COLUMNS) {
            throw faults.apply(Message.said("survey-file.cell", place));
        }
        return found - 1;
    }
}
