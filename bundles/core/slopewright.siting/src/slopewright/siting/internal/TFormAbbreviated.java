package slopewright.siting.internal;

/** The T form on one side, ten units, trade name AT-VASIS. */
public final class TFormAbbreviated extends TFormFamily {

    /** Made by the service loader. */
    public TFormAbbreviated() {
        super("t-form-abbreviated", "AT-VASIS", false);
    }
}
