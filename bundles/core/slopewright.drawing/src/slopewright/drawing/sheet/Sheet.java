package slopewright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.messages.MessageRenderer;

/**
 * A scene laid out on paper with its captions and its key: the same marks for every painter, in millimetres from the upper left corner,
 * y down.
 */
public final class Sheet {

    private static final double EDGE_MM = 0.4;
    private static final double CAPTION_MM = 1.7;
    private static final double LINE_MM = 4;
    private static final double SYMBOL_MM = 7;
    private static final double GAP_MM = 6;
    private static final double AFTER_FRAME_MM = 4.4;

    private static final double CELL_MM = 9;
    private static final double CELL_PAD_MM = 1.5;
    private static final double CELL_NAME_MM = 1.2;
    private static final int CELLS = 4;

    private final Scene scene;
    private final TitleBlock block;
    private final double widthMm;
    private final double heightMm;
    private final Paper paper;
    private final List<Mark> below = new ArrayList<>();
    private final boolean bordered;

    private Sheet(Scene scene, TitleBlock block, SheetFormat format) {
        this.scene = scene;
        this.block = block;
        widthMm = format.widthMm();
        heightMm = format.heightMm();
        PaperArea area = format.area(0);
        double right = widthMm - SheetFormat.OTHER_MM;
        double low = heightMm - SheetFormat.OTHER_MM;
        double top = SheetFormat.OTHER_MM + area.heightMm();
        paper = new Paper(scene, SheetFormat.LEFT_MM, SheetFormat.OTHER_MM, area.widthMm(), area.heightMm());
        SheetFoot foot = new SheetFoot(format.size());
        foot.border(SheetFormat.LEFT_MM, SheetFormat.OTHER_MM, right, low, format.footMm());
        foot.notes(scene, block.language(), SheetFormat.LEFT_MM + 2, top, right - format.blockMm() - 2, low);
        TitleBlock scaled = block.with(TitleBlock.Field.SCALE, scene.scale(area.widthMm(), block.language()));
        foot.block(scaled.contents().containsKey(TitleBlock.Field.SHEET) ? scaled : scaled.with(TitleBlock.Field.SHEET, format.key()),
                right - format.blockMm(), top, right);
        below.addAll(foot.marks());
        bordered = true;
    }

    private Sheet(Scene scene, TitleBlock block, double widthMm, double maxHeightMm) {
        bordered = false;
        this.scene = scene;
        this.block = block;
        this.widthMm = widthMm;
        double under = layBelow(0);
        paper = new Paper(scene, widthMm, Math.max(20, maxHeightMm - under), EDGE_MM);
        below.clear();
        heightMm = paper.heightMm() + layBelow(paper.heightMm());
    }

    /**
     * Lays a scene out.
     *
     * @param scene       the scene
     * @param widthMm     width of the paper
     * @param maxHeightMm greatest height with captions and key
     * @return the sheet
     */
    public static Sheet of(Scene scene, double widthMm, double maxHeightMm) {
        return new Sheet(scene, TitleBlock.none(MessageRenderer.of(Locale.ENGLISH)), widthMm, maxHeightMm);
    }

    /**
     * Lays a scene out with a title block at its foot.
     *
     * @param scene       the scene
     * @param block       the title block
     * @param widthMm     width of the paper
     * @param maxHeightMm greatest height with captions, key and title block
     * @return the sheet
     */
    public static Sheet of(Scene scene, TitleBlock block, double widthMm, double maxHeightMm) {
        return new Sheet(scene, block, widthMm, maxHeightMm);
    }

    /**
     * Lays a scene that was drawn for the area of a format out on paper of that format, with border and title block.
     *
     * @param scene  the scene
     * @param block  the title block; scale and format are added
     * @param format the paper
     * @return the sheet
     */
    public static Sheet onPaper(Scene scene, TitleBlock block, SheetFormat format) {
        return new Sheet(scene, block, format);
    }

    /** Tells whether the sheet is drawing paper with a border of its own. */
    public boolean isBordered() {
        return bordered;
    }

    /** Returns the width, millimetres. */
    public double widthMm() {
        return widthMm;
    }

    /** Returns the height, millimetres. */
    public double heightMm() {
        return heightMm;
    }

    /** Returns the title block. */
    public TitleBlock block() {
        return block;
    }

    /** Returns the scale in words, as its title block has it. */
    public String scale() {
        return scene.scale(paper.innerWidthMm(), block.language());
    }

    /** Returns the title of the scene. */
    public String title() {
        return scene.title();
    }

