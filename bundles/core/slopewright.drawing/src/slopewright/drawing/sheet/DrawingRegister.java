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
import slopewright.messages.Message;

/** The register of a set of drawings: every sheet with its number, what it shows and to which scale, on sheets of the same paper. */
public final class DrawingRegister {

    private static final double LETTERS_MM = 2.5;
    private static final double LINE_MM = 4.4;
    private static final double HEAD_MM = 14;
    private static final double EDGE_MM = 6;
    private static final double[] COLUMNS = {0, 0.16, 0.72};

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
        double y = height - HEAD_MM - LINE_MM / 2;
        row(marks, width, y, List.of(say(block, "number"), say(block, "shows"), say(block, "scale")));
        marks.add(new Mark.Path(List.of(new ScenePoint(EDGE_MM, y - 1.1), new ScenePoint(width - EDGE_MM, y - 1.1)), false,
                Style.line(Ink.DIMENSION, 0.25), ""));
        y -= LINE_MM / 4;
        for (Sheet sheet : sheets) {
            y -= LINE_MM;
            row(marks, width, y, List.of(sheet.block().content(TitleBlock.Field.SHEET), sheet.title(), sheet.scale()));
        }
        Scene scene = new Scene(title, 0, 0, width, height, 1, marks, List.of(), List.of(), Scene.Unit.NO_LENGTH);
        return Sheet.onPaper(scene, block, format);
    }

    private static String say(TitleBlock block, String key) {
        return block.language().render(Message.of("drawing.register." + key));
    }

    private static void row(List<Mark> marks, double width, double y, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            label(marks, EDGE_MM + COLUMNS[i] * (width - 2 * EDGE_MM), y, cells.get(i), LETTERS_MM);
        }
    }

    private static void label(List<Mark> marks, double x, double y, String text, double letters) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, Anchor.START, letters, 0, Ink.TEXT, ""));
    }
}
