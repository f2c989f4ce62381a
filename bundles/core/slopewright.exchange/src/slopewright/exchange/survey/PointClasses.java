package slopewright.exchange.survey;

import java.util.BitSet;

import slopewright.messages.Message;
import slopewright.messages.RefusedException;

/**
 * Which points of a cloud are taken, by the class that each has in its file (ASPRS, LAS 1.4 R15, table 17). Class 2 is ground, 3 to 5 are
 * vegetation, 6 buildings, 13 to 16 wires and their masts.
 */
public final class PointClasses {

    /** Everything but ground (2, and 20, ground that is ignored) and noise (7 below, 18 above); what nobody classified is taken. */
    public static final PointClasses STANDING = without(2, 7, 18, 20);

    private static final int MOST = 255;

    private final BitSet taken;

    private PointClasses(BitSet taken) {
        this.taken = taken;
    }

    private static PointClasses without(int... left) {
        BitSet taken = new BitSet();
        taken.set(0, MOST + 1);
        for (int each : left) {
            taken.clear(each);
        }
        return new PointClasses(taken);
    }

    /**
     * Reads a choice.
     *
     * @param text classes and spans of classes, parted by commas: {@code 1,3-6,17}
     * @throws IllegalArgumentException where it is none; the message says what a choice is
     */
    public static PointClasses parse(String text) {
        BitSet taken = new BitSet();
        for (String part : text.split(",", -1)) {
            String span = part.strip();
            if (!span.matches("\\d{1,3}(-\\d{1,3})?")) {
                throw refused(text);
            }
            int first = Integer.parseInt(span.replaceFirst("-.*", ""));
            int last = Integer.parseInt(span.replaceFirst(".*-", ""));
            if (first > last || last > MOST) {
                throw refused(text);
            }
            taken.set(first, last + 1);
        }
        return new PointClasses(taken);
    }

    private static IllegalArgumentException refused(String text) {
        return new RefusedException(Message.said("survey-file.classes", text, MOST));
    }

    /** Returns whether points of a class are taken. */
    public boolean contains(int pointClass) {
        return taken.get(pointClass);
    }
}
