package slopewright.siting.internal;

/** The T form on both sides, twenty units, trade name T-VASIS. */
public final class TForm extends TFormFamily {

    /** Made by the service loader. */
    public TForm() {
        super("t-form", "T-VASIS", true);
    }
}
