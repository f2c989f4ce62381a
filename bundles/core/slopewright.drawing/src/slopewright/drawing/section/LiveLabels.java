package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Style;

/** Finds room for the texts of a window, the first asked for first; a text that finds none is left out. */
final class LiveLabels {

    /** Where a text may stand beside its place. */
    enum Side {
        /** Above to the right, then further around. */
        ABOVE_RIGHT(new double[][] {{1, 1.2}, {-1, 1.2}, {1, -2.8}, {-1, -2.8}, {0, 2}, {0, 5}, {0, 8}}),
        /** Below to the left, then further around. */
        BELOW_LEFT(new double[][] {{-1, -2.8}, {1, -2.8}, {-1, 1.2}, {1, 1.2}}),
        /** Straight above, each step higher with a leader. */
        ABOVE(new double[][] {{0, 1.4}, {1, 0.2}, {-1, 0.2}, {1, 2.6}, {1, -2.8}, {-1, 2.6}, {0, 4.2}, {0, 7}, {0, 9.8}, {1, -5.6},
            {0, 12.6}, {0, 15.4}, {0, 18.2}}),
        /** On a line that comes in from the left. */
        ON_EDGE(new double[][] {{1, -0.8}, {1, -3.4}, {1, 1.4}}),
        /** To the right only. */
        RIGHT(new double[][] {{1, -0.8}});

        private final double[][] spots;

        Side(double[][] spots) {
            this.spots = spots;
        }
    }

    private static final double CLEAR_MM = 0.4;
    private static final double BESIDE_MM = 1;
    private static final double LEADER_MM = 3;

    private final SectionWindow window;
    private final SectionWords words;
    private final List<Box> taken = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    /** A rectangle in millimetres, y up. */
    private record Box(double left, double low, double right, double high) {

        boolean meets(Box other) {
            return left < other.right && right > other.left && low < other.high && high > other.low;
        }
    }

    LiveLabels(SectionWindow window, SectionWords words) {
        this.window = window;
        this.words = words;
    }

    /** Returns the texts and leaders that found room. */
    List<Mark> marks() {
        return marks;
    }

    /** Keeps a place free of texts, millimetres around it. */
    void keep(double alongM, double heightM, double leftMm, double rightMm, double upMm) {
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        taken.add(new Box(x - leftMm, y - upMm, x + rightMm, y + upMm));
    }

    /** Takes a place for a symbol, millimetres around it, where it is free; returns whether it was. */
    boolean take(double alongM, double heightM, double leftMm, double rightMm, double upMm) {
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        Box box = new Box(x - leftMm, y - upMm, x + rightMm, y + upMm);
        return fits(box) && taken.add(box);
    }

    /** Writes a text beside a place; returns whether there was room. */
    boolean write(double alongM, double heightM, String text, double sizeMm, Side side, Ink ink, String id) {
        if (!window.holds(alongM, heightM)) {
            return false;
        }
        double width = words.widthMm(text, sizeMm);
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        for (double[] spot : side.spots) {
            Anchor anchor = spot[0] > 0 ? Anchor.START : spot[0] < 0 ? Anchor.END : Anchor.MIDDLE;
            double foot = y + spot[1];
            double start = x + spot[0] * BESIDE_MM;
            double left = anchor == Anchor.START ? start : anchor == Anchor.END ? start - width : start - width / 2;
            Box box = new Box(left - CLEAR_MM, foot - CLEAR_MM, left + width + CLEAR_MM, foot + sizeMm * 1.3 + CLEAR_MM);
            if (fits(box)) {
                taken.add(box);
                if (spot[0] == 0 && spot[1] > LEADER_MM) {
                    marks.add(new Mark.Path(List.of(window.at(x, y + BESIDE_MM), window.at(x, foot)), false, Style.line(ink, 0.1), id));
                }
                marks.add(new Mark.Label(window.at(start, foot + sizeMm / 2), text, anchor, sizeMm, 0, ink, id));
                return true;
            }
        }
        return false;
    }

    /** Writes a text to the left of the right edge at a height; returns whether there was room. */
    boolean beforeEdge(double heightM, String text, double sizeMm, double fromEdgeMm, Ink ink) {
        double width = words.widthMm(text, sizeMm);
        double right = window.widthMm() - fromEdgeMm;
        double middle = window.yMm(heightM);
        Box box = new Box(right - width - CLEAR_MM, middle - sizeMm * 0.65, right + CLEAR_MM, middle + sizeMm * 0.65);
        if (!fits(box)) {
            return false;
        }
        taken.add(box);
        marks.add(new Mark.Label(window.at(right, middle), text, Anchor.END, sizeMm, 0, ink, ""));
        return true;
    }

    private boolean fits(Box box) {
        return box.left >= 0 && box.low >= 0 && box.right <= window.widthMm() && box.high <= window.heightMm()
                && taken.stream().noneMatch(box::meets);
    }
}
