package slopewright.drawing.sheet;

import slopewright.drawing.scene.PaperArea;

/**
 * A size of drawing paper, on its side. The border leaves 20 mm at the left edge for binding and 10 mm at the others (the widths of
 * ISO 5457 as they are commonly known); the foot holds key and title block.
 */
public enum SheetFormat {
    /** 297 by 210 mm. */
    A4("A4", 297, 210, 1),
    /** 420 by 297 mm. */
    A3("A3", 420, 297, 1.2),
    /** 594 by 420 mm. */
    A2("A2", 594, 420, 1.4),
    /** 841 by 594 mm. */
    A1("A1", 841, 594, 1.7),
    /** 1189 by 841 mm. */
    A0("A0", 1189, 841, 2),
    /** 11 by 8.5 in. */
    LETTER("letter", 279.4, 215.9, 1),
    /** 17 by 11 in. */
    ANSI_B("ANSI-B", 431.8, 279.4, 1.2),
    /** 22 by 17 in. */
    ANSI_C("ANSI-C", 558.8, 431.8, 1.4),
    /** 34 by 22 in. */
    ANSI_D("ANSI-D", 863.6, 558.8, 1.7),
    /** 44 by 34 in. */
    ANSI_E("ANSI-E", 1117.6, 863.6, 2);

    static final double LEFT_MM = 20;
    static final double OTHER_MM = 10;

    private static final double FOOT_MM = 52;
    private static final double BLOCK_MM = 158;
    private static final double LETTERING = 1.22;

    private final String key;
    private final double widthMm;
    private final double heightMm;
    private final double size;

    SheetFormat(String key, double widthMm, double heightMm, double size) {
        this.key = key;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.size = size;
    }

    /** Returns its usual name. */
    public String key() {
        return key;
    }

    /** Returns the width of the paper, millimetres. */
    public double widthMm() {
        return widthMm;
    }

    /** Returns the height of the paper, millimetres. */
    public double heightMm() {
        return heightMm;
    }

    /** Returns how much larger its letters are than those of the smallest sheet. */
    double size() {
        return size;
    }

    /** Returns the height of the foot, millimetres. */
    double footMm() {
        return FOOT_MM * size;
    }

    /** Returns the width of the title block, millimetres. */
    double blockMm() {
        return BLOCK_MM * size;
    }

    /**
     * Returns the area for the drawing above the foot.
     *
     * @param scale the number N of a scale 1:N; zero chooses the largest that fits
     * @return the area
     */
    public PaperArea area(int scale) {
        return new PaperArea(widthMm - LEFT_MM - OTHER_MM, heightMm - 2 * OTHER_MM - footMm(), LETTERING * size, scale);
    }
}
