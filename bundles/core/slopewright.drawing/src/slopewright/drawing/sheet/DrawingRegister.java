package slopewright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.messages.Message;

/**
 * The register of a set of drawings: every sheet with its number, what it shows, the verdict of the check and the scale, on sheets of the
 * same paper.
 */
public final class DrawingRegister {

    private static final double LETTERS_MM = 2.5;
    private static final double LEAST_MM = 1.8;
    private static final double LINE_MM = 4.4;
    private static final double HEAD_MM = 14;
    private static final double EDGE_MM = 6;
    private static final double GAP_MM = 3;
    /** The column that gives way where a line is too long: smaller letters first, then fewer. */
    private static final int SHOWS = 1;

    private DrawingRegister() {
    }

    /** Returns how many sheets of a paper the register of so many sheets takes. */
    public static int sheets(int count, SheetFormat format) {
        return Math.max(1, (count + rows(format) - 1) / rows(format));
    }

    private static int rows(SheetFormat format) {
        return (int) ((format.area(0).heightMm() - HEAD_MM - EDGE_MM) / LINE_MM) - 1;
    }

    /**
     * Makes the register.
     *
     * @param sheets the sheets in their order
     * @param title  the title of the set
     * @param blocks the title block of each sheet of the register, by its number from 1
     * @param format the paper
     * @return as many sheets as {@link #sheets(int, SheetFormat)} says
     */
    public static List<Sheet> of(List<Sheet> sheets, String title, IntFunction<TitleBlock> blocks, SheetFormat format) {
        List<Sheet> register = new ArrayList<>();
        for (int page = 0; page < sheets(sheets.size(), format); page++) {
            List<Sheet> listed = sheets.subList(page * rows(format), Math.min(sheets.size(), (page + 1) * rows(format)));
            register.add(page(listed, title, blocks.apply(page + 1), format));
        }
        return register;
    }

    private static Sheet page(List<Sheet> sheets, String title, TitleBlock block, SheetFormat format) {
        double width = format.area(0).widthMm();
        double height = format.area(0).heightMm();
        List<Mark> marks = new ArrayList<>();
        label(marks, EDGE_MM, height - 9, title, LETTERS_MM * 1.4);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(say(block, "number"), say(block, "shows"), say(block, "verdict"), say(block, "scale")));
        for (Sheet sheet : sheets) {
            rows.add(List.of(sheet.block().content(TitleBlock.Field.SHEET), sheet.title(),
                    sheet.block().content(TitleBlock.Field.VERDICT), sheet.scale()));
        }
        double[] columns = columns(rows, width - 2 * EDGE_MM);
        double y = height - HEAD_MM - LINE_MM / 2;
        row(marks, columns, y, rows.get(0));
        marks.add(new Mark.Path(List.of(new ScenePoint(EDGE_MM, y - 1.1), new ScenePoint(width - EDGE_MM, y - 1.1)), false,
                Style.line(Ink.DIMENSION, 0.25), ""));
        y -= LINE_MM / 4;
        for (List<String> cells : rows.subList(1, rows.size())) {
            y -= LINE_MM;
            row(marks, columns, y, cells);
        }
        Scene scene = new Scene(title, 0, 0, width, height, 1, marks, List.of(), List.of(), Scene.Unit.NO_LENGTH);
        return Sheet.onPaper(scene, block, format);
    }

    private static String say(TitleBlock block, String key) {
        return block.language().render(Message.of("drawing.register." + key));
    }

    /** Returns the width of each column: as wide as its longest cell, and what is left for what a sheet shows. */
    private static double[] columns(List<List<String>> rows, double width) {
        double[] columns = new double[rows.get(0).size()];
        for (int i = 0; i < columns.length; i++) {
            int column = i;
            columns[i] = rows.stream().mapToDouble(row -> TextWidth.mm(row.get(column), LETTERS_MM)).max().orElse(0) + GAP_MM;
        }
        double others = -columns[SHOWS];
        for (double column : columns) {
            others += column;
        }
        columns[SHOWS] = Math.max(width - others, width / columns.length);
        return columns;
    }

    private static void row(List<Mark> marks, double[] columns, double y, List<String> cells) {
        double x = EDGE_MM;
        for (int i = 0; i < cells.size(); i++) {
            double room = columns[i] - GAP_MM;
            double letters = Math.max(LEAST_MM, LETTERS_MM * Math.min(1, room / TextWidth.mm(cells.get(i), LETTERS_MM)));
            label(marks, x, y, i == SHOWS ? TextWidth.cut(cells.get(i), letters, room + 0.1) : cells.get(i), letters);
            x += columns[i];
        }
    }

    private static void label(List<Mark> marks, double x, double y, String text, double letters) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, Anchor.START, letters, 0, Ink.TEXT, ""));
    }
}
