package slopewright.blindness;

/**
 * One wrong entry in a project.
 *
 * @param elementId id of the element that is corrupted
 * @param partnerId id of the element with which an entry is exchanged, or which a list names no longer; else that of the element
 * @param label     what it is called
 * @param feature   class and feature
 * @param way       how it is corrupted
 * @param from      the value that was there
 * @param to        the value that is put there
 * @param carryOut  corrupts the project
 * @param undo      mends it again
 */
record Corruption(String elementId, String partnerId, String label, String feature, Way way, String from, String to, Runnable carryOut,
        Runnable undo) {

    /** How an entry may go wrong. */
    enum Way {
        /** The entry is taken out. */
        REMOVED(true),
        /** Zero, or an empty text. */
        ZEROED(true),
        /** The sign is wrong. */
        NEGATED(false),
        /** A digit too many. */
        TIMES_TEN(false),
        /** Thousandths as whole ones. */
        TIMES_THOUSAND(false),
        /** Out of every range. */
        ENORMOUS(false),
        /** Not a number at all. */
        NO_NUMBER(false),
        /** Feet entered as metres, or minutes as degrees. */
        UNIT_SLIP(false),
        /** Metres entered as feet, or degrees as minutes. */
        UNIT_SLIP_BACK(false),
        /** Exchanged with the same entry of the next element. */
        SWAPPED(false),
        /** Exchanged with another entry of the same element that is easily confused with it. */
        CONFUSED(false),
        /** Another word of the list, or the opposite. */
        OTHER_WORD(true),
        /** A small change. */
        SLIGHTLY_OFF(true),
        /** The whole element is taken out. */
        ELEMENT_REMOVED(true);

        private final boolean mayMove;

        Way(boolean mayMove) {
            this.mayMove = mayMove;
        }

        /** Returns whether it may be that the entry means the same as before: where it is gone, or says it with another word. */
        boolean mayMean() {
            return this == REMOVED || this == ZEROED || this == OTHER_WORD || this == ELEMENT_REMOVED || this == SWAPPED;
        }

        /** Returns whether a result that moves, is rightly still met and stands listed is a reason not to find it. */
        boolean mayMove() {
            return mayMove;
        }
    }

    /** Returns the entry that is corrupted; all entries of an element that is taken out are one. */
    String entry() {
        return way == Way.ELEMENT_REMOVED ? elementId : elementId + " " + feature;
    }

    /** Returns whether it is a read-back that is corrupted, and not an entry. */
    boolean isOfReadBack() {
        return feature.startsWith("ReadBack");
    }

    /** Returns one line for a list. */
    String text() {
        return elementId + " (" + label + ") " + feature + " " + way + ": " + from + " -> " + to;
    }
}
