package slopewright.ui.document;

/** Selects an element where it is shown; an editor gives one as its adapter. */
public interface ElementRevealer {

    /**
     * Selects an element and brings it into sight; does nothing where it is not shown.
     *
     * @param elementId id of the element
     */
    void reveal(String elementId);
}
