package slopewright.report;

/** The paper of a document. */
public enum PaperSize {
    /** 210 by 297 mm. */
    A4("A4"),
    /** 8.5 by 11 in. */
    LETTER("letter");

    private final String key;

    PaperSize(String key) {
        this.key = key;
    }

    /** Returns its name in a style sheet. */
    public String key() {
        return key;
    }
}
