package slopewright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.drawing.sheet.TitleBlock.Field;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;

/** The foot of a sheet of drawing paper: key and notes at the left, title block at the right. Millimetres, y down. */
final class SheetFoot {

    /** No letter on a sheet is smaller than that. */
    private static final double TEXT_MM = 1.8;
    private static final double TITLE_MM = 2.5;
    private static final double NOTE_STEP_MM = 2.75;
    private static final double LINE_STEP_MM = 2.6;
    private static final double LINE_MM = 3.6;
    private static final double SYMBOL_MM = 7;
    private static final double GAP_MM = 4;
    private static final double PAD_MM = 1.3;
    private static final Style BORDER = Style.line(Ink.TEXT, 0.5);
    private static final Style CELL = Style.line(Ink.TEXT, 0.18);

    /** The rows of the block: height, then boxes and their shares of the width. */
    private static final List<Row> ROWS = List.of(
            new Row(11, List.of(Field.DRAWING, Field.DOCUMENT_NUMBER, Field.REVISION), 5, 2, 1),
            new Row(8.5, List.of(Field.VERDICT, Field.PROJECT, Field.AERODROME, Field.CLIENT), 2, 1, 1, 1),
            new Row(9, List.of(Field.ORGANISATION, Field.DRAWN_BY, Field.CHECKED_BY, Field.APPROVED_BY, Field.DATE), 3, 2, 2, 2, 1.6),
            new Row(11.5, List.of(Field.SCALE, Field.SHEET, Field.DATUM, Field.RULE_SET), 2.4, 0.9, 3.4, 3.8),
            new Row(12, List.of(Field.CAUTION, Field.MADE_FROM), 1.8, 1));

    private final double size;
    private final List<Mark> marks = new ArrayList<>();

    private record Row(double heightMm, List<Field> fields, double... shares) {
    }

    SheetFoot(double size) {
        this.size = size;
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** Draws the border of the sheet and the line above the foot. */
    void border(double left, double top, double right, double low, double footMm) {
        box(BORDER, left, top, right, low);
        line(BORDER, left, low - footMm, right, low - footMm);
    }

    /** Writes the title block between two corners. */
    void block(TitleBlock block, double left, double top, double right) {
        double y = top;
        for (Row row : ROWS) {
            double sum = 0;
            for (double share : row.shares()) {
                sum += share;
            }
            double x = left;
            for (int i = 0; i < row.fields().size(); i++) {
                double width = (right - left) * row.shares()[i] / sum;
                cell(block, row.fields().get(i), x, y, width, row.heightMm() * size);
                x += width;
            }
            y += row.heightMm() * size;
        }
        line(BORDER, left, top, left, y);
    }

    private void cell(TitleBlock block, Field field, double x, double y, double width, double height) {
        String content = block.content(field);
        box(CELL, x, y, x + width, y + height);
        text(x + PAD_MM * size, y + 2.6 * size, block.title(field), TEXT_MM, Ink.DIMENSION);
        double inner = width - 2 * PAD_MM * size;
        double first = field == Field.DRAWING || field == Field.VERDICT ? TITLE_MM : TEXT_MM;
        double foot = y + height - 1.4 * size;
        if (TextWidth.mm(content, first * size) <= inner) {
            text(x + PAD_MM * size, foot, content, first, Ink.TEXT);
            return;
        }
        double step = LINE_STEP_MM * size;
        List<String> lines = TextWidth.wrap(content, TEXT_MM * size, inner);
        int most = Math.max(1, (int) ((height - 3.4 * size) / step + 0.3));
        for (int i = 0; i < Math.min(most, lines.size()); i++) {
            boolean last = i == most - 1 && lines.size() > most;
            String line = last ? TextWidth.cut(String.join(" ", lines.subList(i, lines.size())), TEXT_MM * size, inner) : lines.get(i);
            text(x + PAD_MM * size, y + height - 1.1 * size - (Math.min(most, lines.size()) - 1 - i) * step, line, TEXT_MM, Ink.TEXT);
        }
    }

    /**
     * Writes key and notes from a corner downward. Notes that have no room above the border are counted in its last line, never lost
     * without a word.
     */
    void notes(Scene scene, MessageRenderer language, double left, double top, double right, double low) {
        double x = left;
        double y = top + LINE_MM * size;
        for (LegendEntry entry : scene.legend()) {
            double width = (SYMBOL_MM + 1.5) * size + TextWidth.mm(entry.text(), TEXT_MM * size);
            if (x > left && x + width > right) {
                x = left;
                y += LINE_MM * size;
            }
            marks.addAll(entry.marks(x, y - TEXT_MM * size / 2, SYMBOL_MM * size, size));
            text(x + (SYMBOL_MM + 1.5) * size, y, entry.text(), TEXT_MM, Ink.TEXT);
            x += width + GAP_MM * size;
        }
        y += scene.legend().isEmpty() ? 0 : (LINE_MM + 1) * size;
        List<String> lines = scene.captions().stream().flatMap(caption -> TextWidth.wrap(caption, TEXT_MM * size, right - left).stream())
                .toList();
        int room = Math.max(1, (int) Math.floor((low - 1 - y) / (NOTE_STEP_MM * size)) + 1);
        int written = lines.size() <= room ? lines.size() : room - 1;
        for (String line : lines.subList(0, written)) {
            text(left, y, line, TEXT_MM, Ink.TEXT);
            y += NOTE_STEP_MM * size;
        }
        if (written < lines.size()) {
            text(left, y, language.render(Message.of("drawing.notes-left", Words.count(lines.size() - written))), TEXT_MM, Ink.TEXT);
        }
    }

    private void text(double x, double y, String text, double sizeMm, Ink ink) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, Anchor.START, sizeMm * size, 0, ink, ""));
    }

    private void line(Style style, double x1, double y1, double x2, double y2) {
        marks.add(new Mark.Path(List.of(new ScenePoint(x1, y1), new ScenePoint(x2, y2)), false, style, ""));
    }

    private void box(Style style, double x1, double y1, double x2, double y2) {
        marks.add(new Mark.Path(List.of(new ScenePoint(x1, y1), new ScenePoint(x2, y1), new ScenePoint(x2, y2), new ScenePoint(x1, y2)),
                true, style, ""));
    }
}
