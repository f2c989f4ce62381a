package slopewright.exchange.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.Message;
import slopewright.messages.Printable;
import slopewright.messages.Words;
import slopewright.model.io.Program;

/**
 * Writes tables as comma-separated values and as Office Open XML workbooks: every table that the product writes is written here. Text
 * that a spreadsheet would take for a formula is kept from it: in CSV by an apostrophe in front, in a workbook because text is text
 * there. Numbers stay numbers. The same bytes for the same table.
 */
public final class SheetFile {

    private static final String FORMULA_STARTS = "=+-@\t\r\n";
    private static final String EPOCH = "2000-01-01T00:00:00Z";
    /** Longer text is broken into lines, widths in letters. */
    private static final int MOST_WIDTH = 44;
    private static final int LEAST_WIDTH = 6;
    private static final int NOTES_WIDTH = 120;
    private static final double LINE_PT = 13.5;
    /** So many letters side by side are still 8 points high on a sheet of A4 and of A3 that lies on its side. */
    private static final int ON_A4 = 205;
    private static final int ON_A3 = 297;
    private static final int HEAD_PT = 9;

    private SheetFile() {
    }

    /** Returns a table as comma-separated values, the names of the columns first; the last columns say what it was made from. */
    public static byte[] csv(Sheet sheet) {
        StringWriter text = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            Map<String, String> made = sheet.made().map(from -> from.facts(sheet.words().renderer())).orElse(Map.of());
            List<List<String>> records = new ArrayList<>();
            records.add(Stream.concat(sheet.columns().stream(), made.keySet().stream()).map(SheetFile::guarded).toList());
            sheet.rows().forEach(row -> records.add(Stream.concat(row.stream().map(SheetFile::cell),
                    made.values().stream().map(SheetFile::guarded)).toList()));
            records.forEach(writer::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(SheetCell cell) {
        return cell.number().isPresent() ? cell.text() : guarded(cell.text());
    }

    /** The one guard: text that a spreadsheet would take for a formula gets an apostrophe in front. */
    private static String guarded(String words) {
        String text = Printable.of(words);
        String bare = text.stripLeading();
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0
                || !bare.isEmpty() && FORMULA_STARTS.indexOf(bare.charAt(0)) >= 0;
        return formula ? "'" + text : text;
    }

    /**
     * Returns a table as a workbook with a sheet for the table and one for its notes.
     *
     * @throws IOException where it cannot be put together
     */
    public static byte[] xlsx(Sheet sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Slopewright", "1.0")) {
            try (Worksheet table = book.newWorksheet(sheet.title())) {
                fill(table, sheet);
            }
            try (Worksheet notes = book.newWorksheet(sheet.words().text(Message.of("sheet.notes")))) {
                List<String> lines = new ArrayList<>(sheet.notes());
                sheet.made().ifPresent(made -> lines.addAll(lines(sheet.words(), made)));
                notes.width(0, NOTES_WIDTH);
                notes.pageOrientation("landscape");
                notes.setFitToPage(true);
                notes.fitToWidth((short) 1);
                notes.fitToHeight((short) 0);
                for (int i = 0; i < lines.size(); i++) {
                    notes.value(i, 0, clean(lines.get(i)));
                    notes.rowHeight(i, LINE_PT * lines(lines.get(i), NOTES_WIDTH));
                }
                notes.range(0, 0, Math.max(0, lines.size() - 1), 0).style().wrapText(true).verticalAlignment("top").set();
            }
        }
        return timeless(out.toByteArray());
    }

    private static List<String> lines(SheetWords words, MadeFrom made) {
        List<Message> lines = new ArrayList<>(List.of(Message.of("sheet.made.project", Words.name(made.project()),
                Words.name(made.revision()), Words.name(made.date())), Message.of("sheet.made.file", made.fileWords()),
                Message.of("sheet.made.program", Words.name(Program.text())),
                Message.of("sheet.made.rule-set", made.ruleSet(), Words.name(made.ruleSetId()))));
        made.verdict().ifPresent(said -> lines.add(Message.of("sheet.made.verdict", said)));
        return words.texts(lines);
    }

    private static String head(Sheet sheet, MadeFrom made) {
        return sheet.words().text(Message.of("sheet.made.head", Words.name(made.project()), Words.name(made.revision()),
                Words.name(made.date())));
    }

    private static void fill(Worksheet table, Sheet sheet) {
        for (int c = 0; c < sheet.columns().size(); c++) {
            table.value(0, c, clean(sheet.columns().get(c)));
            table.width(c, width(sheet, c));
        }
        for (int r = 0; r < sheet.rows().size(); r++) {
            List<SheetCell> row = sheet.rows().get(r);
            for (int c = 0; c < row.size(); c++) {
                if (row.get(c).number().isPresent()) {
                    table.value(r + 1, c, row.get(c).number().getAsDouble());
                } else {
                    table.value(r + 1, c, clean(row.get(c).text()));
                }
            }
        }
        table.range(0, 0, 0, sheet.columns().size() - 1).style().bold().wrapText(true).set();
        for (int c = 0; c < sheet.columns().size(); c++) {
            format(table, sheet, c);
            if (!sheet.rows().isEmpty()) {
                table.range(1, c, sheet.rows().size(), c).style().wrapText(true).verticalAlignment("top").set();
            }
        }
        for (int r = 0; r <= sheet.rows().size(); r++) {
            int row = r;
            table.rowHeight(r, LINE_PT * IntStream.range(0, sheet.columns().size()).map(column -> lines(row == 0
                    ? sheet.columns().get(column) : sheet.rows().get(row - 1).get(column).text(), width(sheet, column))).max().orElse(1));
        }
        table.freezePane(0, 1);
        print(table, sheet);
        table.repeatRows(0);
    }

    /** A number or a word is never broken, other text is, and so is the heading. */
    private static int width(Sheet sheet, int column) {
        int widest = sheet.rows().stream().map(row -> row.get(column)).mapToInt(cell -> cell.number().isPresent() ? cell.text().length()
                : Math.max(Math.min(MOST_WIDTH, cell.text().length()), longestWord(cell.text()))).max().orElse(0);
        return Math.max(LEAST_WIDTH, Math.max(widest, longestWord(sheet.columns().get(column)))) + 2;
    }

    /** Returns into how many lines a text is broken between its words, a little room on the safe side. */
    private static int lines(String text, int width) {
        int count = 1;
        int used = 0;
        for (String word : text.split("\\s")) {
            if (used > 0 && used + 1 + word.length() > width) {
                count++;
                used = 0;
            }
            used += word.length() + 1;
        }
        return count;
    }

    private static int longestWord(String text) {
        return Stream.of(text.split("\\s")).mapToInt(String::length).max().orElse(0);
    }

    /** Shows as many decimals as the numbers of a column are rounded to, so that a zero at the end is not lost. */
    private static void format(Worksheet table, Sheet sheet, int column) {
        int decimals = sheet.rows().stream().map(row -> row.get(column)).filter(cell -> cell.number().isPresent())
                .mapToInt(cell -> cell.text().indexOf('.') < 0 ? 0 : cell.text().length() - 1 - cell.text().indexOf('.')).max().orElse(-1);
        if (decimals >= 0 && !sheet.rows().isEmpty()) {
            table.range(1, column, sheet.rows().size(), column).style().format(decimals == 0 ? "0" : "0." + "0".repeat(decimals)).set();
        }
    }

    /**
     * On its side, on A4 or A3, all columns on one page where they can be read there, else on several with the first columns on each; what
     * the table is and what it was made from at the head, the page at the foot.
     */
    private static void print(Worksheet table, Sheet sheet) {
        table.pageOrientation("landscape");
        int letters = IntStream.range(0, sheet.columns().size()).map(column -> width(sheet, column)).sum();
        int pages = (letters + ON_A3 - 1) / ON_A3;
        table.paperSize(letters <= ON_A4 ? PaperSize.A4_PAPER : PaperSize.A3_PAPER);
        table.setFitToPage(true);
        table.fitToWidth((short) Math.max(1, pages));
        if (pages > 1) {
            table.repeatCols(0, Math.min(2, sheet.columns().size() - 1));
        }
        table.fitToHeight((short) 0);
        table.header(coded(sheet.title()), Position.LEFT, HEAD_PT);
        table.header(coded(sheet.made().map(made -> head(sheet, made)).orElse("")), Position.RIGHT, HEAD_PT);
        table.footer(coded(sheet.made().map(made -> made.brief(sheet.words().renderer())).orElse("")), Position.LEFT, HEAD_PT);
        table.footer("&P / &N", Position.RIGHT, HEAD_PT);
    }

    /** Keeps text of a project from being taken for a code of the head of a page. */
    private static String coded(String text) {
        return clean(text).replace("&", "&&");
    }

    /** Leaves out what XML cannot hold. */
    private static String clean(String text) {
        return Printable.of(text).replaceAll("[^\\x{9}\\x{A}\\x{D}\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "?");
    }

    /** Takes the hour of its making out of a workbook. */
    private static byte[] timeless(byte[] book) throws IOException {
        Path file = Files.createTempFile("sheet", ".xlsx");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            Files.write(file, book);
            try (ZipFile in = new ZipFile(file.toFile()); ZipOutputStream zip = new ZipOutputStream(out)) {
                for (ZipEntry entry : Collections.list(in.entries())) {
                    ZipEntry fresh = new ZipEntry(entry.getName());
                    fresh.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
                    zip.putNextEntry(fresh);
                    zip.write(timeless(entry.getName(), in, entry));
                    zip.closeEntry();
                }
            }
        } finally {
            Files.delete(file);
        }
        return out.toByteArray();
    }

    private static byte[] timeless(String name, ZipFile book, ZipEntry entry) throws IOException {
        try (InputStream in = book.getInputStream(entry)) {
            byte[] bytes = in.readAllBytes();
            return !"docProps/core.xml".equals(name) ? bytes : new String(bytes, StandardCharsets.UTF_8)
                    .replaceAll("(<dcterms:(created|modified)[^>]*>)[^<]*", "$1" + EPOCH).getBytes(StandardCharsets.UTF_8);
        }
    }
}
