package slopewright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.messages.Message;

/** The register of a set of drawings: every sheet with its number, what it shows and to which scale, on a sheet of the same paper. */
public final class DrawingRegister {

    private static final double LETTERS_MM = 2.5;
    private static final double LINE_MM = 6.5;
    private static final double HEAD_MM = 14;
    private static final double EDGE_MM = 6;
    private static final double[] COLUMNS = {0, 0.12, 0.72, 1};

    private DrawingRegister() {
    }

    /**
     * Makes the register; what has no room on one sheet is written smaller.
     *
     * @param sheets the sheets in their order
     * @param title  the title of the set
     * @param block  the title block, with the number of this sheet
     * @param format the paper
     * @return one sheet
     */
    public static Sheet of(List<Sheet> sheets, String title, TitleBlock block, SheetFormat format) {
        double width = format.area(0).widthMm();
        double height = format.area(0).heightMm();
        double line = Math.min(LINE_MM, (height - HEAD_MM - EDGE_MM) / (sheets.size() + 1.2));
        double letters = Math.min(LETTERS_MM, line / 1.5);
        List<Mark> marks = new ArrayList<>();
        label(marks, EDGE_MM, height - 9, title, LETTERS_MM * 1.4);
        double y = height - HEAD_MM - line;
        row(marks, width, y, letters, List.of(say(block, "number"), say(block, "shows"), say(block, "scale")));
        marks.add(new Mark.Path(List.of(new ScenePoint(EDGE_MM, y - line * 0.2), new ScenePoint(width - EDGE_MM, y - line * 0.2)), false,
                Style.line(Ink.DIMENSION, 0.25), ""));
        y -= line * 0.2;
        for (Sheet sheet : sheets) {
            y -= line;
            row(marks, width, y, letters, List.of(sheet.block().content(TitleBlock.Field.SHEET), sheet.title(), sheet.scale()));
        }
        Scene scene = new Scene(title, 0, 0, width, height, 1, marks, List.of(), List.of(), Scene.Unit.NO_LENGTH);
        return Sheet.onPaper(scene, block, format);
    }

    private static String say(TitleBlock block, String key) {
        return block.language().render(Message.of("drawing.register." + key));
    }

    private static void row(List<Mark> marks, double width, double y, double letters, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            label(marks, EDGE_MM + COLUMNS[i] * (width - 2 * EDGE_MM), y, cells.get(i), letters);
        }
    }

    private static void label(List<Mark> marks, double x, double y, String text, double letters) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, Anchor.START, letters, 0, Ink.TEXT, ""));
    }
}
