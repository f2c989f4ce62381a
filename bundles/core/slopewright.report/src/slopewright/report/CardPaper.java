package slopewright.report;

/** The paper of a set-up card. */
public enum CardPaper {
    /** 210 by 297 mm: the steps, and a page of details behind them. */
    A4("A4", 26),
    /** 8.5 by 11 in: the steps, and a page of details behind them. */
    LETTER("letter", 22),
    /** 148 by 210 mm, for the pocket: the steps alone. */
    A5("A5", 26);

    private final String key;
    private final int pictureMm;

    CardPaper(String key, int pictureMm) {
        this.key = key;
        this.pictureMm = pictureMm;
    }

    /** Returns its name in a style sheet. */
    public String key() {
        return key;
    }

    /** Returns the side of the picture of a step, millimetres. */
    public int pictureMm() {
        return pictureMm;
    }

    /** Returns whether it has room for details. */
    public boolean hasDetails() {
        return this != A5;
    }

    /** Returns the paper of a card that goes with documents on a paper. */
    public static CardPaper of(PaperSize paper) {
        return paper == PaperSize.LETTER ? LETTER : A4;
    }
}