    /** Returns the corners of the frame: upper left, then lower right. */
    public List<ScenePoint> frame() {
        return List.of(new ScenePoint(paper.frameLeftMm(), paper.frameTopMm()),
                new ScenePoint(paper.frameLeftMm() + paper.innerWidthMm(), paper.frameTopMm() + paper.innerHeightMm()));
    }

    /** Returns the marks of the scene, to be cut at the frame. */
    public List<Mark> inside() {
        return scene.marks().stream().map(this::onPaper).toList();
    }

    /** Returns the scene. */
    public Scene scene() {
        return scene;
    }

    /** Returns captions, key and title block, under the frame, and the border. */
    public List<Mark> below() {
        return List.copyOf(below);
    }

    private Mark onPaper(Mark mark) {
        if (mark instanceof Mark.Path path) {
            return new Mark.Path(path.points().stream().map(this::onPaper).toList(), path.closed(), path.style(), path.elementId());
        } else if (mark instanceof Mark.Disc disc) {
            return new Mark.Disc(onPaper(disc.centre()), disc.radiusMm(), disc.style(), disc.elementId());
        }
        Mark.Label label = (Mark.Label) mark;
        ScenePoint at = onPaper(label.at());
        return new Mark.Label(new ScenePoint(at.x(), at.y() - label.dyMm()), label.text(), label.anchor(), label.sizeMm(), 0, label.ink(),
                label.elementId());
    }

    private ScenePoint onPaper(ScenePoint point) {
        return new ScenePoint(paper.x(point), paper.y(point));
    }

    /** Adds captions and key from a height downward and returns how much height they take. */
    private double layBelow(double fromMm) {
        double inner = widthMm - 2 * EDGE_MM;
        double y = fromMm + (scene.legend().isEmpty() && scene.captions().isEmpty() ? 0 : AFTER_FRAME_MM - LINE_MM);
        double x = EDGE_MM;
        boolean first = true;
        for (LegendEntry entry : scene.legend()) {
            double width = SYMBOL_MM + 1.5 + TextWidth.mm(entry.text(), CAPTION_MM);
            if (first || x + width > EDGE_MM + inner) {
                x = EDGE_MM;
                y += LINE_MM;
                first = false;
            }
            below.addAll(entry.marks(x, y - CAPTION_MM / 2, SYMBOL_MM, 1));
            text(x + SYMBOL_MM + 1.5, y, entry.text());
            x += width + GAP_MM;
        }
        for (String caption : scene.captions()) {
            for (String line : TextWidth.wrap(caption, CAPTION_MM, inner)) {
                y += LINE_MM;
                text(EDGE_MM, y, line);
            }
        }
        y += below.isEmpty() ? 0 : 1.2;
        return layBlock(y, inner) - fromMm;
    }

    /** Adds the title block from a height downward and returns its foot. */
    private double layBlock(double fromMm, double inner) {
        List<TitleBlock.Field> fields = List.copyOf(block.contents().keySet());
        double y = fromMm + (fields.isEmpty() ? 0 : 1);
        double cell = inner / CELLS;
        for (int i = 0; i < fields.size(); i++) {
            TitleBlock.Field field = fields.get(i);
            double x = EDGE_MM + i % CELLS * cell;
            below.add(new Mark.Path(List.of(new ScenePoint(x, y), new ScenePoint(x + cell, y), new ScenePoint(x + cell, y + CELL_MM),
                    new ScenePoint(x, y + CELL_MM)), true, Style.line(Ink.DIMENSION, 0.2), ""));
            below.add(new Mark.Label(new ScenePoint(x + CELL_PAD_MM, y + 2.8), block.title(field), Anchor.START, CELL_NAME_MM, 0,
                    Ink.DIMENSION,
                    ""));
            below.add(new Mark.Label(new ScenePoint(x + CELL_PAD_MM, y + 6.8), TextWidth.cut(block.content(field), CAPTION_MM, cell - 2
                    * CELL_PAD_MM), Anchor.START, CAPTION_MM, 0, Ink.TEXT, ""));
            if (i % CELLS == CELLS - 1 || i == fields.size() - 1) {
                y += CELL_MM;
            }
        }
        return y + (fields.isEmpty() ? 0 : EDGE_MM);
    }

    private void text(double x, double y, String text) {
        below.add(new Mark.Label(new ScenePoint(x, y), text, Anchor.START, CAPTION_MM, 0, Ink.TEXT, ""));
    }
}
