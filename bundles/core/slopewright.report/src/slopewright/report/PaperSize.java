package slopewright.report;

/** The paper of a document. */
public enum PaperSize {
    /** 210 by 297 mm. */
    A4("A4", 267),
    /** 8.5 by 11 in. */
    LETTER("letter", 249);

    private final String key;
    private final int wideMm;

    PaperSize(String key, int wideMm) {
        this.key = key;
        this.wideMm = wideMm;
    }

    /** Returns its name in a style sheet. */
    public String key() {
        return key;
    }

    /** Returns the width inside the margins of a page on its side, millimetres. */
    public int wideMm() {
        return wideMm;
    }
}
